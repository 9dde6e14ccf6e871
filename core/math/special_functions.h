// SPDX-License-Identifier: GPL-3.0-or-later
// Special functions behind the distributions.
#pragma once

namespace lapwright::math {

// Regularised incomplete beta I_x(a, b), a, b > 0, 0 <= x <= 1: continued fraction (DLMF 8.17.22) by the modified Lentz
// method.  Relative error about 1e-14.
[[nodiscard]] double incomplete_beta(double a, double b, double x);

} // namespace lapwright::math
