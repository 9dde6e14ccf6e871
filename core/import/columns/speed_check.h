// SPDX-License-Identifier: GPL-3.0-or-later
// What a column of speeds is to a speed that is known: to the one over the ground by the positions, or to another
// column. The ratio tells km/h from mph where no unit is written, and finds out a unit that is written wrongly.
#pragma once

#include "core/base/units.h"
#include "core/import/tables/samples.h"

#include <optional>
#include <span>
#include <vector>

namespace lapwright::import {

// (2a + b) / 3 of WGS 84, as IUGG defines the mean radius (Moritz 2000).
inline constexpr double mean_earth_radius_m = 6371008.8;

// Speed in m/s at the sampled rows from positions in radians and time in seconds (a number a row, NaN where absent):
// the chord over half a second or more, on a sphere (good to 1 %).  NaN where it cannot be had.
[[nodiscard]] std::vector<double> speed_by_positions(const Samples& samples, std::span<const double> time_s,
                                                     std::span<const double> latitude,
                                                     std::span<const double> longitude);

struct Accelerations {
    std::vector<double> longitudinal_mps2; // a sampled row, NaN where it cannot be had
    std::vector<double> lateral_mps2;      // positive to the left
};

// The same for accelerations, from one chord to the next.
[[nodiscard]] Accelerations accelerations_by_positions(const Samples& samples, std::span<const double> time_s,
                                                       std::span<const double> latitude,
                                                       std::span<const double> longitude);

// Median size of column over that of the acceleration, where that is clear of noise; nothing with fewer than eight such
// rows, or where the two have little to do with each other.
[[nodiscard]] std::optional<double> ratio_of_sizes(std::span<const double> column, std::span<const double> other);

struct Ratio {
    double middle = 0.0; // median
    double spread = 0.0; // median distance from it, as a part of it
};

// Column over speed_mps where the speed is over 4 m/s; nothing with fewer than eight such rows.
[[nodiscard]] std::optional<Ratio> ratio_to_speed(std::span<const double> column, std::span<const double> speed_mps);

// The column's growth a second, over half a second or more; NaN where it cannot be had.
[[nodiscard]] std::vector<double> growth(const Samples& samples, std::span<const double> time_s,
                                         std::span<const double> column);

// That over speed_mps, as ratio_to_speed has it.
[[nodiscard]] std::optional<Ratio> growth_over_speed(const Samples& samples, std::span<const double> time_s,
                                                     std::span<const double> column, std::span<const double> speed_mps);

struct UnitFit {
    base::Unit unit{};
    double misfit = 0.0; // 0.02: 2 % off
};

// The unit of speed that makes the ratio one, nearest.
[[nodiscard]] UnitFit unit_of_ratio(double ratio);

// How far a column is from the speed in its written unit, and where none is written in the nearest one: a share of the
// speed, with its scatter.  Nothing where the two are not of one motion, or too far apart.
[[nodiscard]] std::optional<double> misfit_to_speed(std::span<const double> column,
                                                    const std::optional<base::Unit>& written,
                                                    std::span<const double> speed_mps);

// The unit of length that makes the ratio of a distance's growth to the speed one; nothing where none does.
[[nodiscard]] std::optional<base::Unit> unit_of_growth(const Ratio& ratio);

} // namespace lapwright::import
