// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/grip_model.h"

#include "core/base/constants.h"
#include "core/math/distributions.h"
#include "core/math/random.h"

#include <Eigen/Cholesky>
#include <Eigen/Core>

#include <algorithm>
#include <cmath>

namespace lapwright::car {
namespace {

constexpr double g = base::standard_gravity_mps2;
constexpr int dimensions = 8;
using Parameters = Eigen::Matrix<double, dimensions, 1>;
using Square = Eigen::Matrix<double, dimensions, dimensions>;

// Places in the parameter vector; k is in units of 1e-3/m so that all are of similar size.
enum Place { place_m, place_k, place_n, place_beta, place_drift, place_b, place_d, place_delta };

constexpr double deficit = 0.10;      // mean of the exponential below the limit
constexpr double zone_scale = 1500.0; // m²/s² over which δ acts
constexpr double limit_prior_sd = 0.25;
constexpr double exponent_mean = 0.94;
constexpr double exponent_sd = 0.07;
constexpr double braking_mean = -0.0834; // ln 0.92
constexpr double braking_sd = 0.06;
constexpr double drift_sd = 0.06;
// Medians and logarithmic spreads of σ_b and σ_d; σ_δ is half-normal.
constexpr double usual_spread[2] = {0.020, 0.035};
constexpr double usual_spread_sd = 0.25;
constexpr double drift_spread = 0.05;

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
        if (n > 1.0 || n < 0.7 || k < least_downforce_factor || k > 4e-3) return -1e300;
        double sum = log_prior(p);
        const double sigma = std::exp(p[place_b]);
        for (const LimitCorner& c : evidence_.corners)
            sum += corner_log(c, p[place_m] + lift(k, n, c.speed_squared), sigma);
        for (const LimitZone& z : evidence_.zones)
            sum += zone_log(z, p, k, n);
        return sum;
    }

    // Chance that a corner was at its limit, given the parameters.
    [[nodiscard]] double at_limit(const LimitCorner& c, const Parameters& p) const {
        if (c.flat) return 0.0;
        const double residual = c.log_lateral - p[place_m] - lift(1e-3 * p[place_k], p[place_n], c.speed_squared);
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
        double sum = normal_log(p[place_m] - std::log(1.2 * g), limit_prior_sd);
        sum += normal_log(1e-3 * p[place_k] - prior_.k_mean, prior_.k_sd);
        sum += normal_log(p[place_n] - exponent_mean, exponent_sd);
        sum += normal_log(p[place_beta] - braking_mean, braking_sd);
        sum += normal_log(p[place_drift], drift_sd);
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
    p << std::log(1.2 * g), 1e3 * prior.k_mean, 0.93, braking_mean, 0.0, std::log(0.015), std::log(0.03),
        std::log(0.03);
    return p;
}

} // namespace

// Standard deviation of a normal cut off below: sd √(1 + α λ − λ²), λ = φ(α) / Φ(−α), α the cut in its own units
// (Johnson, Kotz and Balakrishnan 1994, ch. 13, from memory).
double GripPrior::k_sd_cut() const {
    constexpr double root_two_pi = 2.5066282746310002;
    const double cut = (least_downforce_factor - k_mean) / k_sd;
    const double hazard = std::exp(-0.5 * cut * cut - math::log_normal_cdf(-cut)) / root_two_pi;
    return k_sd * std::sqrt(1.0 + cut * hazard - hazard * hazard);
}

GripPosterior fit_grip(const LimitEvidence& evidence, const GripPrior& prior, std::size_t draws, std::uint64_t seed) {
    const Posterior posterior(evidence, prior);
    GripPosterior result;
    result.chance_at_limit.assign(evidence.corners.size(), 0.0);
    math::Random random(seed, 21);
    constexpr int warm_up = 12000;
    constexpr int stride = 60;
    Parameters p = start_at(prior);
    double density = posterior.log_density(p);
    Parameters mean = p;
    Square spread = Square::Zero();
    spread.diagonal() << 0.02, 0.3, 0.03, 0.04, 0.04, 0.3, 0.3, 0.4;
    spread = spread.cwiseProduct(spread).eval();
    Square root = Square(spread.llt().matrixL());
    double scale = 1.0;
    double accepted = 0.0;
    const int total = warm_up + stride * static_cast<int>(draws);
    for (int i = 0; i < total; ++i) {
        Parameters z;
        for (int j = 0; j < dimensions; ++j)
            z[j] = random.normal();
        // Now and then a long step, to change between explanations (corner at its limit, or not).
        const double reach = i % 7 == 0 ? 2.5 : 1.0;
        const Parameters moved = p + reach * scale * 2.38 / std::sqrt(dimensions) * (root * z);
        const double moved_density = posterior.log_density(moved);
        const bool accept = std::log(random.uniform()) < moved_density - density;
        if (accept) {
            p = moved;
            density = moved_density;
        }
        if (i < warm_up) { // learn mean and spread, forgetting the beginning
            const double gain = 1.0 / std::min(3000.0, i + 50.0);
            const Parameters away = p - mean;
            mean += gain * away;
            spread += gain * (away * away.transpose() - spread);
            scale *= std::exp((accept ? 0.75 : -0.25) * 8.0 * gain);
            if (i % 200 == 199) root = Square((spread + 1e-8 * Square::Identity()).llt().matrixL());
            continue;
        }
        accepted += accept ? 1.0 : 0.0;
        if ((i - warm_up) % stride != stride - 1) continue;
        result.draws.push_back({p[place_m], 1e-3 * p[place_k], p[place_n], p[place_beta]});
        for (std::size_t c = 0; c < evidence.corners.size(); ++c)
            result.chance_at_limit[c] += posterior.at_limit(evidence.corners[c], p) / static_cast<double>(draws);
    }
    result.acceptance = accepted / static_cast<double>(stride * static_cast<int>(draws));
    return result;
}

} // namespace lapwright::car
