// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/grip_model.h"

#include "core/base/constants.h"
#include "core/car/grip_priors.h"
#include "core/math/convergence.h"
#include "core/math/distributions.h"
#include "core/math/random.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include <algorithm>
#include <cmath>

namespace lapwright::car {
namespace {

constexpr double g = base::standard_gravity_mps2;
constexpr int dimensions = 9;
using Parameters = Eigen::Matrix<double, dimensions, 1>;
using Square = Eigen::Matrix<double, dimensions, dimensions>;

// Places in the parameter vector; k is in units of 1e-3/m so that all are of similar size.
enum Place { place_m, place_k, place_n, place_beta, place_drift, place_b, place_d, place_delta, place_peak };

constexpr double deficit = 0.10; // mean of the exponential below the limit
constexpr double min_peak = -0.5;
constexpr double max_peak = 2.0;
constexpr double usual_spread[2] = {usual_corner_spread, usual_zone_spread};

double normal_log(double x, double sd) {
    return -0.5 * x * x / (sd * sd) - std::log(sd);
}

// Density of N(0, sd) − Exp(mean deficit), logarithm without the constant of the normal above.
double below_log(double residual, double sd) {
    constexpr double root_two_pi = 2.5066282746310002;
    return std::log(root_two_pi / deficit) + residual / deficit + 0.5 * sd * sd / (deficit * deficit) +
           math::log_normal_cdf(-residual / sd - sd / deficit);
}

double log_sum(double a, double b) {
    const double high = std::max(a, b);
    return high + std::log1p(std::exp(std::min(a, b) - high));
}

class Posterior {
  public:
    Posterior(const LimitEvidence& evidence, const GripPrior& prior) : evidence_(evidence), prior_(prior) {}

    [[nodiscard]] double log_density(const Parameters& p) const {
        const double n = p[place_n];
        const double k = 1e-3 * p[place_k];
        if (n > 1.0 || n < min_exponent || k < min_downforce_factor || k > max_downforce_factor) return -1e300;
        if (p[place_peak] < min_peak || p[place_peak] > max_peak) return -1e300;
        double sum = log_prior(p);
        const double sigma = std::exp(p[place_b]);
        for (const LimitCorner& c : evidence_.corners)
            sum += corner_log(c, p[place_m] + lift(k, n, c.speed_squared) - p[place_peak] * c.fall, sigma);
        for (const LimitZone& z : evidence_.zones)
            sum += zone_log(z, p, k, n);
        return sum;
    }

    // Chance that a corner was at its limit, given the parameters.
    [[nodiscard]] double at_limit(const LimitCorner& c, const Parameters& p) const {
        if (c.flat) return 0.0;
        const double limit = p[place_m] + lift(1e-3 * p[place_k], p[place_n], c.speed_squared);
        const double residual = c.log_lateral + p[place_peak] * c.fall - limit;
        const double sd = std::hypot(std::exp(p[place_b]), c.error);
        const double at = std::log1p(-c.chance_below) + normal_log(residual, sd);
        const double below = std::log(c.chance_below) + below_log(residual, sd);
        return std::exp(at - log_sum(at, below));
    }

  private:
    static double lift(double k, double n, double speed_squared) {
        return n * std::log1p(std::max(-0.9, k * speed_squared / g));
    }

    static double corner_log(const LimitCorner& c, double limit, double sigma) {
        const double residual = c.log_lateral - limit;
        const double sd = std::hypot(sigma, c.error);
        if (c.flat) return math::log_normal_cdf(-residual / sd);
        return log_sum(std::log1p(-c.chance_below) + normal_log(residual, sd),
                       std::log(c.chance_below) + below_log(residual, sd));
    }

