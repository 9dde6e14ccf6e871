// SPDX-License-Identifier: GPL-3.0-or-later
// A recorded speed against the way between positions: a receiver's own speed agrees, a wheel's reads some per cent high
// or low, and another car's, another column's or another unit's does not follow at all.
#pragma once

#include "core/motion/measurements.h"

namespace lapwright::motion {

struct SpeedAgreement {
    double ratio = 1.0; // reading over speed by the positions, median
    double share = 1.0; // of the seconds in which the readings, divided by that, agree
};

// Nothing with fewer than 20 seconds in motion to hold against each other.
[[nodiscard]] std::optional<SpeedAgreement> speed_agreement(const Measurements& measured);

// A speed whose scale is off becomes the wheel speed, where there is none yet, and is dropped otherwise; a speed that
// does not follow the positions is dropped.  Each is told by a warning.
void settle_speed(Measurements& measured);

} // namespace lapwright::motion
