// SPDX-License-Identifier: GPL-3.0-or-later
// Wheels that lock under brakes read slow just where the car is slowest.  The accelerometer says how much speed is lost
// from the pedal to its release, at both ends of which the wheels roll; in between it and the wheels part where they
// slip.
#pragma once

#include "core/motion/motion_model.h"

#include <vector>

namespace lapwright::motion {

// Marks the nodes whose speed slips: those of a braking over which the wheels fall short of the integrated longitudinal
// acceleration (signed and scaled; its offset is what brings both together at the end) by more than the limits.
void mark_slip(std::vector<Node>& nodes);

} // namespace lapwright::motion
