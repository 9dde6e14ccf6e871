// SPDX-License-Identifier: GPL-3.0-or-later
// Which samples of the laps show the engine's full push: fast, nearly straight, throttle open where it was recorded
// (else accelerating like the best at that speed, but for wind and hills), once the power has risen out of the corner,
// out of shifts, and so for a third of a second on either side, because the motion is smoothed.
#pragma once

#include "core/car/car_figures.h"

#include <vector>

namespace lapwright::car {

struct ThrottleSample {
    std::size_t lap = 0;
    std::size_t segment = 0;
    double distance_m = 0.0;
    double speed_mps = 0.0;
    double acceleration_mps2 = 0.0;
    double slope = 0.0;
    double engine_rev_s = 0.0; // NaN where it was not recorded
    double course_rad = 0.0;   // from that at the lap's start
};

[[nodiscard]] std::vector<ThrottleSample> full_throttle_samples(const CarData& data);

// The place in `segments` of the one that holds a distance.
[[nodiscard]] std::size_t segment_at(const std::vector<track::Segment>& segments, double distance_m);

// 99.5 % quantile of speed over all laps.
[[nodiscard]] double fastest_speed_mps(const CarData& data);

} // namespace lapwright::car
