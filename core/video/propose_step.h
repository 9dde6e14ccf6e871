// SPDX-License-Identifier: GPL-3.0-or-later
// A video put in step with a recording by itself: by the sound of the engine, else roughly by the clocks.  What was
// tried is said, and where nothing fits, that too: then a person is asked for a mark.
#pragma once

#include "core/recording/recording.h"
#include "core/video/in_step.h"
#include "core/video/video.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::video {

struct StepProposal {
    std::optional<StepEstimate> estimate;
    std::vector<std::string> reasons; // a sentence for each way that was tried, without a full stop
};

// The error is that of reading the video's sound, or cancelled.
[[nodiscard]] base::Result<StepProposal> propose_step(const recording::Recording& recording, Video& video,
                                                      const GoOn& go_on = {});

} // namespace lapwright::video
