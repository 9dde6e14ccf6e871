// SPDX-License-Identifier: GPL-3.0-or-later
// What can be drawn over distance besides speed and gap: what the motion says of every lap, and the channels that the
// files brought.  A channel of A and one of B are the same when they mean the same; those without a known meaning when
// they bear the same name.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"

#include <QString>
#include <vector>

namespace lapwright::models {

struct ChannelChoice {
    QString id;    // stable, for settings: "meaning:throttle", "name:Boost", "motion:lateral"
    QString title; // "Throttle"
    base::Quantity quantity = base::Quantity::none;
    base::Unit own_unit = base::Unit::none; // for channels without a known quantity
    bool whole_numbers = false;             // gears and counts
    const std::vector<double>* a = nullptr; // SI, one value a grid point, NaN where not measured; null: A has none
    const std::vector<double>* b = nullptr;
};

// The pointers live as long as the pairing.
[[nodiscard]] std::vector<ChannelChoice> channels_of(const analysis::Pairing& pairing);

// The same channel of another lap over its own distance; null where it has none.
[[nodiscard]] const std::vector<double>* values_on(const lap::LapTrace& lap, const QString& id);

// The unit in which it is shown.
[[nodiscard]] base::Unit unit_of(const ChannelChoice& choice, base::UnitSystem units);

} // namespace lapwright::models
