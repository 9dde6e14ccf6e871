// SPDX-License-Identifier: GPL-3.0-or-later
// The same motion in another frame: sessions that are compared must lie on one map.
#pragma once

#include "core/base/result.h"
#include "core/motion/motion_estimate.h"

namespace lapwright::motion {

// Positions of the best path go through geodetic coordinates (heights are those of the frames' origins), exact to
// 1e-6 m; velocities, accelerations and the draws' small differences from it are turned by the frames' Jacobian, exact
// to 1e-6 of their size.  Free of cost when the frames are equal, or when both sessions are in metres of their own.
// Error different_tracks when one is on Earth and the other is not, or they lie more than 100 km apart.
[[nodiscard]] base::Result<MotionEstimate> in_frame(MotionEstimate motion, const LocalFrame& frame);

[[nodiscard]] bool same_frame(const LocalFrame& a, const LocalFrame& b);

} // namespace lapwright::motion
