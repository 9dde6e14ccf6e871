// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/distributions.h"

#include "core/base/constants.h"
#include "core/math/special_functions.h"

#include <cmath>
#include <limits>

namespace lapwright::math {
namespace {

constexpr double infinity = std::numeric_limits<double>::infinity();
constexpr double nan = std::numeric_limits<double>::quiet_NaN();

double polynomial(double x, const double* coefficients, int count) {
    double value = 0.0;
    for (int i = 0; i < count; ++i)
        value = value * x + coefficients[i];
    return value;
}

double rational_start(double share) {
    constexpr double a[] = {-3.969683028665376e+01, 2.209460984245205e+02,  -2.759285104469687e+02,
                            1.383577518672690e+02,  -3.066479806614716e+01, 2.506628277459239e+00};
    constexpr double b[] = {-5.447609879822406e+01, 1.615858368580409e+02,  -1.556989798598866e+02,
                            6.680131188771972e+01,  -1.328068155288572e+01, 1.0};
    constexpr double c[] = {-7.784894002430293e-03, -3.223964580411365e-01, -2.400758277161838e+00,
                            -2.549732539343734e+00, 4.374664141464968e+00,  2.938163982698783e+00};
    constexpr double d[] = {7.784695709041462e-03, 3.224671290700398e-01, 2.445134137142996e+00, 3.754408661907416e+00,
                            1.0};
    if (share < 0.02425) {
        const double q = std::sqrt(-2.0 * std::log(share));
        return polynomial(q, c, 6) / polynomial(q, d, 5);
    }
    const double q = share - 0.5;
    return polynomial(q * q, a, 6) * q / polynomial(q * q, b, 6);
}

} // namespace

double normal_density(double x) {
    return std::exp(-0.5 * x * x) / std::sqrt(2.0 * base::pi);
}

double normal_cdf(double x) {
    return 0.5 * std::erfc(-x / std::sqrt(2.0));
}

double log_normal_cdf(double x) {
    if (x > -30.0) return std::log(normal_cdf(x));
    // Asymptotic expansion (Abramowitz and Stegun 26.2.12), four terms: 1e-9 relative at x = -30 and better below.
    const double r = 1.0 / (x * x);
    return -0.5 * x * x - std::log(-x) - 0.5 * std::log(2.0 * base::pi) +
           std::log1p(-r * (1.0 - 3.0 * r * (1.0 - 5.0 * r)));
}

double normal_quantile(double share) {
    if (!(share >= 0.0) || !(share <= 1.0)) return nan;
    if (share == 0.0) return -infinity;
    if (share == 1.0) return infinity;
    if (share > 0.5) return -normal_quantile(1.0 - share);
    double x = rational_start(share);
    for (int i = 0; i < 2; ++i) {
        const double newton = (normal_cdf(x) - share) / normal_density(x);
        x -= newton / (1.0 + 0.5 * x * newton);
    }
    return x;
}

double student_t_cdf(double t, double freedom) {
    if (!(freedom > 0.0) || std::isnan(t)) return nan;
    if (std::isinf(t)) return t > 0.0 ? 1.0 : 0.0;
    const double tail = 0.5 * incomplete_beta(0.5 * freedom, 0.5, freedom / (freedom + t * t));
    return t > 0.0 ? 1.0 - tail : tail;
}

double student_t_quantile(double share, double freedom) {
    if (!(freedom > 0.0) || !(share >= 0.0) || !(share <= 1.0)) return nan;
    if (share == 0.5) return 0.0;
    if (share == 0.0 || share == 1.0) return share > 0.0 ? infinity : -infinity;
    if (share > 0.5) return -student_t_quantile(1.0 - share, freedom);
    // Bracket from below by doubling, then bisection: the function is monotone and this is not called in inner loops.
    double low = -1.0;
    while (student_t_cdf(low, freedom) > share)
        low *= 2.0;
    double high = low == -1.0 ? 0.0 : 0.5 * low;
    for (int i = 0; i < 200 && high - low > 1e-15 * std::abs(low); ++i) {
        const double middle = 0.5 * (low + high);
        (student_t_cdf(middle, freedom) > share ? high : low) = middle;
    }
    return 0.5 * (low + high);
}

} // namespace lapwright::math
