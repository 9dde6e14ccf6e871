// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/driving_force.h"

#include "core/base/constants.h"
#include "core/car/full_throttle.h"
#include "core/car/power_curve.h"
#include "core/math/random.h"
#include "core/math/robust_regression.h"
#include "core/math/statistics.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <map>
#include <optional>

namespace lapwright::car {
namespace {

constexpr double g = base::standard_gravity_mps2;
constexpr double usual_rolling = 0.014;
constexpr double rolling_sd = 0.003;
constexpr double usual_rotating = 0.03;
constexpr double rotating_sd = 0.01;
// Relative change of power for a change of speed of its own size: a driven tyre slips 1 % where it pushes with 0.3 of
// its load and less at speed, and gears differ by half a per cent in what they lose.
constexpr double power_tilt_sd = 0.012;
constexpr std::size_t fewest_samples = 30;
constexpr double samples_alike = 7.0; // neighbours share their error: the motion is smoothed over some 20 m
constexpr double min_noise_mps2 = 0.02;
constexpr double normal_sd_over_mad = 1.4826; // of the median magnitude of normal errors
constexpr int noise_rounds = 3;
// Along a straight wind and gradient that nobody measured act alike: 0.03 m/s² is a gradient of 0.3 %.  That
// prior counts as much as four straights.
constexpr double straight_sd_mps2 = 0.03;
constexpr double straight_prior_weight = 4.0;
// From a kei car to beyond any that laps a circuit.
constexpr double min_power_per_kg = 15.0;
constexpr double max_power_per_kg = 1500.0;

// Of either component.  Over open land a mean of 3 to 4 m/s at 10 m, some 60 % of it at the height of a car.
constexpr double wind_sd_mps = 1.8;

constexpr Eigen::Index wind_at = 2;  // two components
constexpr Eigen::Index curve_at = 4; // c₁ and c₂
constexpr Eigen::Index max_unknowns = curve_at + static_cast<Eigen::Index>(curve_terms);
using Unknowns = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, max_unknowns, 1>;
using Normal = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, max_unknowns, max_unknowns>;

// One sample's columns: of p, of d, of d times the headwind along and across the lap's first direction, of p c₁ and p
// c₂.  A wind of w against the car makes v² of the drag (v + w)² = v² + 2 v w, but for w².
Unknowns columns(const ThrottleSample& s, const std::optional<CurveScale>& scale) {
    Unknowns x = Unknowns::Zero(scale ? max_unknowns : curve_at);
    x[0] = 1.0 / s.speed_mps;
    x[1] = -s.speed_mps * s.speed_mps;
    x[wind_at] = -2.0 * s.speed_mps * std::cos(s.course_rad);
    x[wind_at + 1] = -2.0 * s.speed_mps * std::sin(s.course_rad);
    if (!scale) return x;
    const CurveTerms terms = scale->terms(s);
    for (std::size_t k = 0; k < curve_terms; ++k)
        x[curve_at + static_cast<Eigen::Index>(k)] = terms[k] / s.speed_mps;
    return x;
}

// Sums over the samples of one straight, over all laps: normal equations, right sides for a, for the slope and for 1.
struct Straight {
    explicit Straight(Eigen::Index unknowns)
        : normal(Normal::Zero(unknowns, unknowns)), acceleration(Unknowns::Zero(unknowns)),
          slope(Unknowns::Zero(unknowns)), one(Unknowns::Zero(unknowns)) {}

    Normal normal;
    Unknowns acceleration;
    Unknowns slope;
    Unknowns one;
    double acceleration_sum = 0.0;
    double slope_sum = 0.0;
    double weight = 0.0;
};

std::map<std::size_t, Straight> straights_of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights,
                                             const std::optional<CurveScale>& scale) {
    std::map<std::size_t, Straight> straights;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const ThrottleSample& s = samples[i];
        const Unknowns x = columns(s, scale);
        Straight& sums = straights.try_emplace(s.segment, x.size()).first->second;
        const double w = weights[static_cast<Eigen::Index>(i)];
        sums.normal += w * x * x.transpose();
        sums.acceleration += w * s.acceleration_mps2 * x;
        sums.slope += w * s.slope * g * x;
        sums.one += w * x;
        sums.acceleration_sum += w * s.acceleration_mps2;
        sums.slope_sum += w * s.slope * g;
        sums.weight += w;
    }
    return straights;
}

// What no lap can tell, as one draw of it.
struct Nuisance {
    double rolling = usual_rolling;
    double rotating = usual_rotating;
    double tilt = 0.0;
};

struct Noise {
    double variance = 0.0;          // of one sample, times the samples that share their error
    double straight_variance = 0.0; // of what all samples of a straight share
};

