// SPDX-License-Identifier: GPL-3.0-or-later
// Gear changes, and the time that upward ones cost.
//
// A car whose push is broken off for a moment comes back to the speed it had a time τ later, and from there follows the
// same curve of speed over time, delayed.  At a later place, passed with speed v_end, it is behind by
//   τ (1 − v₀ / v_end),
// because while delayed it still covers τ v₀ (derived; exact for any push that depends on speed alone, if v_end is the
// mean speed over the last Σ τ v₀ of the car without shifts: half that stretch faster than the car itself is).  τ is
// the speed that is missing after the shift over the acceleration there would have been, ∫ (a₀ − a) dt / a₀, with a₀
// from the push a v on either side, which smoothing of the motion leaves as it is.  Where the push beside a shift is
// not the engine's full one (out of a corner), the drive is taken to be broken off for as long as in the lap's other
// shifts.
#pragma once

#include "core/lap/lap.h"

#include <optional>
#include <vector>

namespace lapwright::comparison {

struct Shifts {
    double count = 0.0; // up and down; neutral between two gears is part of one shift
    // Seconds lost by the upward ones by the end of the acceleration they are made in; absent where there are none, or
    // none of the lap is made at full throttle.  Noise may make it negative.
    std::optional<double> cost_s;
};

struct LapShift {
    double at_m = 0.0;
    std::optional<double> cost_s; // of an upward one that can be judged
};

// All shifts of a lap in their order; none without a gear channel.
[[nodiscard]] std::vector<LapShift> shifts_of_lap(const lap::LapTrace& motion, const lap::LapTrace& recorded);

// Those of a lap that were made from one distance up to another (which is no longer in).  Absent without a gear channel
// of `recorded` there.
[[nodiscard]] std::optional<Shifts> shifts_between(const std::vector<LapShift>& of_lap, const lap::LapTrace& recorded,
                                                   double from_m, double to_m);

// The same in one step.  Of the shifts made from one distance up to another (which
// is no longer in).  `recorded` has the channels, `motion` the speeds on the same
// grid: the same lap, or one of its draws.  Absent without a gear channel there.
[[nodiscard]] std::optional<Shifts> shifts_between(const lap::LapTrace& motion, const lap::LapTrace& recorded,
                                                   double from_m, double to_m);

} // namespace lapwright::comparison
