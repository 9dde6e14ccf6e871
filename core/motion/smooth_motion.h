// SPDX-License-Identifier: GPL-3.0-or-later
// The smoother: one path through everything that was measured, with an ensemble of paths that could as well have been.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/motion/estimate_motion.h"
#include "core/motion/measurements.h"
#include "core/motion/motion_model.h"

namespace lapwright::motion {

// Without positions it reckons from speed and turning (dead_reckoning.h).  Stamps are those of positions, speed and
// course, and some between where these are missing for long. `known` are noise levels that need not be learnt: nothing
// but the car's jerk is then (the yardstick of the tests). Errors no_motion, cancelled.
[[nodiscard]] base::Result<MotionEstimate> smooth_motion(const Measurements& measured, const Options& options,
                                                         const base::Progress& progress,
                                                         const std::optional<NoiseLevels>& known = {});

} // namespace lapwright::motion
