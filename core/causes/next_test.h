// SPDX-License-Identifier: GPL-3.0-or-later
// The next test that tells most: what could be measured of either car, how wide the answer is expected to be then, and
// what it takes.  Expected information (Lindley 1956; Chaloner and Verdinelli 1995) of a linear reading y with error
// variance R on a target t, both given by each draw of the posterior:
//
//   Var(t | y) = Var(t) − (s c)² / (s Var(y) + R),   c = Cov(t, y),   s: share of the draws' variance that y sees
//
// The linear-Gaussian update of the draws' covariance: its answer does not hang on the outcome, and 200 draws carry it
// where weights on them would leave a handful for a reading that is sharp.  Each reading's error is stated in
// next_test.cpp.  Only tests whose outcome the program takes in: a figure of the setup sheet, or a setup trial.
#pragma once

#include "core/causes/explain.h"

#include <array>
#include <span>
#include <vector>

namespace lapwright::causes {

// All that could be measured of one car, told much by it or not.  totals: the causes of the whole lap, one a draw.
[[nodiscard]] std::vector<NextTest> tests_of(const KnownSide& known, Side side,
                                             std::span<const std::array<double, cause_count>> totals, Term question);

[[nodiscard]] NextTests next_tests(const KnownSide& a, const KnownSide& b,
                                   std::span<const std::array<double, cause_count>> totals);

// The variance of `target` that is left on average; `seen`: s above.  Equally many draws, at least two.
[[nodiscard]] double expected_variance(std::span<const double> target, std::span<const double> reading,
                                       double reading_sd, double seen = 1.0);

} // namespace lapwright::causes
