// SPDX-License-Identifier: GPL-3.0-or-later
// One panel of the stack, as its two source files share it.
#pragma once

#include "ui/plots/cursor.h"
#include "ui/plots/plot_stack.h"

#include <QString>
#include <span>
#include <vector>

namespace lapwright::plots {

// Points of one curve; not owned.
struct Series {
    std::span<const double> xs;
    std::span<const double> ys;
};

struct PlotStack::Panel {
    QString title;
    QCPAxisRect* rect = nullptr;
    ReadOut read_out;
    const Drawing* writing = nullptr; // names or numbers that lines keep clear of
    std::vector<Series> series;       // what the value axis is fitted to
    bool with_zero = false;           // the whole lap's values are shown with zero among them
};

} // namespace lapwright::plots
