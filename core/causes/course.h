// SPDX-License-Identifier: GPL-3.0-or-later
// The line that a driver takes, as the lap simulation wants it:
// path length and curvature from the mean of the clean laps.
#pragma once

#include "core/car/lap_simulation.h"
#include "core/lap/lap.h"
#include "core/track/track.h"

#include <vector>

namespace lapwright::causes {

// laps: at least one, on one grid; segments cover the lap from 0.  step_m: wished distance of the nodes along the
// reference line.  Curvature is a_lat / v², path per station is v dt/ds.
[[nodiscard]] car::Course course_of(const std::vector<lap::LapTrace>& laps, const std::vector<track::Segment>& segments,
                                    double step_m = 4.0);

} // namespace lapwright::causes
