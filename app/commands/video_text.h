// SPDX-License-Identifier: GPL-3.0-or-later
// What is said of a video and of how it stands to a recording.
#pragma once

#include "core/recording/recording.h"
#include "core/video/propose_step.h"
#include "core/video/video.h"

#include <string>

namespace lapwright::commands {

[[nodiscard]] std::string video_json(const recording::Recording& recording, const video::Video& video,
                                     const video::StepProposal& proposal);
[[nodiscard]] std::string video_table(const video::Video& video, const video::StepProposal& proposal);

} // namespace lapwright::commands
