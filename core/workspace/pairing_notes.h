// SPDX-License-Identifier: GPL-3.0-or-later
// The notes that belong to a comparison: on its segments, each driver's own, and as lines for its sheet.  A note stands
// at the segment with its name; where there is none, at the segment that its place lies in, so that another way of
// naming corners does not lose it.
#pragma once

#include "core/comparison/comparison.h"
#include "core/workspace/notes.h"

#include <string>
#include <vector>

namespace lapwright::workspace {

struct SegmentNotes {
    std::string a;
    std::string b;

    void add(const SegmentNotes& other); // as further lines
    [[nodiscard]] bool any() const { return !a.empty() || !b.empty(); }
};

// As many as there are segments; both drivers' notes are under A where it is one session.
[[nodiscard]] std::vector<SegmentNotes> segment_notes(const Notes& notes,
                                                      const std::vector<comparison::SegmentComparison>& segments,
                                                      const SessionKey& session_a, const SessionKey& session_b);

// What a note on this segment is about: the ones that are there already, else the segment itself.
[[nodiscard]] std::vector<NoteAbout> notes_about(const Notes& notes,
                                                 const std::vector<comparison::SegmentComparison>& segments,
                                                 std::size_t segment, const SessionKey& session);

// For the sheet, each on one line: on both sessions, on the two laps, on the segments in the order of the track.
[[nodiscard]] std::vector<std::string>
note_lines(const Notes& notes, const std::vector<comparison::SegmentComparison>& segments, const TwoLaps& laps);

} // namespace lapwright::workspace
