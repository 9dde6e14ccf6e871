// SPDX-License-Identifier: GPL-3.0-or-later
// What a column of speeds is to a speed that is known: to the one over the ground by the positions, or to another
// column. The ratio tells km/h from mph where no unit is written, and finds out a unit that is written wrongly.
#pragma once

#include "core/base/units.h"
#include "core/import/samples.h"

#include <optional>
#include <span>
#include <vector>

namespace lapwright::import {

// Speed in m/s at the sampled rows from positions in radians and time in seconds (a number a row, NaN where absent):
// the chord over half a second or more, on a sphere (good to 1 %).  NaN where it cannot be had.
[[nodiscard]] std::vector<double> speed_by_positions(const Samples& samples, std::span<const double> time_s,
                                                     std::span<const double> latitude,
                                                     std::span<const double> longitude);

// Median of column over speed_mps where the speed is over 4 m/s; nothing with fewer than eight such rows.
[[nodiscard]] std::optional<double> ratio_to_speed(std::span<const double> column, std::span<const double> speed_mps);

struct UnitFit {
    base::Unit unit{};
    double misfit = 0.0; // 0.02: 2 % off
};

// The unit of speed that makes the ratio one, nearest.
[[nodiscard]] UnitFit unit_of_ratio(double ratio);

} // namespace lapwright::import
