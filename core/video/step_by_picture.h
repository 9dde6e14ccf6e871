// SPDX-License-Identifier: GPL-3.0-or-later
// The offset of a video to a recording by the picture: what is far away moves sideways as the car turns, so that the
// flow of the picture follows the yaw rate, at a scale that is the lens's.
//
// Every offset is tried by the correlation of the two where they overlap; the best one is refined by least squares
// (Lucas and Kanade 1981, IJCAI, 674: a shift from the gradient) on pieces of ten seconds, whose spread gives the
// interval.
#pragma once

#include "core/video/in_step.h"
#include "core/video/picture_flow.h"

#include <vector>

namespace lapwright::video {

// How the car turns, as its motion has it.
struct Turning {
    std::vector<double> time_s;     // of the recording, strictly increasing
    std::vector<double> rate_radps; // as many, positive to the left
};

// Refused with a reason where no offset stands out among the others.
[[nodiscard]] StepAnswer step_by_picture(const Flow& flow, const Turning& turning);

} // namespace lapwright::video
