// SPDX-License-Identifier: GPL-3.0-or-later
// Names beside one another in a few rows without touching.  A name may be pushed
// sideways as long as it still stands under its own stretch or its anchor; where
// it does not fit it is shortened, and where even that does not fit, left out.
#pragma once

#include <QString>
#include <functional>
#include <vector>

namespace lapwright::plots {

struct Name {
    QString text;
    double anchor = 0.0;     // x of the middle that it would like to have
    double importance = 0.0; // the greater ones are placed first
};

struct PlacedName {
    std::size_t index = 0; // of the name
    QString text;          // maybe shortened
    double left = 0.0;
    double width = 0.0;
    int row = 0;
};

using Measure = std::function<double(const QString&)>;
using Shorten = std::function<QString(const QString&, double room)>;

// All placed names lie within left…right and keep `space` pixels between one another within a row.
[[nodiscard]] std::vector<PlacedName> place_names(const std::vector<Name>& names, double left, double right, int rows,
                                                  double space, const Measure& measure, const Shorten& shorten);

} // namespace lapwright::plots
