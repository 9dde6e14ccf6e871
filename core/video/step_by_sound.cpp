// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/step_by_sound.h"

#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/video/lag_scores.h"
#include "core/video/refine_offset.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <optional>
#include <vector>

namespace lapwright::video {
namespace {

using base::said;

constexpr double fine_hop_s = 0.02;
constexpr double least_overlap_s = 40.0;
constexpr double apart_s = 0.3; // another offset, not the flank of the best one
// What tells a fit from chance, seen over made-up drives in tests/core/video: laps of another session are alike enough
// to reach a score 1.3 times that of their second best offset, or agree in two pieces of three, but not both.
constexpr double least_ratio = 1.3;
// Where more than one lag is as good, the pieces of ten seconds of the right one agree within a millisecond or two,
// those of another lap within ten.
constexpr double least_sharper = 3.0;
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

// The best lag first, then those that are nearly as good; laps of one driver are alike.
struct GoodLags {
    std::vector<std::size_t> lags;
    double ratio = 0.0; // of the best score to the best other one
};

GoodLags good_lags(const LagScores& found) {
    constexpr std::size_t most = 8;
    GoodLags good;
    std::vector<float> left = found.scores;
    const auto apart = static_cast<std::ptrdiff_t>(apart_s / found.hop_s);
    double best = 0.0;
    while (good.lags.size() < most) {
        const auto top = std::ranges::max_element(left);
        const auto score = static_cast<double>(*top);
        if (good.lags.empty()) best = score;
        if (good.ratio == 0.0 && !good.lags.empty() && score > 0.0) good.ratio = best / score;
        if (score <= 0.0 || score * least_ratio < best) break;
        good.lags.push_back(static_cast<std::size_t>(top - left.begin()));
        const auto from = std::max<std::ptrdiff_t>(0, top - left.begin() - apart);
        const auto to = std::min<std::ptrdiff_t>(std::ssize(left), top - left.begin() + apart + 1);
        std::fill(left.begin() + from, left.begin() + to, 0.0F);
    }
    return good;
}

// Of the good lags the one whose pieces agree best; nothing where another one's do nearly as well.
std::optional<RefinedOffset> sharpest(const Spectrogram& fine, const Followed& followed, const LagScores& found,
                                      const std::vector<std::size_t>& lags) {
    std::optional<RefinedOffset> best;
    double other_sd_s = std::numeric_limits<double>::infinity();
    for (const std::size_t lag : lags) {
        const auto heard = found.heard_at(lag);
        const auto refined = heard.empty() ? std::nullopt : refine_offset(fine, followed, heard, found.lag_s(lag));
        if (!refined) continue;
        if (best) other_sd_s = std::min(other_sd_s, std::max(refined->sd_s, best->sd_s));
        if (!best || refined->sd_s < best->sd_s) best = refined;
    }
    return best && other_sd_s >= least_sharper * best->sd_s ? best : std::nullopt;
}

StepAnswer refused(std::string why) {
    return {{}, std::move(why)};
}

} // namespace

StepAnswer step_by_sound(const Sound& sound, const Followed& followed) {
    const Manner manner = manner_of(followed.kind);
    const Spectrogram fine = spectrogram(sound, fine_hop_s);
    if (static_cast<double>(fine.rows()) * fine_hop_s < least_overlap_s)
        return refused(said("the sound of the video is shorter than 40 seconds"));
    const LagScores found = lag_scores(coarser(fine, manner.rows), followed, least_overlap_s);
    if (found.scores.empty()) return refused(said("the recording is too short"));
    const GoodLags good = good_lags(found);
    if (good.lags.empty() || found.heard_at(good.lags.front()).empty())
        return refused(said("no engine is heard that follows the recording"));
    const auto refined = sharpest(fine, followed, found, good.lags);
    if (!refined || refined->sd_s > worst_sd_s || refined->agreement < least_agreement)
        return refused(said("no offset stands out at which the engine that is heard follows the recording"));
    const double half_width_s = base::half_width_95(std::hypot(refined->sd_s, manner.bias_sd_s));
    StepEstimate estimate;
    estimate.step = refined->step;
    estimate.offset_low_s = refined->step.offset_s - half_width_s;
    estimate.offset_high_s = refined->step.offset_s + half_width_s;
    estimate.method =
        followed.kind == FollowedKind::engine_speed ? StepMethod::sound_and_engine_speed : StepMethod::sound_and_speed;
    estimate.score = good.ratio;
    return {estimate, ""};
}

} // namespace lapwright::video
