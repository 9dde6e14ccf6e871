// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/bootstrap.h"

#include "core/math/distributions.h"
#include "core/math/random.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::math {
namespace {

constexpr std::size_t fewest_replicates = 20;

double acceleration(std::span<const double> left_out_values) {
    const double middle = mean(left_out_values);
    double cubes = 0.0;
    double squares = 0.0;
    for (const double value : left_out_values) {
        const double d = middle - value;
        cubes += d * d * d;
        squares += d * d;
    }
    return squares > 0.0 ? cubes / (6.0 * std::pow(squares, 1.5)) : 0.0;
}

} // namespace

std::vector<double> bootstrap(std::size_t groups, std::size_t replicates, std::uint64_t seed,
                              const GroupStatistic& statistic) {
    std::vector<double> values;
    if (groups == 0) return values;
    Random random(seed);
    values.reserve(replicates);
    for (std::size_t i = 0; i < replicates; ++i) {
        const double value = statistic(draw_with_replacement(groups, random));
        if (!std::isnan(value)) values.push_back(value);
    }
    return values;
}

std::vector<double> jackknife(std::size_t groups, const GroupStatistic& statistic) {
    std::vector<double> values;
    for (std::size_t out = 0; out < groups; ++out) {
        std::vector<std::size_t> left;
        for (std::size_t i = 0; i < groups; ++i)
            if (i != out) left.push_back(i);
        values.push_back(statistic(left));
    }
    return values;
}

double jackknife_standard_error(std::span<const double> left_out_values) {
    const auto n = static_cast<double>(left_out_values.size());
    return standard_deviation(left_out_values) * (n - 1.0) / std::sqrt(n);
}

std::optional<Interval> percentile_interval(std::span<const double> replicates, double coverage) {
    if (replicates.size() < fewest_replicates) return std::nullopt;
    return Interval{quantile(replicates, 0.5 - 0.5 * coverage), quantile(replicates, 0.5 + 0.5 * coverage)};
}

std::optional<Interval> bca_interval(double estimate, std::span<const double> replicates,
                                     std::span<const double> left_out_values, double coverage) {
    if (replicates.size() < fewest_replicates) return std::nullopt;
    const auto below = static_cast<double>(std::ranges::count_if(replicates, [&](double x) { return x < estimate; }));
    const double share = below / static_cast<double>(replicates.size());
    if (!(share > 0.0) || !(share < 1.0)) return std::nullopt;
    const double bias = normal_quantile(share);
    const double a = acceleration(left_out_values);
    const auto corrected = [&](double wanted) {
        const double z = bias + normal_quantile(wanted);
        return quantile(replicates, normal_cdf(bias + z / (1.0 - a * z)));
    };
    return Interval{corrected(0.5 - 0.5 * coverage), corrected(0.5 + 0.5 * coverage)};
}

} // namespace lapwright::math
