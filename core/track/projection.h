// SPDX-License-Identifier: GPL-3.0-or-later
// A point's place on the reference line: the foot of its perpendicular (station) and its distance to the left (offset).
// The foot is unique only within the radius of curvature and one piece of track; so it is followed from a known place,
// and a track that crosses or nearly touches itself does not confuse it.
#pragma once

#include "core/track/track.h"

#include <optional>

namespace lapwright::track {

struct Projection {
    double station_m = 0.0; // near the hint, not wrapped: it may lie below 0 or above the length
    double offset_m = 0.0;
};

// The foot within `window_m` of the hint (any station, counted on beyond the length).  Nothing when none lies there.
[[nodiscard]] std::optional<Projection> project_near(const ReferenceLine& line, Vec2 point, double hint_m,
                                                     double window_m);

// The nearest foot on the whole line, 0 <= station < length.
[[nodiscard]] Projection project_anywhere(const ReferenceLine& line, Vec2 point);

} // namespace lapwright::track
