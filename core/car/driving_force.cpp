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
#include <array>
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
// Relative change of power for a change of speed of its own size: that of gears and tyres, and where engine speed is
// not known that of the engine as well.
constexpr double power_tilt_sd = 0.02;
constexpr double unknown_engine_tilt_sd = 0.05;
constexpr std::size_t fewest_samples = 30;
constexpr double samples_alike = 7.0; // neighbours share their error: the motion is smoothed over some 20 m

using Unknowns = Eigen::Matrix<double, Eigen::Dynamic, 1, 0, 2 + curve_terms, 1>;
using Normal = Eigen::Matrix<double, Eigen::Dynamic, Eigen::Dynamic, 0, 2 + curve_terms, 2 + curve_terms>;

// One sample's columns: of p, of d and, where engine speed is known, of p c₁ and p c₂.
Unknowns columns(const ThrottleSample& s, const std::optional<EngineScale>& scale) {
    Unknowns x = Unknowns::Zero(scale ? 2 + static_cast<Eigen::Index>(curve_terms) : 2);
    x[0] = 1.0 / s.speed_mps;
    x[1] = -s.speed_mps * s.speed_mps;
    if (!scale) return x;
    const auto terms = scale->terms(s.engine_rev_s);
    for (std::size_t k = 0; k < curve_terms; ++k)
        x[2 + static_cast<Eigen::Index>(k)] = terms[k] / s.speed_mps;
    return x;
}

// Normal equations of one straight in one lap, with right sides for a, for the slope, and for 1.
struct Block {
    explicit Block(Eigen::Index unknowns)
        : normal(Normal::Zero(unknowns, unknowns)), acceleration(Unknowns::Zero(unknowns)),
          slope(Unknowns::Zero(unknowns)), one(Unknowns::Zero(unknowns)) {}

    std::size_t straight = 0;
    std::size_t lap = 0;
    Normal normal;
    Unknowns acceleration;
    Unknowns slope;
    Unknowns one;
};

std::vector<Block> blocks_of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights,
                             const std::optional<EngineScale>& scale) {
    std::map<std::pair<std::size_t, std::size_t>, Block> blocks;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const ThrottleSample& s = samples[i];
        const Unknowns x = columns(s, scale);
        Block& b = blocks.try_emplace({s.segment, s.lap}, x.size()).first->second;
        b.straight = s.segment;
        b.lap = s.lap;
        const double w = weights[static_cast<Eigen::Index>(i)];
        b.normal += w * x * x.transpose();
        b.acceleration += w * s.acceleration_mps2 * x;
        b.slope += w * s.slope * g * x;
        b.one += w * x;
    }
    std::vector<Block> list;
    for (const auto& [key, block] : blocks)
        list.push_back(block);
    return list;
}

// Positions 0, 1, 2 … for the values that occur.
std::map<std::size_t, std::size_t> numbered(const std::vector<Block>& blocks, std::size_t Block::* member) {
    std::map<std::size_t, std::size_t> order;
    for (const Block& b : blocks)
        order.emplace(b.*member, order.size());
    std::size_t i = 0;
    for (auto& [value, place] : order)
        place = i++;
    return order;
}

std::vector<double> counts_with_replacement(std::size_t count, math::Random& random) {
    std::vector<double> counts(count, 0.0);
    for (const std::size_t i : math::draw_with_replacement(count, random))
        counts[i] += 1.0;
    return counts;
}

struct Nuisance {
    double rolling = usual_rolling;
    double rotating = usual_rotating;
    double tilt = 0.0;
    double mean_speed = 40.0;
    std::array<double, curve_terms> curve{}; // where the prior of c₁ and c₂ lies
};

// What the priors of c₁ and c₂ weigh in the normal equations.
struct CurvePrior {
    double power = 0.0; // p that the shares are of
    double noise_variance = 0.0;
};

Unknowns solve(const Block& sum, const Nuisance& nuisance, const CurvePrior& prior) {
    Normal normal = sum.normal;
    Unknowns right = (1.0 + nuisance.rotating) * sum.acceleration + sum.slope + nuisance.rolling * g * sum.one;
    for (Eigen::Index i = 2; i < normal.rows(); ++i) {
        const auto k = static_cast<std::size_t>(i - 2);
        const double sd = curve_prior_sd[k] * prior.power;
        const double weight = prior.noise_variance / (sd * sd);
        normal(i, i) += weight;
        right[i] += weight * nuisance.curve[k] * sd;
    }
    const Eigen::LDLT<Normal> ldlt(normal);
    Unknowns x = ldlt.solve(right);
    // A tilt of the power turns p/v into p/v (1 + ε (v/v̄ − 1)) = p/v − ε p/v + ε p/v̄.
    const double push = nuisance.tilt * x[0];
    x -= push / nuisance.mean_speed * ldlt.solve(sum.one);
    x[0] += push;
    return x;
}

