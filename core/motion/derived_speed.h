// SPDX-License-Identifier: GPL-3.0-or-later
// A speed that was computed from the positions beside it is no second measurement: counted as one, it makes the same
// error count twice.  It is told by the noise that both share.
#pragma once

#include "core/motion/measurements.h"

#include <span>

namespace lapwright::motion {

// Whether the speed, on stamps of the positions, follows every wobble of their differences (central, backward or
// forward ones).  A receiver's own speed, by Doppler shift, has errors of its own.
[[nodiscard]] bool is_derived(const Series& speed, std::span<const double> time_s, std::span<const Vec2> position_m);

} // namespace lapwright::motion
