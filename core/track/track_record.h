// SPDX-License-Identifier: GPL-3.0-or-later
// A track as written down: where its gate is and what its
// segments are called.  JSON, so that it can be sent to a friend.
#pragma once

#include "core/base/result.h"
#include "core/track/track.h"

#include <string>
#include <string_view>
#include <vector>

namespace lapwright::track {

struct RecordedGate {
    motion::Geodetic position;
    double heading_rad = 0.0; // counter-clockwise from east (the file has degrees clockwise from north)
    double half_width_m = 20.0;
};

struct TrackRecord {
    std::string name;
    RecordedGate gate;
    double length_m = 0.0;         // of the line on which the segments were measured; 0: unknown
    std::vector<Segment> segments; // may be empty: found from the curvature
    // Where the line on which they were measured turns most: the fixed points between it and another line round the
    // same track, whatever a person made of the segments.  May be empty: then their corners are.
    std::vector<double> turns_m = {};
};

// Error track_not_readable names file, and the key that is wrong.
[[nodiscard]] base::Result<TrackRecord> read_track_record(const std::string& path);
[[nodiscard]] base::Result<TrackRecord> parse_track_record(std::string_view json, const std::string& name);
[[nodiscard]] std::string track_record_json(const TrackRecord& record);

} // namespace lapwright::track
