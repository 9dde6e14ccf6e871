// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/distributions.h"

#include "core/base/constants.h"

#include <boost/math/distributions/normal.hpp>
#include <boost/math/distributions/students_t.hpp>

#include <cmath>

namespace lapwright::math {
namespace {

namespace policies = boost::math::policies;
// What lies outside a function's range is told by a value, never by an exception.
using Quiet =
    policies::policy<policies::domain_error<policies::ignore_error>, policies::overflow_error<policies::ignore_error>,
                     policies::evaluation_error<policies::ignore_error>, policies::promote_double<false>>;
using Normal = boost::math::normal_distribution<double, Quiet>;
using StudentT = boost::math::students_t_distribution<double, Quiet>;

} // namespace

double normal_density(double x) {
    return boost::math::pdf(Normal(), x);
}

double normal_cdf(double x) {
    return boost::math::cdf(Normal(), x);
}

double log_normal_cdf(double x) {
    if (x > -30.0) return std::log(normal_cdf(x));
    // Asymptotic expansion (Abramowitz and Stegun 26.2.12), four terms: 1e-9 relative at x = -30 and better below.
    const double r = 1.0 / (x * x);
    return -0.5 * x * x - std::log(-x) - 0.5 * std::log(2.0 * base::pi) +
           std::log1p(-r * (1.0 - 3.0 * r * (1.0 - 5.0 * r)));
}

double normal_quantile(double share) {
    return boost::math::quantile(Normal(), share);
}

double student_t_cdf(double t, double degrees_of_freedom) {
    return boost::math::cdf(StudentT(degrees_of_freedom), t);
}

double student_t_quantile(double share, double degrees_of_freedom) {
    return boost::math::quantile(StudentT(degrees_of_freedom), share);
}

} // namespace lapwright::math
