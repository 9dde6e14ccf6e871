// SPDX-License-Identifier: GPL-3.0-or-later
// The track as the program knows it: gate, reference line with curvature, segments with names.
//
// Distance (station) runs along the reference line from the gate, metres, 0 <= s < length.  Lateral offset is positive
// to the left.  Curvature is positive in left-handers.  Heading is the direction of travel, radians counter-clockwise
// from east (not the compass course).
#pragma once

#include "core/motion/motion_estimate.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::track {

using motion::Vec2;

// A lap is longer than the first and shorter than the second.
inline constexpr double shortest_lap_m = 100.0;
inline constexpr double longest_lap_m = 50000.0;

// A piece of straight line across the track, crossed in the direction of `heading_rad`.
struct Gate {
    Vec2 centre_m;
    double heading_rad = 0.0;
    double half_width_m = 20.0;
};

// The line at one station.
struct LinePoint {
    Vec2 position_m;
    Vec2 tangent;
    double curvature_per_m;
};

// Closed curve on a uniform grid of stations: node i lies at
// i * step_m, and the node after the last is the first again.
struct ReferenceLine {
    double step_m = 1.0; // length_m / number of nodes
    double length_m = 0.0;
    std::vector<Vec2> position_m;
    std::vector<Vec2> tangent; // unit vectors
    std::vector<double> curvature_per_m;

    [[nodiscard]] std::size_t size() const { return position_m.size(); }
    [[nodiscard]] double wrapped(double station_m) const; // into 0 <= s < length
    // Cubic Hermite between the nodes; any station, wrapped.
    [[nodiscard]] LinePoint at(double station_m) const;
    [[nodiscard]] Vec2 position(double station_m) const;
    [[nodiscard]] Vec2 tangent_at(double station_m) const;  // unit
    [[nodiscard]] double curvature(double station_m) const; // linear between the nodes
};

enum class SegmentKind { corner, straight };

struct Segment {
    std::string name;
    SegmentKind kind = SegmentKind::straight;
    double start_m = 0.0;
    double end_m = 0.0; // > start_m; the last segment ends at the length of the line
    // Corners only: the angle turned, positive to the left, and the smallest radius.
    double turned_rad = 0.0;
    std::optional<double> radius_m;

    [[nodiscard]] double length_m() const { return end_m - start_m; }
};

struct Track {
    std::string name;
    motion::LocalFrame frame;
    Gate gate;
    ReferenceLine line;
    std::vector<Segment> segments; // in order, without holes, from 0 to the line's length
};

} // namespace lapwright::track