    static double zone_log(const LimitZone& z, const Parameters& p, double k, double n) {
        const double level = p[place_m] + p[place_beta];
        const double slow = z.slow_log - level - lift(k, n, z.slow_speed_squared);
        const double reach = (z.fast_speed_squared - z.slow_speed_squared) / zone_scale;
        const double fast = z.fast_log - level - lift(k, n, z.fast_speed_squared) - p[place_drift] * reach;
        const double shared = std::exp(2.0 * p[place_d]);
        const double drift = std::exp(2.0 * p[place_delta]) * reach * reach;
        const double v_slow = shared + z.slow_error * z.slow_error;
        const double v_fast = shared + drift + z.fast_error * z.fast_error;
        const double determinant = v_slow * v_fast - shared * shared;
        const double distance =
            (v_fast * slow * slow - 2.0 * shared * slow * fast + v_slow * fast * fast) / determinant;
        return -0.5 * distance - 0.5 * std::log(determinant);
    }

    [[nodiscard]] double log_prior(const Parameters& p) const {
        double sum = normal_log(p[place_m] - std::log(usual_limit_g * g), log_limit_sd);
        sum += normal_log(1e-3 * p[place_k] - prior_.k_mean, prior_.k_sd);
        sum += normal_log(p[place_n] - exponent_mean, exponent_sd);
        sum += normal_log(p[place_beta] - braking_mean, braking_sd);
        sum += normal_log(p[place_drift], drift_sd);
        sum += normal_log(p[place_peak] - peak_mean, peak_sd);
        for (int i = 0; i < 2; ++i)
            sum += normal_log(p[place_b + i] - std::log(usual_spread[i]), usual_spread_sd);
        const double x = std::exp(p[place_delta]) / drift_spread;
        sum += -0.5 * x * x + p[place_delta]; // half-normal, in the logarithm
        if (x < 0.05) sum -= 0.5 * std::pow(std::log(x / 0.05), 2);
        return sum;
    }

    const LimitEvidence& evidence_;
    const GripPrior& prior_;
};

Parameters start_at(const GripPrior& prior) {
    Parameters p;
    p << std::log(usual_limit_g * g), 1e3 * prior.k_mean, exponent_mean, braking_mean, 0.0, std::log(0.015),
        std::log(0.03), std::log(0.03), peak_mean;
    return p;
}

} // namespace

// Standard deviation of a normal cut off below: sd √(1 + α λ − λ²), λ = φ(α) / Φ(−α), α the cut in its own units
// (Johnson, Kotz and Balakrishnan 1994, ch. 13, from memory).
double GripPrior::k_sd_cut() const {
    constexpr double root_two_pi = 2.5066282746310002;
    const double cut = (min_downforce_factor - k_mean) / k_sd;
    const double hazard = std::exp(-0.5 * cut * cut - math::log_normal_cdf(-cut)) / root_two_pi;
    return k_sd * std::sqrt(1.0 + cut * hazard - hazard * hazard);
}

namespace {

// One chain of adaptive Metropolis: moves are drawn from what it has learnt of the posterior's shape.
class Chain {
  public:
    Chain(const Posterior& posterior, Parameters start, std::uint64_t seed, std::uint64_t stream)
        : posterior_(posterior), random_(seed, stream), place_(start), mean_(start) {
        density_ = posterior_.log_density(place_);
        spread_.diagonal() << 0.02, 0.3, 0.03, 0.04, 0.04, 0.3, 0.3, 0.4, 0.4;
        spread_ = spread_.cwiseProduct(spread_).eval();
        root_ = Square(spread_.llt().matrixL());
    }

    [[nodiscard]] const Parameters& place() const { return place_; }

    bool step() {
        Parameters z;
        for (int j = 0; j < dimensions; ++j)
            z[j] = random_.normal();
        // Now and then a long step, to change between explanations (corner at its limit, or not).
        const double reach = steps_++ % 7 == 0 ? 2.5 : 1.0;
        const Parameters moved = place_ + reach * scale_ * 2.38 / std::sqrt(dimensions) * (root_ * z);
        const double density = posterior_.log_density(moved);
        if (!(std::log(random_.uniform()) < density - density_)) return false;
        place_ = moved;
        density_ = density;
        return true;
    }

