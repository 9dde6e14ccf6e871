// SPDX-License-Identifier: GPL-3.0-or-later
// Polynomials through a few neighbouring samples: derivative at the samples and value between them, for stamps that
// need not be evenly spaced.  Exact on polynomials of the degree named; no smoothing.
// Source: barycentric differentiation, Berrut and Trefethen 2004, SIAM Review 46(3):501, section 9.3 (from memory).
#pragma once

#include <span>
#include <vector>

namespace lapwright::math {

// dy/dx at every x, from the (at most) five samples nearest in index: exact on quartics.  x strictly increasing, as
// many as y.  One sample: derivative 0; none: empty.
[[nodiscard]] std::vector<double> derivative(std::span<const double> x, std::span<const double> y);

// The cubic through the two samples on either side of `at` (fewer at the ends, where a lower degree serves); x strictly
// increasing, not empty, as many as y.  `at` is clamped to the samples.
[[nodiscard]] double interpolated(std::span<const double> x, std::span<const double> y, double at);

} // namespace lapwright::math
