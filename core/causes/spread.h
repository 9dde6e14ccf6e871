// SPDX-License-Identifier: GPL-3.0-or-later
// Draws of a time as its mean and 95 % interval.
#pragma once

#include "core/causes/explanation.h"

#include <span>

namespace lapwright::causes {

// Mean (so that rows add up) and the 2.5 and 97.5 % quantiles; at least one value.  Untold where the mean lies outside
// them, or a draw is not finite.
[[nodiscard]] Seconds spread_of(std::span<const double> draws);

} // namespace lapwright::causes
