// SPDX-License-Identifier: GPL-3.0-or-later
// A closed line from a lap's curvature over its distance, for a track that nobody has recorded positions of.
//
// The heading is the curvature's integral, brought to whole turns over the lap, the line the heading's, brought back to
// its start (both differences are spread evenly).  The shape is a sketch, a few hundredths off; distance and curvature
// along it are as given.  It begins at the origin, northward.
#pragma once

#include "core/track/track.h"

#include <span>

namespace lapwright::track {

// curvature_per_m: at least 16 nodes, evenly spaced over the closed lap, the first at the gate.
[[nodiscard]] ReferenceLine line_from_curvature(std::span<const double> curvature_per_m, double length_m);

} // namespace lapwright::track
