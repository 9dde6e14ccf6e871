// SPDX-License-Identifier: GPL-3.0-or-later
// What a lap without positions shows of the track: its cornering over its own
// distance, which is integrated speed brought to a given length.  Lateral acceleration
// is positive to the left, or to the right in some recordings: nothing here knows.
#pragma once

#include "core/motion/motion_estimate.h"

#include <cstddef>
#include <span>
#include <vector>

namespace lapwright::lap {

// On an even grid of distance over one lap, first at 0, the end left out (it is the next lap's first).
struct Cornering {
    double step_m = 0.0;
    std::vector<double> speed_mps; // in the given length's metres
    std::vector<double> lateral_mps2;
    std::vector<double> longitudinal_mps2;

    [[nodiscard]] std::size_t size() const { return speed_mps.size(); }
    [[nodiscard]] double length_m() const { return step_m * static_cast<double>(size()); }
};

// Distance that the speed gives at every stamp of the path, 0 at the first.
[[nodiscard]] std::vector<double> integrated_distance(const motion::Path& path);

// The integrated distance at a moment.
[[nodiscard]] double distance_at(const motion::Path& path, const std::vector<double>& distance_m, double time_s);

// The lap between two moments, brought to length_m, on `points` places.  The path must hold the lap.
[[nodiscard]] Cornering cornering_of(const motion::Path& path, const std::vector<double>& distance_m, double start_s,
                                     double end_s, double length_m, std::size_t points);

// Means over a window on a closed grid, twice (a triangle); half_width 0 leaves the values as they are.
[[nodiscard]] std::vector<double> blurred(std::span<const double> closed_values, std::size_t half_width);

} // namespace lapwright::lap
