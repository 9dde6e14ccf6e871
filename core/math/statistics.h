// SPDX-License-Identifier: GPL-3.0-or-later
// Descriptive and robust statistics of one sample.  No function needs sorted input; none changes it.  All of an empty
// sample is NaN; samples must hold no NaN.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace lapwright::math {

// Corrected two-pass mean: the mean of what the plain mean leaves over is added back (Chan, Golub and LeVeque 1983).
[[nodiscard]] double mean(std::span<const double> sample);

// Sample standard deviation (n − 1), corrected two-pass.  NaN with fewer than two values.
[[nodiscard]] double standard_deviation(std::span<const double> sample);

// What a spread seen in n draws is worth as a standard uncertainty: the standard deviation of Student's t with as many
// degrees of freedom, s·√((n − 1)/(n − 3)) (JCGM 101:2008, 6.4.9.4).  With fewer than five draws s itself; NaN with
// fewer than two.
[[nodiscard]] double standard_uncertainty(std::span<const double> draws);

[[nodiscard]] double median(std::span<const double> sample);

// Median absolute deviation from the median, times 1.4826: the standard deviation of a normal sample.
[[nodiscard]] double robust_sd(std::span<const double> sample);

// Hyndman and Fan 1996, type 7: linear between the order statistics; share 0..1.
[[nodiscard]] double quantile(std::span<const double> sample, double share);
// The same of a sample that is sorted already.
[[nodiscard]] double sorted_quantile(std::span<const double> sorted, double share);

// Pearson's correlation; NaN when either side does not vary.  Both of the same length.
[[nodiscard]] double correlation(std::span<const double> x, std::span<const double> y);

// Expected greatest of n standard normals (Harter 1961), n >= 1, by quadrature; good to 1e-9.
[[nodiscard]] double expected_max_of_normals(std::size_t n);

} // namespace lapwright::math
