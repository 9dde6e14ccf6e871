// SPDX-License-Identifier: GPL-3.0-or-later
// Motion without satellites: speed integrated along a heading that yaw rate (or lateral acceleration over speed) turns.
// The path begins at the origin, northward.  Distance along it is what it is good for; its shape drifts with the
// heading, and a lateral sensor that is positive to the right mirrors it.
#pragma once

#include "core/motion/measurements.h"
#include "core/motion/motion_estimate.h"

#include <cstdint>

namespace lapwright::motion {

// The measurements with a course made from yaw rate, else lateral acceleration, else a constant one, at the stamps of
// the speed (of the wheels where there is no other).  Needs a speed.
[[nodiscard]] Measurements with_dead_reckoned_course(const Measurements& measured);

// Speeds that are integrated carry an error of scale that comes and goes with slip and temperature; the smoother's
// draws know of white noise only.  Gives each draw such an error of its own, Gauss-Markov, of 0.3 % and 5 s (ours, no
// source; a constant error of scale drops out when a lap is scaled to the track's length).
void add_scale_errors(MotionEstimate& motion, std::uint64_t seed);

} // namespace lapwright::motion