// The same with every straight's own offset u ~ N(0, straight_variance) integrated out (random intercepts: Laird and
// Ware 1982): information = Σ (N − ρ m mᵀ) / s², ρ = 1 / (s²/τ² + n).
struct Information {
    Normal matrix;
    Unknowns acceleration;
    Unknowns slope;
    Unknowns one;

    [[nodiscard]] Unknowns right_side(const Nuisance& n) const {
        return (1.0 + n.rotating) * acceleration + slope + n.rolling * g * one;
    }
};

Information information_of(const std::map<std::size_t, Straight>& straights, const Noise& noise) {
    const Eigen::Index unknowns = straights.begin()->second.one.size();
    Information sum{Normal::Zero(unknowns, unknowns), Unknowns::Zero(unknowns), Unknowns::Zero(unknowns),
                    Unknowns::Zero(unknowns)};
    for (const auto& [segment, s] : straights) {
        const double shared = 1.0 / (noise.variance / noise.straight_variance + s.weight);
        sum.matrix += (s.normal - shared * s.one * s.one.transpose()) / noise.variance;
        sum.acceleration += (s.acceleration - shared * s.acceleration_sum * s.one) / noise.variance;
        sum.slope += (s.slope - shared * s.slope_sum * s.one) / noise.variance;
        sum.one += (1.0 - shared * s.weight) / noise.variance * s.one;
    }
    return sum;
}

// The priors as information; of the wind for the drag that is usual, of the curve for p as first found.
struct Prior {
    Unknowns precision;
    Unknowns mean;
};

Prior prior_of(const DrivingPrior& prior, const std::optional<CurveScale>& scale, double first_power) {
    const Eigen::Index unknowns = scale ? max_unknowns : curve_at;
    Prior p{Unknowns::Zero(unknowns), Unknowns::Zero(unknowns)};
    p.precision[0] = 1.0 / (prior.power_sd * prior.power_sd);
    p.mean[0] = prior.power_per_kg;
    p.precision[1] = 1.0 / (prior.drag_sd * prior.drag_sd);
    p.mean[1] = prior.drag_per_kg;
    for (Eigen::Index i = wind_at; i < unknowns; ++i) {
        const double sd = i < curve_at ? wind_sd_mps * prior.drag_per_kg
                                       : scale->prior_sd()[static_cast<std::size_t>(i - curve_at)] * first_power;
        p.precision[i] = 1.0 / (sd * sd);
    }
    return p;
}

struct Mean {
    double sum = 0.0;
    double weight = 0.0;
    [[nodiscard]] double value() const { return sum / weight; }
};

// How many times the variance of independent samples the means of groups have; `fitted` parameters were fitted.
template <typename Key>
double samples_alike_in(const std::map<Key, Mean>& groups, double variance, std::size_t fitted) {
    double sum = 0.0;
    for (const auto& [key, mean] : groups)
        sum += mean.weight * mean.value() * mean.value() / variance;
    return groups.size() > fitted ? sum / static_cast<double>(groups.size() - fitted) : 0.0;
}

// Errors are shared by neighbours, by all of a straight, and, where one power does not do, by all of a speed: the means
// of the residuals tell how far.
Noise noise_of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights,
               const Eigen::VectorXd& residuals, std::size_t unknowns) {
    std::map<std::size_t, Mean> straights;
    std::map<std::pair<std::size_t, std::size_t>, Mean> passes;
    std::map<long, Mean> speeds;
    std::vector<double> sizes;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const auto at = static_cast<Eigen::Index>(i);
        const double w = weights[at];
        if (!(w > 0.0)) continue;
        sizes.push_back(std::abs(residuals[at]));
        const ThrottleSample& s = samples[i];
        for (Mean* mean :
             {&straights[s.segment], &passes[{s.segment, s.lap}], &speeds[std::lround(s.speed_mps / 2.0)]}) {
            mean->sum += w * residuals[at];
            mean->weight += w;
        }
    }
    for (auto& [place, mean] : passes)
        mean.sum -= mean.weight * straights[place.first].value();
    const double scale = std::max(min_noise_mps2, normal_sd_over_mad * math::median(sizes));
    const double variance = scale * scale;
    Noise noise;
    noise.variance = variance * std::max({samples_alike, samples_alike_in(passes, variance, straights.size()),
                                          samples_alike_in(speeds, variance, unknowns)});
    double squares = straight_prior_weight * straight_sd_mps2 * straight_sd_mps2;
    for (const auto& [segment, mean] : straights)
        squares += std::max(0.0, mean.value() * mean.value() - noise.variance / mean.weight);
    noise.straight_variance = squares / (straight_prior_weight + static_cast<double>(straights.size()));
    return noise;
}

