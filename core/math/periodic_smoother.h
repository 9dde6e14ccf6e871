// SPDX-License-Identifier: GPL-3.0-or-later
// Whittaker smoother on a closed uniform grid (Whittaker 1923; Eilers 2003, Anal. Chem. 75:3631): minimises
//     Σ w_i (y_i − z_i)² + λ Σ (Δ³z)_i²       with indices taken modulo n,
// and exact-order derivatives of the result.  The third difference leaves slopes and curvature free and damps a wave of
// angular frequency ω (radians per node) by 1 / (1 + λ (2 sin(ω/2))⁶).
#pragma once

#include <span>
#include <vector>

namespace lapwright::math {

// The λ that halves a wave which spans that many nodes (> 2).
[[nodiscard]] double lambda_for_cutoff(double nodes_per_wave);

// y and weights have the same length n >= 8; weights are >= 0 and not all 0 (a node with weight 0 is bridged).
[[nodiscard]] std::vector<double> smooth_periodic(std::span<const double> y, std::span<const double> weights,
                                                  double lambda);

// Both coordinates of a closed curve with all weights 1: one factorisation serves both.
struct SmoothedPair {
    std::vector<double> first;
    std::vector<double> second;
};
[[nodiscard]] SmoothedPair smooth_periodic_pair(std::span<const double> first, std::span<const double> second,
                                                double lambda);

// First and second derivative on the closed grid with spacing h, central differences of sixth order; n >= 8.
[[nodiscard]] std::vector<double> first_derivative_periodic(std::span<const double> y, double h);
[[nodiscard]] std::vector<double> second_derivative_periodic(std::span<const double> y, double h);

} // namespace lapwright::math
