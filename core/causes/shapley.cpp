// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/shapley.h"

#include "core/base/check.h"

#include <bit>

namespace lapwright::causes {

std::vector<double> shapley(std::span<const double> values) {
    base::check(values.size() >= 2 && std::has_single_bit(values.size()), "a game has 2^n values");
    const auto n = static_cast<std::size_t>(std::countr_zero(values.size()));
    // weight[s] = s! (n − s − 1)! / n!, from weight[0] = 1/n on.
    std::vector<double> weight(n);
    weight[0] = 1.0 / static_cast<double>(n);
    for (std::size_t s = 1; s < n; ++s)
        weight[s] = weight[s - 1] * static_cast<double>(s) / static_cast<double>(n - s);
    std::vector<double> worth(n, 0.0);
    for (std::size_t mask = 0; mask < values.size(); ++mask)
        for (std::size_t i = 0; i < n; ++i) {
            const std::size_t player = std::size_t{1} << i;
            if ((mask & player) != 0) continue;
            worth[i] += weight[static_cast<std::size_t>(std::popcount(mask))] * (values[mask | player] - values[mask]);
        }
    return worth;
}

} // namespace lapwright::causes
