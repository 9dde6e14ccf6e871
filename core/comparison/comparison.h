// SPDX-License-Identifier: GPL-3.0-or-later
// Two laps beside each other.  Signs: gap(s) = t_B(s) − t_A(s), positive: A is ahead; gain(segment) = gap(end) −
// gap(start), positive: A won time there.  The gains of all segments sum to the difference of the lap times.
#pragma once

#include "core/comparison/line_difference.h"
#include "core/track/track.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::comparison {

// A figure with its standard uncertainty from the ensemble; sd is absent when the motion estimate has no draws.
struct Figure {
    double value = 0.0;
    std::optional<double> sd;
    bool derived = false; // taken from the motion because the channel that measures it is missing
};

using MaybeFigure = std::optional<Figure>;

struct GapTrace {
    std::vector<double> distance_m;
    std::vector<double> gap_s;
    std::vector<double> sd_s;  // empty without draws
    std::vector<double> low_s; // 95 % band; empty without draws
    std::vector<double> high_s;
};

// One driver in one segment.  Places are distances along the
// reference line; a braking point may lie in the segment before.
struct SegmentFigures {
    double time_s = 0.0;
    Figure entry_speed_mps;
    Figure exit_speed_mps;
    MaybeFigure min_speed_mps; // corners
    MaybeFigure min_speed_at_m;
    MaybeFigure top_speed_mps; // straights
    MaybeFigure top_speed_at_m;
    MaybeFigure lift_at_m; // where the throttle closes before the corner
    MaybeFigure braking_point_m;
    MaybeFigure braking_mps2;     // mean deceleration from the braking point to its end, positive
    MaybeFigure throttle_opens_m; // for good: the last time before it is full
    MaybeFigure full_throttle_m;
    MaybeFigure peak_lateral_mps2; // magnitude
    MaybeFigure coasting_s;        // with neither pedal pressed, up to the end of the segment
    MaybeFigure lift_to_brakes_s;  // the part of it before the braking point
    MaybeFigure driven_length_m;
    MaybeFigure shifts;
    MaybeFigure shift_cost_s; // lost by upward shifts, see shifts.h
};

struct SegmentComparison {
    track::Segment segment;
    Figure gain_s;
    SegmentFigures a;
    SegmentFigures b;
    LineFigures line = {};
};

struct Comparison {
    GapTrace gap;
    Figure gap_at_end_s; // equals lap time B − lap time A
    std::vector<SegmentComparison> segments;
    LineDifference line = {};
};

} // namespace lapwright::comparison
