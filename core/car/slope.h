// SPDX-License-Identifier: GPL-3.0-or-later
// Slope of the track from recorded altitude, where that is credible.
#pragma once

#include <span>
#include <vector>

namespace lapwright::car {

// altitudes: one vector a lap at the stations distance_m (0 .. length).  Waves of at least
// 400 m along the lap, each kept only where its amplitude stands out three standard errors
// over the laps; receivers' heights drift by metres.  Returns d height / d path at the
// stations; empty with fewer than three laps or when no wave stands out (then call it flat).
[[nodiscard]] std::vector<double> slope_of(const std::vector<std::vector<double>>& altitudes,
                                           std::span<const double> distance_m);

} // namespace lapwright::car
