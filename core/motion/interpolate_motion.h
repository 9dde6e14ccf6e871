// SPDX-License-Identifier: GPL-3.0-or-later
// Motion straight through the measured samples, nothing smoothed and no uncertainty told: what noise-free input needs,
// and the yardstick that the smoother has to beat.
#pragma once

#include "core/base/result.h"
#include "core/motion/measurements.h"
#include "core/motion/motion_estimate.h"

namespace lapwright::motion {

// Stamps are those of the positions.  Velocity comes from speed and course where both were measured, else its direction
// comes from the positions, else all of it; acceleration is its derivative (five-point differences, exact on quartics).
// Gaps of more than half a second and splits are bridged, and reported; no difference is taken across them.
// Error no_motion without positions.
[[nodiscard]] base::Result<MotionEstimate> interpolate_motion(const Measurements& measured);
[[nodiscard]] base::Result<MotionEstimate> interpolate_motion(const recording::Recording& recording);

} // namespace lapwright::motion
