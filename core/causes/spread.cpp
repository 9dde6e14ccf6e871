// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/spread.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <vector>

namespace lapwright::causes {

Seconds spread_of(std::span<const double> draws) {
    std::vector<double> sorted(draws.begin(), draws.end());
    std::ranges::sort(sorted);
    return {math::mean(sorted), math::sorted_quantile(sorted, 0.025), math::sorted_quantile(sorted, 0.975)};
}

} // namespace lapwright::causes
