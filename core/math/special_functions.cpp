// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/special_functions.h"

#include <cmath>
#include <limits>

namespace lapwright::math {
namespace {

double away_from_zero(double x) {
    return std::abs(x) < 1e-300 ? 1e-300 : x;
}

// The fraction converges fast for x below (a + 1) / (a + b + 2).
double beta_fraction(double a, double b, double x) {
    double c = 1.0;
    double d = 1.0 / away_from_zero(1.0 - (a + b) * x / (a + 1.0));
    double value = d;
    for (int i = 1; i <= 500; ++i) {
        const double m = i;
        const double even = m * (b - m) * x / ((a + 2.0 * m - 1.0) * (a + 2.0 * m));
        d = 1.0 / away_from_zero(1.0 + even * d);
        c = away_from_zero(1.0 + even / c);
        value *= d * c;
        const double odd = -(a + m) * (a + b + m) * x / ((a + 2.0 * m) * (a + 2.0 * m + 1.0));
        d = 1.0 / away_from_zero(1.0 + odd * d);
        c = away_from_zero(1.0 + odd / c);
        value *= d * c;
        if (std::abs(d * c - 1.0) < std::numeric_limits<double>::epsilon()) break;
    }
    return value;
}

} // namespace

double incomplete_beta(double a, double b, double x) {
    if (!(a > 0.0) || !(b > 0.0) || !(x >= 0.0) || !(x <= 1.0)) return std::numeric_limits<double>::quiet_NaN();
    if (x == 0.0 || x == 1.0) return x;
    const double log_front =
        std::lgamma(a + b) - std::lgamma(a) - std::lgamma(b) + a * std::log(x) + b * std::log1p(-x);
    if (x < (a + 1.0) / (a + b + 2.0)) return std::exp(log_front) * beta_fraction(a, b, x) / a;
    return 1.0 - std::exp(log_front) * beta_fraction(b, a, 1.0 - x) / b;
}

} // namespace lapwright::math