Block add(const std::vector<Block>& blocks, const std::vector<double>& weights) {
    Block sum(blocks.front().normal.rows());
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        sum.normal += weights[i] * blocks[i].normal;
        sum.acceleration += weights[i] * blocks[i].acceleration;
        sum.slope += weights[i] * blocks[i].slope;
        sum.one += weights[i] * blocks[i].one;
    }
    return sum;
}

bool usable(const Block& sum) {
    const Eigen::Matrix2d normal = sum.normal.topLeftCorner<2, 2>();
    const Eigen::Vector2d scale = normal.diagonal().cwiseSqrt().cwiseMax(1e-300).cwiseInverse();
    const Eigen::Matrix2d correlation = scale.asDiagonal() * normal * scale.asDiagonal();
    return 1.0 - correlation(0, 1) * correlation(0, 1) > 1e-5;
}

// Draws are moved towards the prior as far as the data leave it room (perturbed observations, Burgers, van Leeuwen and
// Evensen 1998).
void heed_prior(DrivingForce& fit, const DragPrior& prior, math::Random& random) {
    std::vector<double> p;
    std::vector<double> d;
    for (const DrivingForceDraw& draw : fit.draws) {
        p.push_back(draw.power_per_kg);
        d.push_back(draw.drag_per_kg);
    }
    fit.power_sd = math::standard_deviation(p);
    fit.drag_sd = math::standard_deviation(d);
    const double variance = fit.drag_sd * fit.drag_sd;
    const double covariance = math::correlation(p, d) * fit.power_sd * fit.drag_sd;
    const double total = variance + prior.sd_per_kg * prior.sd_per_kg;
    if (!(variance > 0.0) || !std::isfinite(covariance)) return;
    for (DrivingForceDraw& draw : fit.draws) {
        const double surprise = prior.mean_per_kg + prior.sd_per_kg * random.normal() - draw.drag_per_kg;
        draw.power_per_kg += covariance / total * surprise;
        draw.drag_per_kg = std::max(0.02 * prior.mean_per_kg, draw.drag_per_kg + variance / total * surprise);
    }
    const double surprise = prior.mean_per_kg - fit.best.drag_per_kg;
    fit.best.power_per_kg += covariance / total * surprise;
    fit.best.drag_per_kg = std::max(0.02 * prior.mean_per_kg, fit.best.drag_per_kg + variance / total * surprise);
}

void draw_spread(DrivingForce& fit, const std::vector<Block>& blocks, const CurvePrior& prior, double mean_speed,
                 std::size_t count, math::Random& random) {
    const auto straights = numbered(blocks, &Block::straight);
    const auto laps = numbered(blocks, &Block::lap);
    fit.straights = straights.size();
    // A bootstrap of few groups is too narrow by √(n/(n − 1)).
    const auto n = static_cast<double>(std::max<std::size_t>(2, straights.size()));
    const double widen = std::sqrt(n / (n - 1.0));
    const Block all = add(blocks, std::vector<double>(blocks.size(), 1.0));
    Nuisance usual;
    usual.mean_speed = mean_speed;
    const Unknowns centre = solve(all, usual, prior);
    std::vector<double> weights(blocks.size());
    for (std::size_t attempt = 0; fit.draws.size() < count && attempt < 10 * count; ++attempt) {
        const auto straight_counts = counts_with_replacement(straights.size(), random);
        const auto lap_counts = counts_with_replacement(laps.size(), random);
        for (std::size_t i = 0; i < blocks.size(); ++i)
            weights[i] = straight_counts[straights.at(blocks[i].straight)] * lap_counts[laps.at(blocks[i].lap)];
        const Block sum = add(blocks, weights);
        if (!usable(sum)) continue;
        Nuisance nuisance = usual;
        nuisance.rolling = std::max(0.006, usual_rolling + rolling_sd * random.normal());
        nuisance.rotating = std::max(0.0, usual_rotating + rotating_sd * random.normal());
        nuisance.tilt = (centre.size() > 2 ? power_tilt_sd : unknown_engine_tilt_sd) * random.normal();
        if (centre.size() > 2)
            for (double& c : nuisance.curve)
                c = random.normal();
        const Unknowns resampled = solve(sum, usual, prior);
        const Unknowns systematic = solve(all, nuisance, prior) - centre;
        const Unknowns x = centre + widen * (resampled - centre) + systematic;
        fit.draws.push_back({x[0], x[1], nuisance.rolling, nuisance.rotating});
    }
}

