// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/level_cases.h"

#include "core/motion/motion_model.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::lap {
namespace {

// Over so long a receiver's error may hang together, each beforehand as likely as the next: part of a minute for
// reflections, many minutes for satellites and air.  Common experience, no source.
constexpr std::array correlations_s{40.0, 80.0, 160.0, 320.0, 640.0};
using Scales = std::array<double, correlations_s.size()>;

// Standard deviation of a receiver's mean error over the session, against what the draws say: a Gauss-Markov process
// that walks as fast has a variance proportional to τ, and its mean over T one of τ² (1 - τ/T (1 - e^(-T/τ))) / T.
Scales scales_of(double span_s) {
    const auto variance = [&](double tau_s) {
        return tau_s * tau_s * (1.0 + tau_s / span_s * std::expm1(-span_s / tau_s));
    };
    Scales scales{};
    std::ranges::transform(correlations_s, scales.begin(), [&](double tau_s) {
        return std::sqrt(variance(tau_s) / variance(motion::NoiseLevels{}.bias_correlation_s));
    });
    return scales;
}

} // namespace

std::vector<LevelCase> level_cases(const DrawnLevel& own, const DrawnLevel& first, const Shift& seen) {
    const Scales first_scales = scales_of(first.span_s);
    std::vector<LevelCase> cases;
    double sum = 0.0;
    for (const double own_scale : scales_of(own.span_s))
        for (const double first_scale : first_scales) {
            const double beforehand = own_scale * own_scale * own.variance + first_scale * first_scale * first.variance;
            const double in_all = beforehand + seen.variance();
            const double likelihood = std::exp(-0.5 * seen.value.squaredNorm() / in_all) / in_all;
            cases.push_back({own_scale, first_scale, beforehand / in_all, likelihood});
            sum += likelihood;
        }
    // So far away that none of them is likely: the widest.
    if (!(sum > 0.0)) sum = cases.back().chance = 1.0;
    for (LevelCase& one : cases)
        one.chance /= sum;
    return cases;
}

double mean_gain(std::span<const LevelCase> cases) {
    double gain = 0.0;
    for (const LevelCase& one : cases)
        gain += one.chance * one.gain;
    return gain;
}

const LevelCase& case_at(std::span<const LevelCase> cases, double share) {
    double sum = 0.0;
    for (const LevelCase& one : cases) {
        sum += one.chance;
        if (sum >= share) return one;
    }
    return cases.back();
}

} // namespace lapwright::lap
