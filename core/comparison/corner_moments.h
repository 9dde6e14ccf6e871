// SPDX-License-Identifier: GPL-3.0-or-later
// Three moments of a corner, each as the driver's own place along the reference line: where the car is turned in, where
// it is slowest, and where the throttle is full again, which may lie in the segment behind.  Absent where the lap does
// not tell.
#pragma once

#include "core/comparison/comparison.h"
#include "core/lap/lap.h"

#include <optional>

namespace lapwright::comparison {

struct CornerMoments {
    std::optional<double> turn_in_m;
    std::optional<double> slowest_m;
    std::optional<double> full_throttle_m;
};

// Turned in: where the lateral acceleration last passes a fifth of the corner's largest before that is reached (ours,
// no source), on the same side of the car.
[[nodiscard]] CornerMoments corner_moments(const track::Segment& corner, const SegmentFigures& figures,
                                           const lap::LapTrace& trace);

} // namespace lapwright::comparison