Unknowns centre_of(const Information& data, const Prior& prior) {
    const Normal precision = data.matrix + Normal(prior.precision.asDiagonal());
    return precision.ldlt().solve(data.right_side({}) + prior.precision.cwiseProduct(prior.mean));
}

Eigen::VectorXd residuals_of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& y, const Unknowns& x,
                             const std::optional<CurveScale>& scale) {
    Eigen::VectorXd residuals = y;
    for (Eigen::Index i = 0; i < y.size(); ++i)
        residuals[i] -= columns(samples[static_cast<std::size_t>(i)], scale).dot(x);
    return residuals;
}

CurveTerms curve_of(const Unknowns& x) {
    CurveTerms c{};
    for (std::size_t k = 0; k < curve_terms; ++k)
        c[k] = x[curve_at + static_cast<Eigen::Index>(k)] / x[0];
    return c;
}

// A car that may be: beyond, a draw of the normal posterior is drawn again, which cuts prior and posterior alike.
bool possible(const Unknowns& x, const DrivingPrior& prior) {
    return x[0] > min_power_per_kg && x[0] < max_power_per_kg && x[1] > 0.1 * prior.drag_per_kg &&
           x[1] < 4.0 * prior.drag_per_kg;
}

// A tilt of the power turns p/v into p/v (1 + ε (v/v̄ − 1)) = p/v − ε p/v + ε p/v̄.
Unknowns tilted(Unknowns x, double tilt, double mean_speed, const Unknowns& of_one) {
    const double push = tilt * x[0];
    x -= push / mean_speed * of_one;
    x[0] += push;
    return x;
}

// Exact draws of the posterior: what no lap can tell first, then p, d and the curve given it; Student's tails for a
// noise that is known from few straights.
void draw_posterior(DrivingForce& fit, const Information& data, const Prior& prior, const DrivingPrior& bounds,
                    double mean_speed, const std::optional<CurveBySpeed>& by_speed, double unseen_sd, std::size_t count,
                    math::Random& random) {
    const Eigen::Index unknowns = data.one.size();
    const Normal precision = data.matrix + Normal(prior.precision.asDiagonal());
    const Eigen::LLT<Normal> root(precision);
    if (root.info() != Eigen::Success) return;
    const Unknowns of_one = root.solve(data.one);
    const double degrees_of_freedom = straight_prior_weight + static_cast<double>(fit.outcome.rests_on);
    Unknowns prior_pull = prior.precision.cwiseProduct(prior.mean);
    for (std::size_t attempt = 0; fit.draws.size() < count && attempt < 100 * count; ++attempt) {
        Nuisance nuisance;
        nuisance.rolling = std::max(0.006, usual_rolling + rolling_sd * random.normal());
        nuisance.rotating = std::max(0.0, usual_rotating + rotating_sd * random.normal());
        nuisance.tilt = power_tilt_sd * random.normal();
        Unknowns z(unknowns);
        for (Eigen::Index i = 0; i < unknowns; ++i)
            z[i] = random.normal();
        double spread = 0.0;
        for (int i = 0; i < static_cast<int>(degrees_of_freedom); ++i)
            spread += std::pow(random.normal(), 2) / std::floor(degrees_of_freedom);
        Unknowns x = root.solve(data.right_side(nuisance) + prior_pull);
        x += root.matrixU().solve(z) / std::sqrt(std::max(0.05, spread));
        x = tilted(x, nuisance.tilt, mean_speed, of_one);
        if (!possible(x, bounds)) continue;
        fit.draws.push_back({x[0], x[1], nuisance.rolling, nuisance.rotating, {}});
        if (by_speed) fit.draws.back().power_shares = by_speed->shares(curve_of(x), unseen_sd * random.normal());
    }
}

double median_of(const std::vector<DrivingForceDraw>& draws, double DrivingForceDraw::* member) {
    std::vector<double> values;
    for (const DrivingForceDraw& draw : draws)
        values.push_back(draw.*member);
    return math::median(values);
}

double sd_of(const std::vector<DrivingForceDraw>& draws, double DrivingForceDraw::* member) {
    std::vector<double> values;
    for (const DrivingForceDraw& draw : draws)
        values.push_back(draw.*member);
    return math::standard_deviation(values);
}

PowerCurveSeen curve_seen(const CurveScale& scale, const Unknowns& best) {
    constexpr int steps = 20;
    PowerCurveSeen seen{scale.slowest(), scale.fastest(), 1e9, 0.0};
    const CurveTerms c = curve_of(best);
    for (int i = 0; i <= steps; ++i) {
        const CurveTerms terms =
            scale.terms_at(seen.slowest_rev_s + (seen.fastest_rev_s - seen.slowest_rev_s) * i / steps);
        const double share = 1.0 + c[0] * terms[0] + c[1] * terms[1];
        seen.min_share = std::min(seen.min_share, share);
        seen.max_share = std::max(seen.max_share, share);
    }
    return seen;
}

