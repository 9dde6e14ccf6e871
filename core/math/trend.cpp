// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/trend.h"

#include "core/base/check.h"
#include "core/math/distributions.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace lapwright::math {
namespace {

constexpr std::size_t most_exact = 60;
constexpr std::size_t least_with_interval = 5; // of four even the whole range holds the slope 92 % of the time
constexpr double tail = 0.025;
constexpr double against_least_squares = 1.2;

// Adding the n-th thing makes 0 to n − 1 inversions, each as likely as the other.
std::vector<double> inversion_chances(std::size_t n) {
    std::vector<double> chances{1.0};
    for (std::size_t things = 2; things <= n; ++things) {
        std::vector<double> next(chances.size() + things - 1, 0.0);
        for (std::size_t k = 0; k < chances.size(); ++k)
            for (std::size_t added = 0; added < things; ++added)
                next[k + added] += chances[k] / static_cast<double>(things);
        chances = std::move(next);
    }
    return chances;
}

double normal_chance(std::size_t n, std::size_t most) {
    const double count = static_cast<double>(n);
    const double mean = 0.25 * count * (count - 1.0);
    const double variance = count * (count - 1.0) * (2.0 * count + 5.0) / 72.0;
    return normal_cdf((static_cast<double>(most) + 0.5 - mean) / std::sqrt(variance));
}

// How many of the sorted slopes may be left out at either end; nothing where even all of them are too few.
std::optional<std::size_t> left_out(std::size_t n) {
    if (n < least_with_interval) return {};
    if (n <= most_exact) {
        const std::vector<double> chances = inversion_chances(n);
        double sum = 0.0;
        std::size_t out = 0;
        while (sum + chances[out] <= tail)
            sum += chances[out++];
        return out - 1; // of five values the first chance is 1 in 120
    }
    std::size_t out = 0;
    while (normal_chance(n, out + 1) <= tail)
        ++out;
    return out;
}

std::vector<double> slopes_between_all(std::span<const double> x, std::span<const double> y) {
    std::vector<double> slopes;
    slopes.reserve(x.size() * (x.size() - 1) / 2);
    for (std::size_t i = 0; i < x.size(); ++i)
        for (std::size_t j = i + 1; j < x.size(); ++j)
            slopes.push_back((y[j] - y[i]) / (x[j] - x[i]));
    std::ranges::sort(slopes);
    return slopes;
}

void add_level(Trend& trend, std::span<const double> x, std::span<const double> y) {
    const double end = x.back();
    std::vector<double> levels;
    for (std::size_t i = 0; i < x.size(); ++i)
        levels.push_back(y[i] + trend.slope * (end - x[i]));
    trend.level_at_end = median(levels);
    const double count = static_cast<double>(x.size());
    if (x.size() < 3) return;
    double squares = 0.0;
    for (const double level : levels)
        squares += (level - trend.level_at_end) * (level - trend.level_at_end);
    trend.residual_sd = std::sqrt(squares / (count - 2.0));
    if (x.size() < least_with_interval) return;
    const double middle = mean(x);
    double spread = 0.0;
    for (const double at : x)
        spread += (at - middle) * (at - middle);
    const double sd =
        trend.residual_sd * std::sqrt(against_least_squares * (1.0 / count + (end - middle) * (end - middle) / spread));
    const double half = student_t_quantile(1.0 - tail, count - 2.0) * sd;
    trend.level_interval = Interval{trend.level_at_end - half, trend.level_at_end + half};
}

} // namespace

double chance_of_inversions(std::size_t n, std::size_t most) {
    if (n > most_exact) return normal_chance(n, most);
    const std::vector<double> chances = inversion_chances(n);
    double sum = 0.0;
    for (std::size_t k = 0; k <= most && k < chances.size(); ++k)
        sum += chances[k];
    return sum;
}

std::optional<Trend> trend(std::span<const double> x, std::span<const double> y) {
    base::check(x.size() == y.size(), "a trend has as many places as values");
    if (x.size() < 2) return {};
    Trend found;
    const std::vector<double> slopes = slopes_between_all(x, y);
    found.slope = median(slopes);
    if (const auto out = left_out(x.size()))
        found.slope_interval = Interval{slopes[*out], slopes[slopes.size() - 1 - *out]};
    add_level(found, x, y);
    return found;
}

} // namespace lapwright::math
