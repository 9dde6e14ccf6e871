// SPDX-License-Identifier: GPL-3.0-or-later
// The offset of sound to recording around a coarse one, its spread and the drift of the clocks.
#pragma once

#include "core/video/in_step.h"
#include "core/video/lag_scores.h"

#include <optional>

namespace lapwright::video {

struct RefinedOffset {
    InStep step;
    double sd_s = 0.0;      // of the offset
    double agreement = 0.0; // share of the pieces of ten seconds whose own best offset lies within 0.15 s of it
};

// Nothing where fewer than four pieces of ten seconds meet the recording.
[[nodiscard]] std::optional<RefinedOffset> refine_offset(const Spectrogram& heard, const Followed& followed,
                                                         std::vector<HeardRatio> ratios, double offset_s);

} // namespace lapwright::video
