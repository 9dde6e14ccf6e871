// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/math/share.h"

#include "core/base/check.h"
#include "core/math/distributions.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::math {

base::Estimate share_95(int successes, int trials) {
    base::check(successes >= 0 && successes <= trials, "successes are among the trials");
    constexpr double none = std::numeric_limits<double>::quiet_NaN();
    if (trials == 0) return {none, none, none, {}};
    const double n = trials;
    const double share = successes / n;
    const double z = normal_quantile(0.975);
    const double middle = (share + 0.5 * z * z / n) / (1.0 + z * z / n);
    const double half = z / (1.0 + z * z / n) * std::sqrt(share * (1.0 - share) / n + 0.25 * z * z / (n * n));
    return {share, std::max(0.0, middle - half), std::min(1.0, middle + half), {}};
}

} // namespace lapwright::math
