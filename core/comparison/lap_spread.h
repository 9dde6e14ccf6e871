// SPDX-License-Identifier: GPL-3.0-or-later
// How far a driver's own clean laps lie apart, place by place.
#pragma once

#include "core/lap/lap.h"

#include <span>
#include <vector>

namespace lapwright::comparison {

// Speeds between which the middle four fifths of the laps lie (type 7 quantiles, math/statistics.h): with few laps
// that is nearly from the slowest to the quickest.  Empty with fewer than three laps.
struct LapSpread {
    std::vector<double> distance_m;
    std::vector<double> low_mps;
    std::vector<double> high_mps;
    std::size_t laps = 0;
};

// Of traces on one grid.
[[nodiscard]] LapSpread lap_spread(std::span<const lap::LapTrace> laps);

} // namespace lapwright::comparison
