// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/power_curve.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::car {
namespace {

constexpr double min_recorded_share = 0.95;
constexpr double min_half_range = 0.03;  // of the middle: less shows no curve
constexpr double beyond = 1.15;          // of the half range, which a few samples of a noisy channel may leave
constexpr double another_gear_mps = 8.0; // below the samples
constexpr double min_share = 0.3;        // of the mean power, and
constexpr double max_share = 1.6;        // at most, at any speed

double engine_speed(const ThrottleSample& s) {
    return s.engine_rev_s;
}

double own_speed(const ThrottleSample& s) {
    return s.speed_mps;
}

} // namespace

std::optional<CurveScale> CurveScale::of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights) {
    for (const bool engine : {true, false}) {
        const auto speed_of = engine ? engine_speed : own_speed;
        std::vector<double> speeds;
        for (const ThrottleSample& s : samples)
            if (std::isfinite(speed_of(s))) speeds.push_back(speed_of(s));
        if (static_cast<double>(speeds.size()) < min_recorded_share * static_cast<double>(samples.size())) continue;
        CurveScale scale;
        scale.over_engine_speed_ = engine;
        const double low = math::quantile(speeds, 0.01);
        const double high = math::quantile(speeds, 0.99);
        scale.middle_ = 0.5 * (low + high);
        scale.half_ = 0.5 * (high - low);
        if (!(scale.half_ > min_half_range * scale.middle_)) continue;
        CurveTerms sum{};
        double weight = 0.0;
        for (std::size_t i = 0; i < samples.size(); ++i) {
            if (!std::isfinite(speed_of(samples[i]))) continue;
            const double w = weights[static_cast<Eigen::Index>(i)];
            const CurveTerms terms = scale.terms(samples[i]);
            for (std::size_t k = 0; k < curve_terms; ++k)
                sum[k] += w * terms[k];
            weight += w;
        }
        if (!(weight > 0.0)) continue;
        for (std::size_t k = 0; k < curve_terms; ++k)
            scale.mean_[k] = sum[k] / weight;
        return scale;
    }
    return std::nullopt;
}

CurveTerms CurveScale::terms(const ThrottleSample& sample) const {
    return terms_at(over_engine_speed_ ? sample.engine_rev_s : sample.speed_mps);
}

CurveTerms CurveScale::terms_at(double speed) const {
    if (!std::isfinite(speed)) return {}; // the mean
    const double u = std::clamp((speed - middle_) / half_, -beyond, beyond);
    return {u - mean_[0], u * u - mean_[1]};
}

// Where no sample is, the nearest speed that has some stands in.
CurveBySpeed::CurveBySpeed(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights,
                           const CurveScale& scale) {
    constexpr auto points = static_cast<std::size_t>(simulation_ceiling_mps / PowerShares::step_mps) + 1;
    std::vector<double> weight(points, 0.0);
    terms_.assign(points, CurveTerms{});
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double place = std::round(std::max(0.0, samples[i].speed_mps) / PowerShares::step_mps);
        const std::size_t at = std::min(points - 1, static_cast<std::size_t>(place));
        const double w = weights[static_cast<Eigen::Index>(i)];
        const CurveTerms terms = scale.terms(samples[i]);
        for (std::size_t k = 0; k < curve_terms; ++k)
            terms_[at][k] += w * terms[k];
        weight[at] += w;
    }
    std::vector<std::size_t> known;
    for (std::size_t at = 0; at < points; ++at)
        if (weight[at] > 0.0) known.push_back(at);
    if (!known.empty()) slowest_mps_ = PowerShares::step_mps * static_cast<double>(known.front());
    for (const std::size_t at : known)
        for (double& term : terms_[at])
            term /= weight[at];
    for (std::size_t at = 0; at < points; ++at) {
        if (weight[at] > 0.0 || known.empty()) continue;
        const auto above = std::ranges::lower_bound(known, at);
        const bool take_above = above != known.end() && (above == known.begin() || *above - at < at - *(above - 1));
        terms_[at] = terms_[take_above ? *above : *(above - 1)];
    }
}

PowerShares CurveBySpeed::shares(const CurveTerms& c, double unseen) const {
    PowerShares shares;
    for (const CurveTerms& terms : terms_) {
        const double speed = PowerShares::step_mps * static_cast<double>(shares.of_power.size());
        const double away = std::clamp((slowest_mps_ - speed) / another_gear_mps, 0.0, 1.0);
        // Another gear is as likely at one end of the curve as at the other: its mean stands in.
        const double curve = (1.0 - away) * (c[0] * terms[0] + c[1] * terms[1]);
        const double share = (1.0 + curve) * (1.0 + unseen * away);
        shares.of_power.push_back(std::clamp(share, min_share, max_share));
    }
    return shares;
}

} // namespace lapwright::car
