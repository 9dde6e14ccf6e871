// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/variance_components.h"

#include "core/base/constants.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::math {
namespace {

struct Groups {
    std::vector<double> sizes;
    std::vector<double> means;
    double within_squares = 0.0;
    double total = 0.0;
};

// Everything at one ratio θ = σ_b²/σ_e², the residual variance profiled out.
struct Profile {
    double mean = 0.0;
    double weight_sum = 0.0;
    double variance = 0.0;
    double criterion = 0.0;
};

Groups summarise(const std::vector<std::vector<double>>& groups) {
    Groups g;
    for (const auto& group : groups) {
        if (group.empty()) continue;
        g.sizes.push_back(static_cast<double>(group.size()));
        g.means.push_back(mean(group));
        for (const double y : group)
            g.within_squares += (y - g.means.back()) * (y - g.means.back());
        g.total += g.sizes.back();
    }
    return g;
}

Profile profile(const Groups& g, double theta) {
    Profile p;
    double sum = 0.0;
    double log_determinant = 0.0;
    for (std::size_t i = 0; i < g.sizes.size(); ++i) {
        const double weight = g.sizes[i] / (1.0 + theta * g.sizes[i]);
        p.weight_sum += weight;
        sum += weight * g.means[i];
        log_determinant += std::log1p(theta * g.sizes[i]);
    }
    p.mean = sum / p.weight_sum;
    double squares = g.within_squares;
    for (std::size_t i = 0; i < g.sizes.size(); ++i)
        squares += g.sizes[i] / (1.0 + theta * g.sizes[i]) * (g.means[i] - p.mean) * (g.means[i] - p.mean);
    const double freedom = g.total - 1.0;
    p.variance = squares / freedom;
    p.criterion =
        log_determinant + std::log(p.weight_sum) + freedom * (1.0 + std::log(2.0 * base::pi * squares / freedom));
    return p;
}

// Least criterion over θ >= 0: a coarse scan over decades, then golden section in ln θ.
double best_theta(const Groups& g) {
    double best = 0.0;
    double least = profile(g, 0.0).criterion;
    double best_log = 0.0;
    bool inside = false;
    for (double log_theta = -16.0; log_theta <= 16.0; log_theta += 0.25) {
        const double value = profile(g, std::exp(log_theta)).criterion;
        if (value < least) {
            least = value;
            best_log = log_theta;
            inside = true;
        }
    }
    if (!inside) return best;
    const double golden = 0.5 * (std::sqrt(5.0) - 1.0);
    double low = best_log - 0.25;
    double high = best_log + 0.25;
    for (int i = 0; i < 80; ++i) {
        const double left = high - golden * (high - low);
        const double right = low + golden * (high - low);
        if (profile(g, std::exp(left)).criterion < profile(g, std::exp(right)).criterion)
            high = right;
        else
            low = left;
    }
    best = std::exp(0.5 * (low + high));
    return best;
}

} // namespace

VarianceComponents fit_variance_components(const std::vector<std::vector<double>>& groups) {
    VarianceComponents fit;
    fit.status = FitStatus::failed;
    const Groups g = summarise(groups);
    if (g.sizes.size() < 2 || !(g.total > static_cast<double>(g.sizes.size()))) return fit;
    const double theta = best_theta(g);
    const Profile p = profile(g, theta);
    fit.mean = p.mean;
    fit.within_sd = std::sqrt(p.variance);
    fit.between_sd = std::sqrt(theta * p.variance);
    fit.mean_standard_error = std::sqrt(p.variance / p.weight_sum);
    fit.criterion = p.criterion;
    std::size_t used = 0;
    for (const auto& group : groups) {
        if (group.empty()) {
            fit.effects.push_back(0.0);
            continue;
        }
        const double shrink = theta * g.sizes[used] / (1.0 + theta * g.sizes[used]);
        fit.effects.push_back(shrink * (g.means[used] - p.mean));
        ++used;
    }
    fit.status = FitStatus::converged;
    return fit;
}

} // namespace lapwright::math
