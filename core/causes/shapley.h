// SPDX-License-Identifier: GPL-3.0-or-later
// Shapley's value (1953): what each player of a game is worth, the same whatever the order in which they join, adding
// up to what all are worth together.
//   φ_i = Σ_S |S|! (n − |S| − 1)! / n! · (v(S + i) − v(S))   over the coalitions S without i
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace lapwright::causes {

// values[mask] is v of the coalition whose members are the bits of mask; 2^n of them, n = 1..16.  Returns n values
// whose sum is values.back() − values.front().
[[nodiscard]] std::vector<double> shapley(std::span<const double> values);

} // namespace lapwright::causes
