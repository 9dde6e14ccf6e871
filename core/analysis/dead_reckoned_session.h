// SPDX-License-Identifier: GPL-3.0-or-later
// Sessions that were recorded without positions: what their file must know, and how they come to a line.
#pragma once

#include "core/base/result.h"
#include "core/lap/place_on_line.h"
#include "core/motion/motion_estimate.h"
#include "core/recording/recording.h"

namespace lapwright::analysis {

[[nodiscard]] bool is_dead_reckoned(const motion::MotionEstimate& motion);

// The passings that the file stamps, within the motion, which must outlive the result.  Error no_laps when there are
// fewer than two.
[[nodiscard]] base::Result<lap::DeadReckoned> dead_reckoned_session(const recording::Recording& recording,
                                                                    const motion::MotionEstimate& motion);

} // namespace lapwright::analysis
