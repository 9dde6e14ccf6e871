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

// Student's t with `freedom` > 0 degrees of freedom (need not be whole).
[[nodiscard]] double student_t_cdf(double t, double freedom);
[[nodiscard]] double student_t_quantile(double share, double freedom);

} // namespace lapwright::math
