// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/latency.h"

#include <algorithm>
#include <cmath>

namespace lapwright::motion {
namespace {

constexpr double farthest_s = 0.6;
constexpr double coarse_step_s = 0.03;
constexpr double fine_step_s = 0.01;
constexpr std::size_t most_samples = 12000;
constexpr std::size_t coarse_share = 4; // the first look takes one sample in so many
constexpr std::size_t fewest_samples = 100;
// Errors of path and readings hang together over some tenths of a second, so that samples count for fewer.
constexpr double correlated_samples = 8.0;

struct Fit {
    double offset = 0.0;
    double slope = 0.0;
    double correlation = 0.0;
    double left_over = 0.0; // mean square
    double count = 0.0;
};

Fit line(const Series& series, std::span<const double> time_s, std::span<const double> truth, double latency_s,
         std::size_t stride) {
    double n = 0.0, x = 0.0, y = 0.0, xx = 0.0, xy = 0.0, yy = 0.0;
    std::size_t at = 0;
    for (std::size_t i = 0; i < series.size(); i += stride) {
        const double moment = series.time_s[i] - latency_s;
        if (moment < time_s.front() || moment >= time_s.back()) continue;
        while (at + 2 < time_s.size() && time_s[at + 1] <= moment)
            ++at;
        const double gap = time_s[at + 1] - time_s[at];
        const double value = truth[at] + (truth[at + 1] - truth[at]) * (moment - time_s[at]) / gap;
        if (std::isnan(value) || gap > 1.5) continue;
        n += 1.0;
        x += value;
        y += series.values[i];
        xx += value * value;
        xy += value * series.values[i];
        yy += series.values[i] * series.values[i];
    }
    if (n < static_cast<double>(fewest_samples)) return {};
    const double sxx = xx - x * x / n;
    const double sxy = xy - x * y / n;
    const double syy = yy - y * y / n;
    if (sxx <= 0.0 || syy <= 0.0) return {};
    const double slope = sxy / sxx;
    return {(y - slope * x) / n, slope, sxy / std::sqrt(sxx * syy), std::max(0.0, syy - slope * sxy) / n, n};
}

} // namespace

bool Relation::has_latency() const {
    return std::fabs(latency_s) > std::max(4.0 * latency_sd_s, 0.004);
}

std::optional<Relation> relation(const Series& series, std::span<const double> time_s, std::span<const double> truth) {
    if (series.size() < fewest_samples || time_s.size() < fewest_samples) return std::nullopt;
    const std::size_t stride = 1 + series.size() / most_samples;
    const auto fit_at = [&](double latency_s) { return line(series, time_s, truth, latency_s, stride); };
    double best_s = 0.0;
    Fit best;
    const auto search = [&](double middle_s, double reach_s, double step_s, std::size_t one_in) {
        best = line(series, time_s, truth, middle_s, one_in);
        const int steps = static_cast<int>(std::lround(reach_s / step_s));
        for (int i = -steps; i <= steps; ++i) {
            const Fit fit = line(series, time_s, truth, middle_s + i * step_s, one_in);
            if (fit.count == 0.0 || (best.count > 0.0 && fit.left_over >= best.left_over)) continue;
            best = fit;
            best_s = middle_s + i * step_s;
        }
    };
    search(0.0, farthest_s, coarse_step_s,
           series.size() > coarse_share * fewest_samples * 2 ? coarse_share * stride : stride);
    search(best_s, 2.0 * fine_step_s, fine_step_s, stride);
    if (best.count == 0.0 || std::fabs(best.correlation) < 0.5) return std::nullopt;

    const Fit before = fit_at(best_s - fine_step_s);
    const Fit after = fit_at(best_s + fine_step_s);
    const double bend = before.left_over - 2.0 * best.left_over + after.left_over;
    if (before.count == 0.0 || after.count == 0.0 || bend <= 0.0) return std::nullopt;
    const double shift = std::clamp(0.5 * (before.left_over - after.left_over) / bend, -1.0, 1.0) * fine_step_s;
    // left over = σ² + ½ L² bend/step²; each of n/c independent samples: var(L) = σ² c / (n · ½ bend/step²).
    const double curvature = 0.5 * bend / (fine_step_s * fine_step_s);
    const double variance = best.left_over * correlated_samples / (best.count * curvature);
    const Fit there = fit_at(best_s + shift);
    return Relation{best_s + shift, std::sqrt(variance), there.offset, there.slope, there.correlation};
}

} // namespace lapwright::motion
