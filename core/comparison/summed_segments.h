// SPDX-License-Identifier: GPL-3.0-or-later
// A corner and the straight that it feeds as one stretch: a quick exit earns its time on the straight behind it.
#pragma once

#include "core/comparison/comparison.h"
#include "core/lap/lap.h"
#include "core/track/track.h"

#include <vector>

namespace lapwright::comparison {

// Each corner joined with a straight directly behind it, with both names and the corner's kind, angle and radius;
// everything else stays as it is.  The result covers the same distance, in order and without holes.
[[nodiscard]] std::vector<track::Segment> corners_with_their_straights(const std::vector<track::Segment>& segments);

// The comparison of the same two laps over these stretches.  Gain, time and exit speed are those of the whole stretch
// with their own uncertainty; what belongs to the corner (entry, braking, slowest, throttle) stays the corner's, and
// the top speed is the straight's.
[[nodiscard]] std::vector<SegmentComparison>
summed_with_straights(const Comparison& comparison, const lap::LapEnsemble& a, const lap::LapEnsemble& b);

} // namespace lapwright::comparison
