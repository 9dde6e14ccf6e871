// SPDX-License-Identifier: GPL-3.0-or-later
// The bootstrap (Efron 1979) over groups: whole laps, corners or zones are drawn, never samples within one.  Intervals
// by percentiles, or bias-corrected and accelerated (Efron 1987).
#pragma once

#include "core/math/two_samples.h"

#include <cstddef>
#include <cstdint>
#include <functional>
#include <optional>
#include <span>
#include <vector>

namespace lapwright::math {

// A figure of the groups with these indices (repeats allowed); NaN when it cannot be had from them.
using GroupStatistic = std::function<double(std::span<const std::size_t> groups)>;

// `replicates` values of the statistic, each over `groups` indices drawn with replacement; those that came out NaN are
// left out.
[[nodiscard]] std::vector<double> bootstrap(std::size_t groups, std::size_t replicates, std::uint64_t seed,
                                            const GroupStatistic& statistic);

// The statistic with each group left out in turn, and its standard error sqrt((n − 1)/n Σ(v − mean)²).
[[nodiscard]] std::vector<double> jackknife(std::size_t groups, const GroupStatistic& statistic);
[[nodiscard]] double jackknife_standard_error(std::span<const double> left_out_values);

// Absent with fewer than 20 replicates.
[[nodiscard]] std::optional<Interval> percentile_interval(std::span<const double> replicates, double coverage = 0.95);

// left_out_values from jackknife() give the acceleration.  Absent with fewer than 20 replicates, or when the estimate
// lies outside all of them (there is no bias correction then).
[[nodiscard]] std::optional<Interval> bca_interval(double estimate, std::span<const double> replicates,
                                                   std::span<const double> left_out_values, double coverage = 0.95);

} // namespace lapwright::math
