// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/power_curve.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::car {
namespace {

constexpr double least_recorded_share = 0.95;
constexpr double least_half_range = 0.03; // of the middle: less shows no curve
constexpr double beyond = 1.15;           // of the half range, which a few samples of a noisy channel may leave

} // namespace

std::optional<EngineScale> EngineScale::of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights) {
    std::vector<double> speeds;
    for (const ThrottleSample& s : samples)
        if (std::isfinite(s.engine_rev_s)) speeds.push_back(s.engine_rev_s);
    if (static_cast<double>(speeds.size()) < least_recorded_share * static_cast<double>(samples.size()))
        return std::nullopt;
    EngineScale scale;
    const double low = math::quantile(speeds, 0.01);
    const double high = math::quantile(speeds, 0.99);
    scale.middle_ = 0.5 * (low + high);
    scale.half_ = 0.5 * (high - low);
    if (!(scale.half_ > least_half_range * scale.middle_)) return std::nullopt;
    std::array<double, curve_terms> sum{};
    double weight = 0.0;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        if (!std::isfinite(samples[i].engine_rev_s)) continue;
        const double w = weights[static_cast<Eigen::Index>(i)];
        const auto terms = scale.terms(samples[i].engine_rev_s);
        for (std::size_t k = 0; k < curve_terms; ++k)
            sum[k] += w * terms[k];
        weight += w;
    }
    if (!(weight > 0.0)) return std::nullopt;
    for (std::size_t k = 0; k < curve_terms; ++k)
        scale.mean_[k] = sum[k] / weight;
    return scale;
}

std::array<double, curve_terms> EngineScale::terms(double engine_rev_s) const {
    if (!std::isfinite(engine_rev_s)) return {}; // the mean
    const double u = std::clamp((engine_rev_s - middle_) / half_, -beyond, beyond);
    return {u - mean_[0], u * u - mean_[1]};
}

} // namespace lapwright::car
