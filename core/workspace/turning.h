// SPDX-License-Identifier: GPL-3.0-or-later
// How the car of a session turns, for its video to be held against.
#pragma once

#include "core/analysis/analysis.h"
#include "core/video/propose_step.h"

namespace lapwright::workspace {

// The rate at which the course turns, from the motion; 0 below walking pace, where there is no course.  Empty where
// nothing of the motion is known.
[[nodiscard]] video::Turning turning_of(const analysis::Session& session);

// All that sound, clocks and picture say.
[[nodiscard]] base::Result<video::StepProposal> proposed_step(const analysis::Session& session, video::Video& video,
                                                              const video::GoOn& go_on = {});

} // namespace lapwright::workspace
