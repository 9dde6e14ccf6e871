// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/lap_spread.h"

#include "core/base/check.h"
#include "core/math/statistics.h"

#include <algorithm>

namespace lapwright::comparison {
namespace {

constexpr std::size_t least_of_spread = 3;
constexpr double left_out_of_spread = 0.1; // at either end

} // namespace

LapSpread lap_spread(std::span<const lap::LapTrace> laps) {
    LapSpread spread;
    spread.laps = laps.size();
    if (laps.size() < least_of_spread) return spread;
    spread.distance_m = laps.front().distance_m;
    std::vector<double> speeds(laps.size());
    for (std::size_t i = 0; i < spread.distance_m.size(); ++i) {
        for (std::size_t k = 0; k < laps.size(); ++k) {
            base::check(laps[k].size() == spread.distance_m.size(), "a lap lies on another grid");
            speeds[k] = laps[k].speed_mps[i];
        }
        std::ranges::sort(speeds);
        spread.low_mps.push_back(math::sorted_quantile(speeds, left_out_of_spread));
        spread.high_mps.push_back(math::sorted_quantile(speeds, 1.0 - left_out_of_spread));
    }
    return spread;
}

} // namespace lapwright::comparison
