// SPDX-License-Identifier: GPL-3.0-or-later
// What really makes two cars differ: all 32 mixtures of their figures driven by one driver on one line, and each
// figure's Shapley value (1953) per segment. Seconds; positive favours car A. The driver's lap-to-lap spread is off.
// What is exchanged is what laps can tell: power as it comes to the wheels at a speed, so the engine with its gears and
// rotating parts; drag with rolling resistance. Shift times, brakes and traction stay those of car A.
#pragma once

#include <array>
#include <vector>

#include "tests/truth/drive.h"

namespace truth {

/// Order: tyre grip (mu and load exponent), downforce, drag (and rolling), power (its curve and gears), mass.
inline constexpr std::size_t kCauseCount = 5;
using CauseSeconds = std::array<double, kCauseCount>;

struct TrueCauses {
    std::vector<CauseSeconds> segments; // index as TrackShape::segments()
    CauseSeconds total{};
    std::vector<double> segment_gain_s; // simulated: B's time minus A's with A's driver
    double gain_s = 0.0;
};

/// The same driver on every lap: habits stay, the spread from lap to lap is gone.
[[nodiscard]] DriverTruth without_spread(DriverTruth driver);

[[nodiscard]] TrueCauses true_causes(const TrackShape& track, const CarTruth& a, const CarTruth& b,
                                     const DriverTruth& driver, double air_density, double grid_step_m = 1.0);

} // namespace truth
