// SPDX-License-Identifier: GPL-3.0-or-later
// A track's segments as a person edits them: named, moved by their ends, split, joined, and the timing line put
// elsewhere.  What comes out is in order and without holes, as find_segments() has it; turned angle and radius are
// for whoever knows the line.  Error cannot_be_computed says why an edit is refused.
#pragma once

#include "core/base/result.h"
#include "core/track/track.h"
#include "core/track/track_record.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::track {

using Segments = std::vector<Segment>;

inline constexpr double shortest_segment_m = 10.0; // about two cars' lengths: less says nothing of a corner

// No other segment may have the name.
[[nodiscard]] base::Result<Segments> with_name(Segments segments, std::size_t segment, const std::string& name);
// The boundary behind `segment` moves; the last one's end is the timing line and stays.
[[nodiscard]] base::Result<Segments> with_end(Segments segments, std::size_t segment, double end_m);
// The one that the place lies in becomes two of its kind: "Sweep" and "Sweep 2".
[[nodiscard]] base::Result<Segments> split_at(Segments segments, double place_m);
// With the one behind it, to a corner where either is one; the name is that of the corner, else of the longer one.
[[nodiscard]] base::Result<Segments> joined_with_next(Segments segments, std::size_t segment);
[[nodiscard]] base::Result<Segments> of_other_kind(Segments segments, std::size_t segment);

// The track as it is written down, under its name.  Error: it lies nowhere on the earth.
[[nodiscard]] base::Result<TrackRecord> record_of(const Track& track);
// The same with its timing line across the line at a place of it: what was the lap's beginning is within the lap now,
// and the segment of the place begins the lap with its second part and ends it with its first.
[[nodiscard]] base::Result<TrackRecord> record_with_gate_at(const Track& track, double place_m);

} // namespace lapwright::track