// Which samples count, by a regression without priors: wind, and a curve over the car's own speed, are left to the
// posterior, since few straights tell them from drag.
math::RobustFit regress(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& y,
                        const std::optional<CurveScale>& scale) {
    const Eigen::Index curve = scale && scale->over_engine_speed() ? static_cast<Eigen::Index>(curve_terms) : 0;
    Eigen::MatrixXd design(y.size(), 2 + curve);
    for (Eigen::Index i = 0; i < y.size(); ++i) {
        const Unknowns x = columns(samples[static_cast<std::size_t>(i)], scale);
        design.row(i).head(2) = x.head(2).transpose();
        if (curve > 0) design.row(i).tail(curve) = x.tail(curve).transpose();
    }
    return math::fit_robust(design, y, math::Intercept::no, math::RobustLoss::tukey);
}

bool usable(const math::RobustFit& robust, Eigen::Index samples) {
    return robust.outcome.status != base::FitStatus::failed && robust.weights.size() == samples;
}

// A metre at full throttle gives a speed of P / m v² to the car: so weighted, one mean power stands for the curve.
Eigen::VectorXd power_weights(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights) {
    Eigen::VectorXd result = weights;
    for (Eigen::Index i = 0; i < result.size(); ++i)
        result[i] /= std::pow(samples[static_cast<std::size_t>(i)].speed_mps, 2);
    return result;
}

} // namespace

DrivingForce fit_driving_force(const CarData& data, const DrivingPrior& prior, std::size_t draws, std::uint64_t seed) {
    DrivingForce fit;
    fit.outcome.status = base::FitStatus::failed;
    const std::vector<ThrottleSample> samples = full_throttle_samples(data);
    if (samples.size() < fewest_samples) return fit;
    Eigen::VectorXd y(static_cast<Eigen::Index>(samples.size()));
    double speed_sum = 0.0;
    for (Eigen::Index i = 0; i < y.size(); ++i) {
        const ThrottleSample& s = samples[static_cast<std::size_t>(i)];
        y[i] = (1.0 + usual_rotating) * s.acceleration_mps2 + (usual_rolling + s.slope) * g;
        speed_sum += s.speed_mps;
    }
    math::RobustFit robust = regress(samples, y, CurveScale::of(samples, Eigen::VectorXd::Ones(y.size())));
    if (!usable(robust, y.size()) || !(robust.fit.coefficients[0] > 0.0)) robust = regress(samples, y, std::nullopt);
    if (!usable(robust, y.size())) return fit;
    for (Eigen::Index i = 0; i < y.size(); ++i)
        fit.evidence.push_back({samples[static_cast<std::size_t>(i)].speed_mps, y[i], robust.weights[i] > 0.3});
    const Eigen::VectorXd weights = power_weights(samples, robust.weights);
    const std::optional<CurveScale> scale = CurveScale::of(samples, weights);
    const auto straights = straights_of(samples, robust.weights, scale);
    fit.outcome.rests_on = straights.size();
    const double first_power = std::max(min_power_per_kg, robust.fit.coefficients[0]);
    const Prior pull = prior_of(prior, scale, first_power);
    Information information = information_of(straights, noise_of(samples, robust.weights, robust.fit.residuals, 2));
    for (int i = 0; i < noise_rounds; ++i)
        information = information_of(straights, noise_of(samples, robust.weights,
                                                         residuals_of(samples, y, centre_of(information, pull), scale),
                                                         2 + (scale ? curve_terms : 0)));
    math::Random random(seed, 11);
    const auto by_speed = scale ? std::optional<CurveBySpeed>(CurveBySpeed(samples, weights, *scale)) : std::nullopt;
    draw_posterior(fit, information, pull, prior, speed_sum / static_cast<double>(y.size()), by_speed,
                   scale ? scale->unseen_sd() : 0.0, draws, random);
    if (fit.draws.size() < draws) return fit;
    fit.best = {median_of(fit.draws, &DrivingForceDraw::power_per_kg),
                median_of(fit.draws, &DrivingForceDraw::drag_per_kg),
                usual_rolling,
                usual_rotating,
                {}};
    fit.power_sd = sd_of(fit.draws, &DrivingForceDraw::power_per_kg);
    fit.drag_sd = sd_of(fit.draws, &DrivingForceDraw::drag_per_kg);
    if (scale && scale->over_engine_speed()) {
        fit.curve = curve_seen(*scale, centre_of(information, pull));
    }
    fit.outcome.status = robust.outcome.status;
    fit.outcome.rounds = robust.outcome.rounds;
    return fit;
}

} // namespace lapwright::car
