// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/driving_force.h"

#include "core/base/constants.h"
#include "core/car/full_throttle.h"
#include "core/math/random.h"
#include "core/math/robust_regression.h"
#include "core/math/statistics.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <map>

namespace lapwright::car {
namespace {

constexpr double g = base::standard_gravity_mps2;
constexpr double usual_rolling = 0.014;
constexpr double rolling_sd = 0.003;
constexpr double usual_rotating = 0.03;
constexpr double rotating_sd = 0.01;
constexpr double power_tilt_sd = 0.02; // relative change of power for a change of speed of its own size
constexpr std::size_t fewest_samples = 30;

// Normal equations of one straight in one lap: unknowns (p, d), columns (1/v, −v²), right sides for a, and for 1.
struct Block {
    std::size_t straight = 0;
    std::size_t lap = 0;
    Eigen::Matrix2d normal = Eigen::Matrix2d::Zero();
    Eigen::Vector2d acceleration = Eigen::Vector2d::Zero();
    Eigen::Vector2d slope = Eigen::Vector2d::Zero();
    Eigen::Vector2d one = Eigen::Vector2d::Zero();
};

std::vector<Block> blocks_of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights) {
    std::map<std::pair<std::size_t, std::size_t>, Block> blocks;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const ThrottleSample& s = samples[i];
        Block& b = blocks[{s.segment, s.lap}];
        b.straight = s.segment;
        b.lap = s.lap;
        const double w = weights[static_cast<Eigen::Index>(i)];
        const Eigen::Vector2d x(1.0 / s.speed_mps, -s.speed_mps * s.speed_mps);
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
};

Eigen::Vector2d solve(const Block& sum, const Nuisance& nuisance) {
    const Eigen::LDLT<Eigen::Matrix2d> ldlt(sum.normal);
    Eigen::Vector2d x =
        ldlt.solve((1.0 + nuisance.rotating) * sum.acceleration + sum.slope + nuisance.rolling * g * sum.one);
    // A tilt of the power turns p/v into p/v (1 + ε (v/v̄ − 1)) = p/v − ε p/v + ε p/v̄.
    const double push = nuisance.tilt * x[0];
    x -= push / nuisance.mean_speed * ldlt.solve(sum.one);
    x[0] += push;
    return x;
}

Block add(const std::vector<Block>& blocks, const std::vector<double>& weights) {
    Block sum;
    for (std::size_t i = 0; i < blocks.size(); ++i) {
        sum.normal += weights[i] * blocks[i].normal;
        sum.acceleration += weights[i] * blocks[i].acceleration;
        sum.slope += weights[i] * blocks[i].slope;
        sum.one += weights[i] * blocks[i].one;
    }
    return sum;
}

bool usable(const Block& sum) {
    const Eigen::Vector2d scale = sum.normal.diagonal().cwiseSqrt().cwiseMax(1e-300).cwiseInverse();
    const Eigen::Matrix2d correlation = scale.asDiagonal() * sum.normal * scale.asDiagonal();
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

void draw_spread(DrivingForce& fit, const std::vector<Block>& blocks, double mean_speed, std::size_t count,
                 math::Random& random) {
    const auto straights = numbered(blocks, &Block::straight);
    const auto laps = numbered(blocks, &Block::lap);
    fit.straights = straights.size();
    // A bootstrap of few groups is too narrow by √(n/(n − 1)).
    const auto n = static_cast<double>(std::max<std::size_t>(2, straights.size()));
    const double widen = std::sqrt(n / (n - 1.0));
    const Eigen::Vector2d centre(fit.best.power_per_kg, fit.best.drag_per_kg);
    Nuisance usual;
    usual.mean_speed = mean_speed;
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
        nuisance.tilt = power_tilt_sd * random.normal();
        const Eigen::Vector2d resampled = solve(sum, usual);
        const Eigen::Vector2d systematic =
            solve(add(blocks, std::vector<double>(blocks.size(), 1.0)), nuisance) - centre;
        const Eigen::Vector2d x = centre + widen * (resampled - centre) + systematic;
        fit.draws.push_back({x[0], x[1], nuisance.rolling, nuisance.rotating});
    }
}

} // namespace

DrivingForce fit_driving_force(const CarData& data, const DragPrior& drag_prior, std::size_t draws,
                               std::uint64_t seed) {
    DrivingForce fit;
    fit.status = math::FitStatus::failed;
    const std::vector<ThrottleSample> samples = full_throttle_samples(data);
    if (samples.size() < fewest_samples) return fit;
    const auto count = static_cast<Eigen::Index>(samples.size());
    Eigen::MatrixXd design(count, 2);
    Eigen::VectorXd y(count);
    double speed_sum = 0.0;
    for (Eigen::Index i = 0; i < count; ++i) {
        const ThrottleSample& s = samples[static_cast<std::size_t>(i)];
        design(i, 0) = 1.0 / s.speed_mps;
        design(i, 1) = -s.speed_mps * s.speed_mps;
        y[i] = (1.0 + usual_rotating) * s.acceleration_mps2 + (usual_rolling + s.slope) * g;
        speed_sum += s.speed_mps;
    }
    const math::RobustFit robust = math::fit_robust(design, y, math::Intercept::no, math::RobustLoss::tukey);
    if (robust.status == math::FitStatus::failed || robust.weights.size() != count) return fit;
    fit.best = {robust.fit.coefficients[0], robust.fit.coefficients[1], usual_rolling, usual_rotating};
    if (!(fit.best.power_per_kg > 0.0)) return fit;
    for (Eigen::Index i = 0; i < count; ++i) {
        const ThrottleSample& s = samples[static_cast<std::size_t>(i)];
        fit.evidence.push_back({s.speed_mps, y[i], robust.weights[i] > 0.3});
    }
    math::Random random(seed, 11);
    draw_spread(fit, blocks_of(samples, robust.weights), speed_sum / static_cast<double>(count), draws, random);
    if (fit.draws.size() < draws) return fit;
    heed_prior(fit, drag_prior, random);
    fit.status = math::FitStatus::converged;
    return fit;
}

} // namespace lapwright::car
