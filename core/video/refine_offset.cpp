// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/video/refine_offset.h"

#include "core/math/random.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::video {
namespace {

constexpr double step_s = 0.01;
constexpr int reach = 50; // steps to either side: half a second
constexpr std::size_t steps = 2 * reach + 1;
constexpr double piece_s = 10.0;
constexpr std::size_t most_ratios = 8;
constexpr double least_span_for_drift_s = 300.0;
constexpr double most_drift = 150e-6; // three times what quartzes are sold with
constexpr double drift_step = 10e-6;

// How well each offset fits one piece of the video.
struct Piece {
    double middle_s = 0.0;
    std::array<double, steps> fit{};
};

// The figure as bins of the sound's axis, every step_s.
class FigureBins {
  public:
    explicit FigureBins(const Followed& followed) : first_s_(followed.time_s.front()) {
        const auto count = static_cast<std::size_t>((followed.time_s.back() - first_s_) / step_s) + 1;
        for (std::size_t i = 0; i < count; ++i)
            bins_.push_back(bin_of(value_at(followed, first_s_ + static_cast<double>(i) * step_s)));
    }
    // Of the nearest step; NaN outside.
    [[nodiscard]] double at(double time_s, int moved) const {
        const double index = std::round((time_s - first_s_) / step_s) + moved;
        return index >= 0.0 && index < static_cast<double>(bins_.size()) ? bins_[static_cast<std::size_t>(index)]
                                                                         : std::nan("");
    }

