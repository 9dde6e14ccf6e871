// SPDX-License-Identifier: GPL-3.0-or-later
// A corner and the straight that it feeds as one stretch: a quick exit earns its time on the straight behind it.
#pragma once

#include "core/track/track.h"

#include <vector>

namespace lapwright::comparison {

// Each corner joined with a straight directly behind it, with both names and the corner's kind, angle and radius;
// everything else stays as it is.  The result covers the same distance, in order and without holes.
[[nodiscard]] std::vector<track::Segment> corners_with_their_straights(const std::vector<track::Segment>& segments);

} // namespace lapwright::comparison
