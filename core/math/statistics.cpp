// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/statistics.h"

#include "core/math/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::math {
namespace {

constexpr double nan = std::numeric_limits<double>::quiet_NaN();

// A quantile lies between two neighbours in order of size, by so much of the way.
struct Place {
    std::size_t below;
    double part;
};

Place place_of(double share, std::size_t count) {
    const double place = std::clamp(share, 0.0, 1.0) * static_cast<double>(count - 1);
    const auto below = std::min(static_cast<std::size_t>(place), count - 1);
    return {below, place - static_cast<double>(below)};
}

} // namespace

double mean(std::span<const double> sample) {
    if (sample.empty()) return nan;
    const auto n = static_cast<double>(sample.size());
    double sum = 0.0;
    for (const double x : sample)
        sum += x;
    const double first = sum / n;
    double left_over = 0.0;
    for (const double x : sample)
        left_over += x - first;
    return first + left_over / n;
}

double standard_deviation(std::span<const double> sample) {
    if (sample.size() < 2) return nan;
    const double m = mean(sample);
    double squares = 0.0;
    double left_over = 0.0;
    for (const double x : sample) {
        squares += (x - m) * (x - m);
        left_over += x - m;
    }
    const auto n = static_cast<double>(sample.size());
    return std::sqrt(std::max(0.0, squares - left_over * left_over / n) / (n - 1.0));
}

double sorted_quantile(std::span<const double> sorted, double share) {
    if (sorted.empty()) return nan;
    const auto [below, part] = place_of(share, sorted.size());
    const std::size_t above = std::min(below + 1, sorted.size() - 1);
    return sorted[below] + part * (sorted[above] - sorted[below]);
}

double quantile(std::span<const double> sample, double share) {
    if (sample.empty()) return nan;
    std::vector<double> copy(sample.begin(), sample.end());
    const auto [below, part] = place_of(share, copy.size());
    const auto at = copy.begin() + static_cast<std::ptrdiff_t>(below);
    std::ranges::nth_element(copy, at);
    const double above = below + 1 < copy.size() ? *std::ranges::min_element(at + 1, copy.end()) : *at;
    return *at + part * (above - *at);
}

double standard_uncertainty(std::span<const double> draws) {
    const auto n = static_cast<double>(draws.size());
    return standard_deviation(draws) * (draws.size() < 5 ? 1.0 : std::sqrt((n - 1.0) / (n - 3.0)));
}

double median(std::span<const double> sample) {
    return quantile(sample, 0.5);
}

double robust_sd(std::span<const double> sample) {
    if (sample.empty()) return nan;
    const double middle = median(sample);
    std::vector<double> distances;
    distances.reserve(sample.size());
    for (const double x : sample)
        distances.push_back(std::abs(x - middle));
    return 1.4826 * median(distances);
}

double correlation(std::span<const double> x, std::span<const double> y) {
    if (x.size() != y.size() || x.size() < 2) return nan;
    const double mean_x = mean(x);
    const double mean_y = mean(y);
    double xx = 0.0;
    double yy = 0.0;
    double xy = 0.0;
    for (std::size_t i = 0; i < x.size(); ++i) {
        xx += (x[i] - mean_x) * (x[i] - mean_x);
        yy += (y[i] - mean_y) * (y[i] - mean_y);
        xy += (x[i] - mean_x) * (y[i] - mean_y);
    }
    if (!(xx > 0.0) || !(yy > 0.0)) return nan;
    return xy / std::sqrt(xx * yy);
}

double expected_max_of_normals(std::size_t n) {
    if (n < 2) return 0.0;
    // Simpson on -9..9: the integrand and its derivatives vanish at the ends, so the rule converges very fast.
    constexpr int steps = 2000;
    constexpr double reach = 9.0;
    const double h = 2.0 * reach / steps;
    const auto power = static_cast<double>(n - 1);
    double sum = 0.0;
    for (int i = 0; i <= steps; ++i) {
        const double x = -reach + h * i;
        const double weight = i == 0 || i == steps ? 1.0 : (i % 2 == 1 ? 4.0 : 2.0);
        sum += weight * x * normal_density(x) * std::pow(normal_cdf(x), power);
    }
    return static_cast<double>(n) * sum * h / 3.0;
}

} // namespace lapwright::math
