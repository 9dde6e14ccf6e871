// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/step_by_sound.h"

#include "core/base/wording.h"
#include "core/video/lag_scores.h"
#include "core/video/refine_offset.h"

#include <algorithm>
#include <cmath>

namespace lapwright::video {
namespace {

constexpr double fine_hop_s = 0.02;
constexpr double least_overlap_s = 40.0;
constexpr double apart_s = 0.3; // another offset, not the flank of the best one
// What tells a fit from chance, seen over made-up drives in tests/core/video: laps of another session are alike enough
// to reach a score 1.3 times that of their second best offset, or agree in two pieces of three, but not both.
constexpr double least_ratio = 1.3;
constexpr double least_agreement = 0.8;
constexpr double worst_sd_s = 0.05;

// How the two kinds of figure differ; both values are seen over the same drives.
struct Manner {
    std::size_t rows = 0;   // put together for the search over all offsets
    double bias_sd_s = 0.0; // what is left of windows and interpolation
};
constexpr Manner manner_of(FollowedKind kind) {
    // With speed the ratio is free: while a car speeds up evenly, a ratio and an offset are hard to tell apart.
    return kind == FollowedKind::engine_speed ? Manner{5, 0.0003} : Manner{2, 0.03};
}

// Rows put together, a number of them at a time, with variance one again.
Spectrogram coarser(const Spectrogram& fine, std::size_t together) {
    const auto count = static_cast<double>(together);
    Spectrogram made{fine.start_s + (count - 1.0) / 2.0 * fine.hop_s, fine.hop_s * count, {}};
    const std::size_t rows = fine.rows() / together;
    made.values.assign(rows * sound_bins, 0.0F);
    for (std::size_t row = 0; row < rows * together; ++row)
        for (std::size_t bin = 0; bin < sound_bins; ++bin)
            made.values[row / together * sound_bins + bin] += fine.values[row * sound_bins + bin];
    return made;
}

struct Peak {
    std::size_t index = 0;
    double ratio = 0.0; // to the best other one
};

Peak best_lag(const LagScores& found) {
    const auto best = std::ranges::max_element(found.scores);
    Peak peak{static_cast<std::size_t>(best - found.scores.begin()), 0.0};
    float other = 0.0F;
    const auto apart = static_cast<std::size_t>(apart_s / found.hop_s);
    for (std::size_t i = 0; i < found.scores.size(); ++i)
        if (i + apart < peak.index || i > peak.index + apart) other = std::max(other, found.scores[i]);
    if (other > 0.0F) peak.ratio = static_cast<double>(*best) / static_cast<double>(other);
    return peak;
}

StepAnswer refused(std::string why) {
    return {{}, std::move(why)};
}

} // namespace

StepAnswer step_by_sound(const Sound& sound, const Followed& followed) {
    const Manner manner = manner_of(followed.kind);
    const Spectrogram fine = spectrogram(sound, fine_hop_s);
    if (static_cast<double>(fine.rows()) * fine_hop_s < least_overlap_s)
        return refused("the sound of the video is shorter than 40 seconds");
    const LagScores found = lag_scores(coarser(fine, manner.rows), followed, least_overlap_s);
    if (found.scores.empty()) return refused("the recording is too short");
    const Peak peak = best_lag(found);
    const auto heard = found.heard_at(peak.index);
    if (heard.empty()) return refused("no engine is heard that follows the recording");
    const auto refined = refine_offset(fine, followed, heard, found.lag_s(peak.index));
    if (!refined || refined->sd_s > worst_sd_s || refined->agreement < least_agreement || peak.ratio < least_ratio)
        return refused("no offset stands out at which the engine that is heard follows the recording");
    const double half_width_s = base::half_width_95(std::hypot(refined->sd_s, manner.bias_sd_s));
    StepEstimate estimate;
    estimate.step = refined->step;
    estimate.offset_low_s = refined->step.offset_s - half_width_s;
    estimate.offset_high_s = refined->step.offset_s + half_width_s;
    estimate.method =
        followed.kind == FollowedKind::engine_speed ? StepMethod::sound_and_engine_speed : StepMethod::sound_and_speed;
    estimate.score = peak.ratio;
    return {estimate, ""};
}

} // namespace lapwright::video
