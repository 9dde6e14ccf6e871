// SPDX-License-Identifier: GPL-3.0-or-later
// Corners from the curvature of the reference line, straights between them.
#pragma once

#include "core/track/track.h"

#include <vector>

namespace lapwright::track {

struct SegmentOptions {
    // Hysteresis on |curvature|: a corner begins where it rises above the upper and ends where it falls below the lower
    // threshold (radius of 450 and 900 m; a sweep of 300 m is a corner to a driver, a kink of 1,000 m is not).
    double enter_per_m = 1.0 / 450.0;
    double leave_per_m = 1.0 / 900.0;
    // The smallest turned angle that is a corner.
    double min_turned_rad = 0.14;
    // Two turns in the same direction with less than this between them are one corner to the driver.
    double join_m = 45.0;
    // A straight shorter than this between two turns in opposite directions belongs half to each.
    double min_straight_m = 25.0;
};

// In order, without holes, from 0 to the line's length.  Named by number: "Corner 1", "1 to 2"; the straight with the
// gate is two segments, "Start straight" and "Run home".  A line without corners is one straight.
[[nodiscard]] std::vector<Segment> find_segments(const ReferenceLine& line, const SegmentOptions& options = {});

// The middles of its corners, in order.
[[nodiscard]] std::vector<double> turns_of(const ReferenceLine& line);

// Boundaries and names as recorded, moved onto the line: corners that the curvature shows are the fixed points, and
// what lies between is stretched.  `turns_m`: where the recorded line had them; empty: in the middles of the recorded
// corners.  Turned angle and radius come from the line.
[[nodiscard]] std::vector<Segment> recorded_segments(const ReferenceLine& line, const std::vector<Segment>& recorded,
                                                     double recorded_length_m, const std::vector<double>& turns_m = {});

} // namespace lapwright::track