  private:
    double first_s_;
    std::vector<double> bins_;
};

// The figure lies on steps; the offsets that are tried are moved so that rows lie on them too.
std::vector<Piece> pieces_of(const Spectrogram& heard, const FigureBins& figure, const std::vector<HeardRatio>& ratios,
                             double offset_s) {
    std::vector<Piece> pieces;
    const auto rows = static_cast<std::size_t>(piece_s / heard.hop_s);
    for (std::size_t first = 0; first + rows <= heard.rows(); first += rows) {
        Piece piece;
        piece.middle_s = heard.start_s + (static_cast<double>(first) + static_cast<double>(rows) / 2.0) * heard.hop_s;
        std::size_t met = 0;
        for (std::size_t row = first; row < first + rows; ++row) {
            const double time_s = heard.start_s + static_cast<double>(row) * heard.hop_s + offset_s;
            for (int move = -reach; move <= reach; ++move) {
                const double bin = figure.at(time_s, move);
                if (std::isnan(bin)) continue;
                met += move == 0 ? 1 : 0;
                for (const HeardRatio& ratio : ratios)
                    piece.fit[static_cast<std::size_t>(move + reach)] +=
                        ratio.weight * static_cast<double>(heard.at(row, bin + ratio.bins));
            }
        }
        if (2 * met > rows) pieces.push_back(piece);
    }
    return pieces;
}

double fit_at(const Piece& piece, double moved_s) {
    const double at = std::clamp(moved_s / step_s + reach, 0.0, static_cast<double>(steps - 1) - 1e-9);
    const auto below = static_cast<std::size_t>(at);
    const double share = at - std::floor(at);
    return (1.0 - share) * piece.fit[below] + share * piece.fit[below + 1];
}

struct Best {
    double moved_s = 0.0;
    double drift = 0.0;
    double fit = -1e300;
};

using Weights = std::vector<double>; // how often each piece counts

// The top of the sum: of the parabola through the values around the highest, half as wide as a window.
Best best_without_drift(const std::vector<Piece>& pieces, const Weights& weights, double drift, double around_s) {
    std::array<double, steps> sum{};
    for (std::size_t i = 0; i < pieces.size(); ++i) {
        if (weights[i] == 0.0) continue;
        const double moved_s = drift * (pieces[i].middle_s - around_s);
        for (std::size_t step = 0; step < steps; ++step)
            sum[step] += weights[i] * fit_at(pieces[i], (static_cast<double>(step) - reach) * step_s + moved_s);
    }
    const auto top = static_cast<int>(std::ranges::max_element(sum) - sum.begin());
    Best best{(top - reach) * step_s, drift, sum[static_cast<std::size_t>(top)]};
    constexpr int wide = 4;
    if (top < wide || top + wide >= static_cast<int>(steps)) return best;
    // Least squares of a parabola on 2·wide + 1 even steps (Savitzky and Golay 1964).
    double slope = 0.0;
    double bend = 0.0;
    double fourth = 0.0;
    double squares = 0.0;
    constexpr double count = 2.0 * wide + 1.0;
    for (int i = -wide; i <= wide; ++i) {
        squares += i * i;
        fourth += i * i * i * i;
    }
    for (int i = -wide; i <= wide; ++i) {
        slope += i * sum[static_cast<std::size_t>(top + i)] / squares;
        bend +=
            (i * i - squares / count) * sum[static_cast<std::size_t>(top + i)] / (fourth - squares * squares / count);
    }
    if (bend < 0.0) best.moved_s += std::clamp(-slope / (2.0 * bend), -1.0 * wide, 1.0 * wide) * step_s;
    return best;
}

Best best_of(const std::vector<Piece>& pieces, const Weights& weights, double around_s, bool with_drift) {
    if (!with_drift) return best_without_drift(pieces, weights, 0.0, around_s);
    Best best;
    for (double drift = -most_drift; drift <= most_drift + drift_step / 2.0; drift += drift_step)
        if (const Best tried = best_without_drift(pieces, weights, drift, around_s); tried.fit > best.fit) best = tried;
    return best;
}

double spread_of(const std::vector<Piece>& pieces, double around_s, double drift) {
    constexpr int resamples = 200;
    math::Random random(1);
    std::vector<double> offsets;
    for (int i = 0; i < resamples; ++i) {
        Weights weights(pieces.size(), 0.0);
        for (std::size_t drawn = 0; drawn < pieces.size(); ++drawn)
            weights[random.below(pieces.size())] += 1.0;
        offsets.push_back(best_without_drift(pieces, weights, drift, around_s).moved_s);
    }
    return math::standard_deviation(offsets);
}

double agreement_of(const std::vector<Piece>& pieces, const Best& best, double around_s) {
    constexpr double near_s = 0.15;
    double agreeing = 0.0;
    for (const Piece& piece : pieces) {
        const auto top = std::ranges::max_element(piece.fit) - piece.fit.begin();
        const double own_s = (static_cast<double>(top) - reach) * step_s;
        if (std::abs(own_s - best.moved_s - best.drift * (piece.middle_s - around_s)) < near_s) agreeing += 1.0;
    }
    return agreeing / static_cast<double>(pieces.size());
}

} // namespace

std::optional<RefinedOffset> refine_offset(const Spectrogram& heard, const Followed& followed,
                                           std::vector<HeardRatio> ratios, double offset_s) {
    std::ranges::sort(ratios, std::ranges::greater(), &HeardRatio::weight);
    ratios.resize(std::min(ratios.size(), most_ratios));
    const FigureBins figure(followed);
    // Rows then fall on the figure's steps.
    const double rest = std::remainder(heard.start_s + offset_s - followed.time_s.front(), step_s);
    offset_s -= rest;
    const std::vector<Piece> pieces = pieces_of(heard, figure, ratios, offset_s);
    if (pieces.size() < 4) return {};
    const double around_s = (pieces.front().middle_s + pieces.back().middle_s) / 2.0;
    const bool with_drift = pieces.back().middle_s - pieces.front().middle_s >= least_span_for_drift_s;
    const Best best = best_of(pieces, Weights(pieces.size(), 1.0), around_s, with_drift);
    RefinedOffset refined;
    refined.step = {offset_s + best.moved_s, best.drift, around_s};
    refined.sd_s = spread_of(pieces, around_s, best.drift);
    refined.agreement = agreement_of(pieces, best, around_s);
    return refined;
}

} // namespace lapwright::video
