// SPDX-License-Identifier: GPL-3.0-or-later
// Laps whose accelerations are calm enough to be judged sample by sample, whatever the motion estimate left in them.
#pragma once

#include "core/lap/lap.h"

#include <vector>

namespace lapwright::car {

// The lap with both accelerations averaged over ±0.2 s under a triangle, twicing, so that a peak keeps its height; ends
// are averaged over what there is.  A motion that is smooth already hardly changes.
[[nodiscard]] lap::LapTrace settled(lap::LapTrace lap);

} // namespace lapwright::car