    // Learns mean and spread, forgetting the beginning.
    void learn(int steps) {
        for (int i = 0; i < steps; ++i) {
            const bool accepted = step();
            const double gain = 1.0 / std::min(3000.0, i + 50.0);
            const Parameters away = place_ - mean_;
            mean_ += gain * away;
            spread_ += gain * (away * away.transpose() - spread_);
            scale_ *= std::exp((accepted ? 0.75 : -0.25) * 8.0 * gain);
            if (i % 200 == 199) root_ = Square((spread_ + 1e-8 * Square::Identity()).llt().matrixL());
        }
    }

  private:
    const Posterior& posterior_;
    math::Random random_;
    Parameters place_;
    double density_ = 0.0;
    Parameters mean_;
    Square spread_ = Square::Zero();
    Square root_ = Square::Zero();
    double scale_ = 1.0;
    int steps_ = 0;
};

// The worst over the parameters that figures are made of.
math::Convergence worst_of(const std::vector<std::vector<Parameters>>& chains) {
    math::Convergence worst{0.0, 1e300, 1e300};
    for (const Place place : {place_m, place_k, place_n, place_beta}) {
        std::vector<std::vector<double>> values(chains.size());
        for (std::size_t c = 0; c < chains.size(); ++c)
            for (const Parameters& p : chains[c])
                values[c].push_back(p[place]);
        const math::Convergence one = math::convergence_of(values);
        worst.r_hat = std::max(worst.r_hat, one.r_hat);
        worst.effective_bulk = std::min(worst.effective_bulk, one.effective_bulk);
        worst.effective_tail = std::min(worst.effective_tail, one.effective_tail);
    }
    return worst;
}

// Starts far apart, so that chains which agree have forgotten them.
Parameters spread_start(const GripPrior& prior, std::size_t chain) {
    Parameters p = start_at(prior);
    const double side = chain % 2 == 0 ? -1.0 : 1.0;
    p[place_m] += 0.15 * side;
    p[place_k] += 0.5e3 * (chain < 2 ? 1.0 : -1.0) * std::min(prior.k_sd, prior.k_mean - min_downforce_factor);
    return p;
}

} // namespace

GripPosterior fit_grip(const LimitEvidence& evidence, const GripPrior& prior, std::size_t draws, std::uint64_t seed,
                       int steps) {
    constexpr std::size_t chain_count = 4;
    constexpr int warm_up = 8000;
    constexpr int kept = 250; // of each chain's steps
    const Posterior posterior(evidence, prior);
    GripPosterior result;
    result.chance_at_limit.assign(evidence.corners.size(), 0.0);
    std::vector<std::vector<Parameters>> chains(chain_count);
    int accepted = 0;
    for (std::size_t c = 0; c < chain_count; ++c) {
        Chain chain(posterior, spread_start(prior, c), seed, 21 + 100 * c);
        chain.learn(warm_up);
        for (int i = 0; i < steps; ++i) {
            accepted += chain.step() ? 1 : 0;
            if (i % (steps / kept) == 0) chains[c].push_back(chain.place());
        }
    }
    result.acceptance = static_cast<double>(accepted) / static_cast<double>(steps * static_cast<int>(chain_count));
    result.convergence = worst_of(chains);
    result.outcome = {result.convergence.settled() ? base::FitStatus::converged : base::FitStatus::not_converged, steps,
                      evidence.corners.size() + evidence.zones.size()};
    // Draws from all chains in turn, as far apart as they go.
    for (std::size_t i = 0; i < draws; ++i) {
        const std::vector<Parameters>& chain = chains[i % chain_count];
        const std::size_t in_chain = (draws + chain_count - 1) / chain_count;
        const Parameters& p = chain[(i / chain_count) * chain.size() / in_chain];
        result.draws.push_back({p[place_m], 1e-3 * p[place_k], p[place_n], p[place_beta]});
        result.peak_part += p[place_peak] / static_cast<double>(draws);
        for (std::size_t k = 0; k < evidence.corners.size(); ++k)
            result.chance_at_limit[k] += posterior.at_limit(evidence.corners[k], p) / static_cast<double>(draws);
    }
    return result;
}

} // namespace lapwright::car
