// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/two_samples.h"

#include "core/math/distributions.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace lapwright::math {
namespace {

// Chance that U <= u when all arrangements are equally likely: counts by the recurrence of Mann and Whitney,
// N(u; n, m) = N(u − m; n − 1, m) + N(u; n, m − 1), built up one value of x at a time.
double exact_lower_tail(std::size_t n, std::size_t m, std::size_t u) {
    const std::size_t most = n * m;
    std::vector<std::vector<double>> counts(m + 1, std::vector<double>(most + 1, 0.0));
    for (auto& row : counts)
        row[0] = 1.0;
    for (std::size_t i = 1; i <= n; ++i) {
        std::vector<std::vector<double>> next(m + 1, std::vector<double>(most + 1, 0.0));
        next[0][0] = 1.0;
        for (std::size_t j = 1; j <= m; ++j)
            for (std::size_t k = 0; k <= i * j; ++k)
                next[j][k] = next[j - 1][k] + (k >= j ? counts[j][k - j] : 0.0);
        counts = std::move(next);
    }
    double all = 0.0;
    double low = 0.0;
    for (std::size_t k = 0; k <= most; ++k) {
        all += counts[m][k];
        if (k <= u) low += counts[m][k];
    }
    return low / all;
}

// Σ(t³ − t) over groups of tied values.
double tie_term(std::span<const double> x, std::span<const double> y) {
    std::vector<double> all(x.begin(), x.end());
    all.insert(all.end(), y.begin(), y.end());
    std::ranges::sort(all);
    double sum = 0.0;
    for (std::size_t i = 0; i < all.size();) {
        std::size_t j = i;
        while (j < all.size() && all[j] == all[i])
            ++j;
        const auto t = static_cast<double>(j - i);
        sum += t * t * t - t;
        i = j;
    }
    return sum;
}

double normal_p(double u, double n, double m, double ties) {
    const double total = n + m;
    const double variance = n * m / 12.0 * (total + 1.0 - ties / (total * (total - 1.0)));
    if (!(variance > 0.0)) return 1.0;
    const double distance = std::max(0.0, std::abs(u - 0.5 * n * m) - 0.5);
    return std::min(1.0, 2.0 * normal_cdf(-distance / std::sqrt(variance)));
}

} // namespace

std::optional<WelchResult> welch(std::span<const double> x, std::span<const double> y, double coverage) {
    if (x.size() < 2 || y.size() < 2) return std::nullopt;
    const auto n = static_cast<double>(x.size());
    const auto m = static_cast<double>(y.size());
    const double variance_x = std::pow(standard_deviation(x), 2) / n;
    const double variance_y = std::pow(standard_deviation(y), 2) / m;
    const double variance = variance_x + variance_y;
    if (!(variance > 0.0)) return std::nullopt;
    WelchResult result;
    result.difference = mean(y) - mean(x);
    result.standard_error = std::sqrt(variance);
    result.degrees_of_freedom =
        variance * variance / (variance_x * variance_x / (n - 1.0) + variance_y * variance_y / (m - 1.0));
    const double reach = student_t_quantile(0.5 + 0.5 * coverage, result.degrees_of_freedom) * result.standard_error;
    result.interval = {result.difference - reach, result.difference + reach};
    result.p_two_sided =
        2.0 * student_t_cdf(-std::abs(result.difference / result.standard_error), result.degrees_of_freedom);
    return result;
}

std::optional<RankResult> mann_whitney(std::span<const double> x, std::span<const double> y) {
    if (x.empty() || y.empty()) return std::nullopt;
    RankResult result;
    for (const double a : x)
        for (const double b : y)
            result.u += a < b ? 1.0 : (a == b ? 0.5 : 0.0);
    const auto n = static_cast<double>(x.size());
    const auto m = static_cast<double>(y.size());
    result.chance_x_less = result.u / (n * m);
    const double ties = tie_term(x, y);
    if (ties == 0.0 && x.size() <= 20 && y.size() <= 20) {
        const auto lesser = static_cast<std::size_t>(std::min(result.u, n * m - result.u));
        result.p_two_sided = std::min(1.0, 2.0 * exact_lower_tail(x.size(), y.size(), lesser));
    } else {
        result.p_two_sided = normal_p(result.u, n, m, ties);
    }
    return result;
}

} // namespace lapwright::math