PowerCurveSeen curve_seen(const EngineScale& scale, const Unknowns& best) {
    constexpr int steps = 20;
    PowerCurveSeen seen{scale.slowest_rev_s(), scale.fastest_rev_s(), 1e9, 0.0};
    for (int i = 0; i <= steps; ++i) {
        const double at = seen.slowest_rev_s + (seen.fastest_rev_s - seen.slowest_rev_s) * i / steps;
        const auto terms = scale.terms(at);
        double share = 1.0;
        for (std::size_t k = 0; k < curve_terms; ++k)
            share += best[2 + static_cast<Eigen::Index>(k)] / best[0] * terms[k];
        seen.least_share = std::min(seen.least_share, share);
        seen.most_share = std::max(seen.most_share, share);
    }
    return seen;
}

// Samples as one robust regression takes them.
struct Regression {
    std::optional<EngineScale> scale;
    math::RobustFit robust;
};

Regression regress(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& y,
                   const std::optional<EngineScale>& scale) {
    Eigen::MatrixXd design(y.size(), columns(samples.front(), scale).size());
    for (Eigen::Index i = 0; i < y.size(); ++i)
        design.row(i) = columns(samples[static_cast<std::size_t>(i)], scale).transpose();
    return {scale, math::fit_robust(design, y, math::Intercept::no, math::RobustLoss::tukey)};
}

bool usable(const Regression& r, Eigen::Index samples) {
    return r.robust.status != math::FitStatus::failed && r.robust.weights.size() == samples &&
           r.robust.fit.coefficients[0] > 0.0;
}

// With the curve of the engine where that can be told, else without.
Regression regress(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& y) {
    const auto scale = EngineScale::of(samples, Eigen::VectorXd::Ones(y.size()));
    Regression r = regress(samples, y, scale);
    if (!scale) return r;
    if (!usable(r, y.size())) return regress(samples, y, std::nullopt);
    // A metre at full throttle gives a speed of P / m v² to the car: so weighted, one mean power stands for the curve.
    Eigen::VectorXd weights = r.robust.weights;
    for (Eigen::Index i = 0; i < weights.size(); ++i) {
        const double speed_mps = samples[static_cast<std::size_t>(i)].speed_mps;
        weights[i] /= speed_mps * speed_mps;
    }
    r.scale = EngineScale::of(samples, weights);
    return r;
}

} // namespace

DrivingForce fit_driving_force(const CarData& data, const DragPrior& drag_prior, std::size_t draws,
                               std::uint64_t seed) {
    DrivingForce fit;
    fit.status = math::FitStatus::failed;
    const std::vector<ThrottleSample> samples = full_throttle_samples(data);
    if (samples.size() < fewest_samples) return fit;
    Eigen::VectorXd y(static_cast<Eigen::Index>(samples.size()));
    double speed_sum = 0.0;
    for (Eigen::Index i = 0; i < y.size(); ++i) {
        const ThrottleSample& s = samples[static_cast<std::size_t>(i)];
        y[i] = (1.0 + usual_rotating) * s.acceleration_mps2 + (usual_rolling + s.slope) * g;
        speed_sum += s.speed_mps;
    }
    const Regression regression = regress(samples, y);
    if (!usable(regression, y.size())) return fit;
    const math::RobustFit& robust = regression.robust;
    for (Eigen::Index i = 0; i < y.size(); ++i)
        fit.evidence.push_back({samples[static_cast<std::size_t>(i)].speed_mps, y[i], robust.weights[i] > 0.3});
    const std::vector<Block> blocks = blocks_of(samples, robust.weights, regression.scale);
    const CurvePrior prior{robust.fit.coefficients[0], samples_alike * robust.scale * robust.scale};
    const Unknowns best = solve(add(blocks, std::vector<double>(blocks.size(), 1.0)), {}, prior);
    fit.best = {best[0], best[1], usual_rolling, usual_rotating};
    if (!(fit.best.power_per_kg > 0.0)) return fit;
    if (regression.scale) fit.curve = curve_seen(*regression.scale, best);
    math::Random random(seed, 11);
    draw_spread(fit, blocks, prior, speed_sum / static_cast<double>(y.size()), draws, random);
    if (fit.draws.size() < draws) return fit;
    heed_prior(fit, drag_prior, random);
    fit.status = math::FitStatus::converged;
    return fit;
}

} // namespace lapwright::car
