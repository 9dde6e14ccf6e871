// SPDX-License-Identifier: GPL-3.0-or-later
// Distribution functions and quantiles of the normal and of Student's t, by Boost.Math.  Shares outside 0..1 give NaN,
// 0 and 1 the infinities.
#pragma once

namespace lapwright::math {

[[nodiscard]] double normal_density(double x);
[[nodiscard]] double normal_cdf(double x);
// ln Φ(x), without loss far in the lower tail.
[[nodiscard]] double log_normal_cdf(double x);
[[nodiscard]] double normal_quantile(double share);

// Student's t; degrees_of_freedom > 0, need not be whole.
[[nodiscard]] double student_t_cdf(double t, double degrees_of_freedom);
[[nodiscard]] double student_t_quantile(double share, double degrees_of_freedom);

} // namespace lapwright::math
