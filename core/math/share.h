// SPDX-License-Identifier: GPL-3.0-or-later
// A share known from few trials: the 95 % interval of Wilson (1927, Journal of the American Statistical Association
// 22:209), which Brown, Cai and DasGupta (2001, Statistical Science 16:101) find fit for 40 trials and fewer.
#pragma once

#include "core/base/estimate.h"

namespace lapwright::math {

// 0 ≤ successes ≤ trials; untold (all three NaN, no words) without trials.
[[nodiscard]] base::Estimate share_95(int successes, int trials);

} // namespace lapwright::math
