// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/power_curve.h"

#include "core/base/constants.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace lapwright::car {
namespace {

constexpr double min_recorded_share = 0.95;
constexpr double min_range = 1.06;       // highest over lowest: less shows no curve
constexpr double beyond = 1.15;          // of the half range, which a few samples of a noisy channel may leave
constexpr double another_gear_mps = 8.0; // below the samples
constexpr double min_share = 0.3;        // of the mean power, and
constexpr double max_share = 1.6;        // at most, at any speed
constexpr Eigen::Index engine_terms = 2;
// Stated priors over engine speed (common practice, no source): over what is used in a lap power changes by some fifth.
constexpr std::array<double, engine_terms> engine_curve_sd{0.15, 0.10};
// Over the car's speed, relative to the standard deviation of the power over it: roots of mean squares over 6000
// gearboxes drawn at random (five to seven gears whose steps shrink towards the top, 50 to 90 % of the power at 60 % of
// the highest engine speed, best at 70 to 100 %, upshifts at 85 to 100 %, from 45 % of the top speed; drawn anew in
// power_curve_test.cpp).  The slow terms go with those two above them.
constexpr std::array<double, max_curve_terms> gearbox_spectrum{0.265, 0.224, 0.287, 0.44, 0.55,
                                                               0.55,  0.48,  0.38,  0.29, 0.24};
constexpr std::array<double, 2> correlation_two_above{0.78, 0.64};
// That standard deviation: 1.5 to 12 % in nine of ten of those gearboxes, half of them above 4.8 %; an electric motor's
// next to nothing.  A log-normal of median 4 % and factor e, at steps of a factor of the root of 2.
constexpr double usual_variation = 0.04;
constexpr double variation_log_sd = 1.0;
constexpr int variation_steps = 10; // either way

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
        scale.slowest_ = math::quantile(speeds, 0.01);
        scale.fastest_ = math::quantile(speeds, 0.99);
        if (!(scale.slowest_ > 0.0) || !(scale.fastest_ / scale.slowest_ > min_range)) continue;
        scale.mean_ = CurveTerms::Zero(engine ? engine_terms : max_curve_terms);
        CurveTerms sum = scale.mean_;
        double weight = 0.0;
        for (std::size_t i = 0; i < samples.size(); ++i) {
            if (!std::isfinite(speed_of(samples[i]))) continue;
            const double w = weights[static_cast<Eigen::Index>(i)];
            sum += w * scale.terms(samples[i]);
            weight += w;
        }
        if (!(weight > 0.0)) continue;
        scale.mean_ = sum / weight;
        return scale;
    }
    return std::nullopt;
}

CurveTerms CurveScale::terms(const ThrottleSample& sample) const {
    return terms_at(over_engine_speed_ ? sample.engine_rev_s : sample.speed_mps);
}

CurveTerms CurveScale::terms_at(double speed) const {
    CurveTerms terms = CurveTerms::Zero(term_count());
    if (!std::isfinite(speed)) return terms; // the mean
    if (over_engine_speed_) {
        const double u = std::clamp((2.0 * speed - slowest_ - fastest_) / (fastest_ - slowest_), -beyond, beyond);
        terms << u, u * u;
    } else {
        const double part =
            std::clamp(std::log(std::max(speed, slowest_) / slowest_) / std::log(fastest_ / slowest_), 0.0, 1.0);
        for (Eigen::Index k = 0; k < terms.size(); ++k)
            terms[k] = std::cos(base::pi * static_cast<double>(k + 1) * part);
    }
    return terms - mean_;
}

std::vector<CurvePrior> CurveScale::priors() const {
    if (over_engine_speed_) {
        const Eigen::Map<const Eigen::Vector2d> sd(engine_curve_sd.data());
        return {{CurveCovariance(sd.cwiseAbs2().asDiagonal()), 0.0}};
    }
    const Eigen::Map<const Eigen::Matrix<double, max_curve_terms, 1>> spectrum(gearbox_spectrum.data());
    CurveCovariance relative = spectrum.cwiseAbs2().asDiagonal();
    for (Eigen::Index k = 0; k < 2; ++k)
        relative(k, k + 2) = relative(k + 2, k) =
            correlation_two_above[static_cast<std::size_t>(k)] * spectrum[k] * spectrum[k + 2];
    std::vector<CurvePrior> priors;
    for (int step = -variation_steps; step <= variation_steps; ++step) {
        const double log_ratio = 0.5 * std::numbers::ln2 * step;
        const double away = log_ratio / variation_log_sd;
        const double variation = usual_variation * std::exp(log_ratio);
        priors.push_back({variation * variation * relative, -0.5 * away * away});
    }
    return priors;
}

// Where no sample is, the nearest speed that has some stands in.
CurveBySpeed::CurveBySpeed(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights,
                           const CurveScale& scale) {
    constexpr auto points = static_cast<std::size_t>(simulation_ceiling_mps / PowerShares::step_mps) + 1;
    std::vector<double> weight(points, 0.0);
    terms_.assign(points, CurveTerms::Zero(scale.term_count()));
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const double place = std::round(std::max(0.0, samples[i].speed_mps) / PowerShares::step_mps);
        const std::size_t at = std::min(points - 1, static_cast<std::size_t>(place));
        const double w = weights[static_cast<Eigen::Index>(i)];
        terms_[at] += w * scale.terms(samples[i]);
        weight[at] += w;
    }
    std::vector<std::size_t> known;
    for (std::size_t at = 0; at < points; ++at)
        if (weight[at] > 0.0) known.push_back(at);
    if (!known.empty()) slowest_mps_ = PowerShares::step_mps * static_cast<double>(known.front());
    for (const std::size_t at : known)
        terms_[at] /= weight[at];
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
        const double curve = (1.0 - away) * c.dot(terms);
        const double share = (1.0 + curve) * (1.0 + unseen * away);
        shares.of_power.push_back(std::clamp(share, min_share, max_share));
    }
    return shares;
}

} // namespace lapwright::car
