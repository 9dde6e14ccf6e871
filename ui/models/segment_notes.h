// SPDX-License-Identifier: GPL-3.0-or-later
// Notes on the segments of a comparison: each driver's own.  A note stands at the segment with its name; where there is
// none, at the segment that its place lies in, so that another way of naming corners does not lose it.
#pragma once

#include "core/comparison/comparison.h"
#include "ui/models/notes.h"

#include <QString>
#include <vector>

namespace lapwright::models {

struct SegmentNotes {
    QString a;
    QString b;

    void add(const SegmentNotes& other); // as further lines
    [[nodiscard]] bool any() const { return !a.isEmpty() || !b.isEmpty(); }
};

// As many as there are segments; both drivers' notes are under A where it is one session.
[[nodiscard]] std::vector<SegmentNotes> segment_notes(const NoteShelf& notes,
                                                      const std::vector<comparison::SegmentComparison>& segments,
                                                      const QString& session_a, const QString& session_b);

// What a note on this segment is about: the ones that are there already, else the segment itself.
[[nodiscard]] std::vector<NoteAbout> notes_about(const NoteShelf& notes,
                                                 const std::vector<comparison::SegmentComparison>& segments,
                                                 std::size_t segment, const QString& session);

} // namespace lapwright::models
