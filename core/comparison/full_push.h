// SPDX-License-Identifier: GPL-3.0-or-later
// How much of the engine's full push a car uses, from motion alone, where no throttle was recorded.
//
// At full throttle  a + rolling = p / v − d v²  (per kilogram).  p and d are fitted to the lap's upper envelope: by
// bins of speed above half of the fastest, the 80 % quantile of the acceleration where the car gains speed and hardly
// turns (shifts and lifts lie below).  d is held near that of a usual car (stated prior; common practice, no source).
#pragma once

#include "core/lap/lap.h"

#include <optional>

namespace lapwright::comparison {

// What slows a usual car without drive, per kilogram: at all speeds, and per v².  Common practice, no source.
constexpr double usual_rolling_mps2 = 0.13;
constexpr double usual_drag_per_m = 4.3e-4;

struct FullPush {
    double power_w_per_kg = 0.0; // p
    double drag_per_m = 0.0;     // d

    // 1 at full throttle where the tyres do not limit, 0 without drive, negative when braking.
    [[nodiscard]] double share(double speed_mps, double acceleration_mps2) const;
};

// Absent when the lap shows too little of the engine.
[[nodiscard]] std::optional<FullPush> full_push(const lap::LapTrace& trace);

} // namespace lapwright::comparison
