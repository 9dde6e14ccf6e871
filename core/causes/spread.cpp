// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/spread.h"

#include "core/base/translation.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <vector>

namespace lapwright::causes {

using base::said;

Seconds spread_of(std::span<const double> draws) {
    std::vector<double> sorted(draws.begin(), draws.end());
    if (!std::ranges::all_of(sorted, [](double x) { return std::isfinite(x); }))
        return base::untold(said("the simulation of some draws came to nothing"));
    std::ranges::sort(sorted);
    Seconds s{math::mean(sorted), math::sorted_quantile(sorted, 0.025), math::sorted_quantile(sorted, 0.975)};
    if (s.value < s.low || s.value > s.high) return base::untold(said("a few draws run away from the others"));
    return s;
}

} // namespace lapwright::causes
