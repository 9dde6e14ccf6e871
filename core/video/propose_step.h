// SPDX-License-Identifier: GPL-3.0-or-later
// A video put in step with a recording by itself: by the sound of the engine, by the picture, else roughly by the
// clocks. What was tried is said, and where nothing fits or sound and picture disagree, that too: then a person is
// asked.
#pragma once

#include "core/recording/recording.h"
#include "core/video/in_step.h"
#include "core/video/step_by_picture.h"
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

// What the picture adds, which takes far longer.  Where the sound has told, some ninety seconds of it are held against
// that, and an offset that differs takes the estimate away; else some five minutes are tried at every offset.  The
// error is that of reading the pictures, or cancelled.
[[nodiscard]] base::Result<StepProposal> ask_picture(StepProposal proposal, const Turning& turning, Video& video,
                                                     const GoOn& go_on = {});

} // namespace lapwright::video
