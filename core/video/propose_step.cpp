// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/propose_step.h"

#include "core/base/number_text.h"
#include "core/base/progress.h"
#include "core/base/translation.h"
#include "core/video/spectrogram.h"
#include "core/video/step_by_sound.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::video {
namespace {

using base::said;

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
    if (!video.facts.sound) return StepAnswer{{}, said("the video has no sound")};
    const recording::Channel* const channel = followed_channel(recording);
    if (channel == nullptr)
        return StepAnswer{{}, said("neither engine speed nor speed was recorded for the sound to follow")};
    const auto heard = sound(video, 0.0, most_sound_s, sound_rate_hz, go_on);
    if (!heard) return heard.error();
    if (go_on && !go_on()) return base::cancelled();
    const FollowedKind kind =
        channel->meaning == Meaning::engine_speed ? FollowedKind::engine_speed : FollowedKind::speed;
    return step_by_sound(*heard, {kind, *channel->time_s, channel->values});
}

struct Stretch {
    double from_s = 0.0;
    double to_s = 0.0;
};

// Of the video, around its middle; with a step around the middle of what it shares with the recording.
Stretch stretch_of(const Video& video, const Turning& turning, const std::optional<InStep>& step, double long_s) {
    Stretch whole{0.0, video.facts.length_s > 0.0 ? video.facts.length_s : long_s};
    if (step) {
        whole.from_s = std::max(whole.from_s, step->video_s(turning.time_s.front()));
        whole.to_s = std::min(whole.to_s, step->video_s(turning.time_s.back()));
    }
    const double middle_s = 0.5 * (whole.from_s + whole.to_s);
    return {std::max(whole.from_s, middle_s - 0.5 * long_s), std::min(whole.to_s, middle_s + 0.5 * long_s)};
}

double half_width_s(const StepEstimate& estimate) {
    return 0.5 * (estimate.offset_high_s - estimate.offset_low_s);
}

// At the middle of what the picture was held against.
double differ_by_s(const StepEstimate& one, const StepEstimate& seen) {
    const double video_s = seen.step.around_s;
    return std::abs(one.step.recording_s(video_s) - seen.step.recording_s(video_s));
}

bool sound_told(const StepProposal& proposal) {
    return proposal.estimate && proposal.estimate->method != StepMethod::clocks;
}

// The sound is the sharper of the two; where they differ beyond both intervals nobody knows which is right.
StepProposal compared(StepProposal proposal, const StepAnswer& seen) {
    constexpr double as_one_s = 0.1; // a body turns a little before its course does
    if (!seen.estimate) {
        proposal.reasons.push_back(seen.why_not);
        return proposal;
    }
    if (!sound_told(proposal)) {
        proposal.estimate = seen.estimate;
        proposal.reasons.emplace_back(words(StepMethod::picture_and_turning));
        return proposal;
    }
    const double differ_s = differ_by_s(*proposal.estimate, *seen.estimate);
    if (differ_s < as_one_s + half_width_s(*proposal.estimate) + half_width_s(*seen.estimate)) {
        proposal.reasons.push_back(said("the distant picture turns as the car does at the same offset"));
        return proposal;
    }
    proposal.reasons.push_back(
        said("sound and picture disagree by %1 s: by the sound %2, by the picture %3",
             {base::shown_text(differ_s, 2), offset_words(*proposal.estimate), offset_words(*seen.estimate)}));
    proposal.estimate.reset();
    return proposal;
}

} // namespace

base::Result<StepProposal> ask_picture(StepProposal proposal, const Turning& turning, Video& video, const GoOn& go_on) {
    constexpr double to_check_s = 90.0;
    constexpr double to_find_s = 300.0;
    if (turning.time_s.size() < 2) {
        proposal.reasons.push_back(said("how the car turns is not known, so that the picture tells nothing"));
        return proposal;
    }
    const bool told = sound_told(proposal);
    const Stretch part = stretch_of(video, turning, told ? std::optional(proposal.estimate->step) : std::nullopt,
                                    told ? to_check_s : to_find_s);
    const auto flow = picture_flow(video, part.from_s, part.to_s, go_on);
    if (!flow) return flow.error();
    return compared(std::move(proposal), step_by_picture(*flow, turning));
}

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
        proposal.reasons.push_back(said("the clocks of camera and logger say another offset: one of them was not set"));
    return proposal;
}

} // namespace lapwright::video
