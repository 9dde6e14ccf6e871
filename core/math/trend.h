// SPDX-License-Identifier: GPL-3.0-or-later
// A straight course through values that come one after the other, which single bad ones cannot pull away: the median
// of the slopes between all pairs (Theil 1950; Sen 1968), with the interval that Kendall's distribution of inversions
// gives it (Sen 1968, section 4; exact up to 60 values, then its normal approximation, Kendall 1938).
#pragma once

#include "core/math/two_samples.h"

#include <optional>
#include <span>

namespace lapwright::math {

struct Trend {
    double slope = 0.0;
    std::optional<Interval> slope_interval; // 95 % at least, whatever the errors; absent with fewer than five values
    double level_at_end = 0.0;              // of the course at the last x: the median of what the slope leaves
    double residual_sd = 0.0;               // about the course, on n − 2 degrees of freedom
    // 95 %: Student's t on the residual sd, where the variance is 1.2 times that of least squares.  By experiment,
    // since nobody has a formula for small n: held 95 to 99 % of the time for normal and t₃ errors and for laps in
    // traffic (trend_test.cpp).  Absent with fewer than five values.
    std::optional<Interval> level_interval;
};

// x strictly increasing, as many as y; absent with fewer than two.
[[nodiscard]] std::optional<Trend> trend(std::span<const double> x, std::span<const double> y);

// The chance that a random order of n things has at most that many inversions.
[[nodiscard]] double chance_of_inversions(std::size_t n, std::size_t most);

} // namespace lapwright::math
