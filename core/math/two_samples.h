// SPDX-License-Identifier: GPL-3.0-or-later
// Two independent samples compared: difference of means (Welch 1947) and by ranks (Mann and Whitney 1947).
#pragma once

#include <optional>
#include <span>

namespace lapwright::math {

struct Interval {
    double low = 0.0;
    double high = 0.0;

    [[nodiscard]] bool contains(double x) const { return low <= x && x <= high; }
    [[nodiscard]] double half_width() const { return 0.5 * (high - low); }
};

struct WelchResult {
    double difference = 0.0; // mean(y) − mean(x)
    double standard_error = 0.0;
    double degrees_of_freedom = 0.0; // Welch and Satterthwaite
    Interval interval;
    double p_two_sided = 1.0;
};

// Absent with fewer than two values on either side, or when neither side varies.  coverage 0..1, usually 0.95.
[[nodiscard]] std::optional<WelchResult> welch(std::span<const double> x, std::span<const double> y,
                                               double coverage = 0.95);

struct RankResult {
    double u = 0.0;             // pairs with x < y, ties counted half
    double chance_x_less = 0.5; // u over the number of pairs
    double p_two_sided = 1.0;   // exact without ties and up to 20 values a side, else normal with tie correction
};

// Absent when either side is empty.
[[nodiscard]] std::optional<RankResult> mann_whitney(std::span<const double> x, std::span<const double> y);

} // namespace lapwright::math
