// SPDX-License-Identifier: GPL-3.0-or-later
// Recording -> MotionEstimate.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/motion/motion_estimate.h"
#include "core/recording/recording.h"

#include <cstdint>
#include <optional>

namespace lapwright::motion {

struct Options {
    // The frame to express the path in; nothing: a frame at the recording's median position.
    std::optional<LocalFrame> frame;
    // Size of the ensemble, 0..256, and the seed of its random numbers; two recordings draw numbers of their own.
    unsigned draws = 32;
    std::uint64_t seed = 1;
    unsigned threads = 0; // 0: as many as there are cores
};

// The frame that estimate_motion would choose: at the median latitude and longitude.
// Error no_motion when the recording has neither positions nor a speed.
[[nodiscard]] base::Result<LocalFrame> natural_frame(const recording::Recording& recording);

// Two recordings err independently, so each draws numbers of its own: the bits of what was measured set them apart.
// The same recording draws the same numbers always, whoever is A.
[[nodiscard]] std::uint64_t own_seed(const recording::Recording& recording, std::uint64_t seed);

[[nodiscard]] base::Result<MotionEstimate> estimate_motion(const recording::Recording& recording,
                                                           const Options& options = {},
                                                           const base::Progress& progress = {});

} // namespace lapwright::motion
