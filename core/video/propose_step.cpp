// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/propose_step.h"

#include "core/base/progress.h"
#include "core/video/spectrogram.h"
#include "core/video/step_by_sound.h"

#include <cmath>

namespace lapwright::video {
namespace {

constexpr double most_sound_s = 2400.0; // 40 minutes: an outing; some 100 MB on the way
constexpr double clocks_agree_s = 120.0;

using recording::Meaning;

// Engine speed where it was recorded, else a speed.
const recording::Channel* followed_channel(const recording::Recording& recording) {
    for (const Meaning meaning : {Meaning::engine_speed, Meaning::speed, Meaning::wheel_speed})
        if (const auto* channel = recording.find(meaning); channel != nullptr && channel->size() > 1) return channel;
    return nullptr;
}

base::Result<StepAnswer> by_sound(const recording::Recording& recording, Video& video, const GoOn& go_on) {
    if (!video.facts.sound) return StepAnswer{{}, "the video has no sound"};
    const recording::Channel* const channel = followed_channel(recording);
    if (channel == nullptr)
        return StepAnswer{{}, "neither engine speed nor speed was recorded for the sound to follow"};
    const auto heard = sound(video, 0.0, most_sound_s, sound_rate_hz, go_on);
    if (!heard) return heard.error();
    if (go_on && !go_on()) return base::cancelled();
    const FollowedKind kind =
        channel->meaning == Meaning::engine_speed ? FollowedKind::engine_speed : FollowedKind::speed;
    return step_by_sound(*heard, {kind, *channel->time_s, channel->values});
}

} // namespace

base::Result<StepProposal> propose_step(const recording::Recording& recording, Video& video, const GoOn& go_on) {
    StepProposal proposal;
    const auto heard = by_sound(recording, video, go_on);
    if (!heard) return heard.error();
    const StepAnswer clocks =
        step_by_clocks(video.facts.created_unix_s, video.facts.length_s, recording.start_unix_s, recording.duration_s);
    proposal.estimate = heard->estimate ? heard->estimate : clocks.estimate;
    proposal.reasons.push_back(heard->estimate ? std::string(words(heard->estimate->method)) : heard->why_not);
    if (!clocks.estimate)
        proposal.reasons.push_back(clocks.why_not);
    else if (!heard->estimate)
        proposal.reasons.emplace_back(words(StepMethod::clocks));
    else if (std::abs(clocks.estimate->step.offset_s - heard->estimate->step.recording_s(0.0)) > clocks_agree_s)
        proposal.reasons.emplace_back("the clocks of camera and logger say another offset: one of them was not set");
    return proposal;
}

} // namespace lapwright::video
