// SPDX-License-Identifier: GPL-3.0-or-later
#include "ui/models/segment_notes.h"

#include "ui/models/text.h"

#include <algorithm>
#include <optional>

namespace lapwright::models {
namespace {

using Segments = std::vector<comparison::SegmentComparison>;

std::optional<std::size_t> home_of(const NoteAbout& about, const Segments& segments) {
    auto found = std::ranges::find_if(segments, [&](const auto& s) { return text(s.segment.name) == about.segment; });
    if (found == segments.end() && about.at_m) {
        found = std::ranges::find_if(
            segments, [&](const auto& s) { return *about.at_m >= s.segment.start_m && *about.at_m < s.segment.end_m; });
    }
    if (found == segments.end()) return std::nullopt;
    return static_cast<std::size_t>(found - segments.begin());
}

void add(QString& words, const QString& more) {
    if (!words.isEmpty() && !more.isEmpty()) words += QLatin1Char('\n');
    words += more;
}

} // namespace

void SegmentNotes::add(const SegmentNotes& other) {
    models::add(a, other.a);
    models::add(b, other.b);
}

std::vector<SegmentNotes> segment_notes(const NoteShelf& notes, const Segments& segments, const QString& session_a,
                                        const QString& session_b) {
    std::vector<SegmentNotes> result(segments.size());
    const auto collect = [&](const QString& session, QString SegmentNotes::* side) {
        for (const Note& note : notes.of_session(session)) {
            if (note.about.segment.isEmpty()) continue;
            if (const auto home = home_of(note.about, segments)) add(result[*home].*side, note.text);
        }
    };
    collect(session_a, &SegmentNotes::a);
    if (session_b != session_a) collect(session_b, &SegmentNotes::b);
    return result;
}

std::vector<NoteAbout> notes_about(const NoteShelf& notes, const Segments& segments, std::size_t segment,
                                   const QString& session) {
    std::vector<NoteAbout> there;
    for (const Note& note : notes.of_session(session)) {
        if (!note.about.segment.isEmpty() && home_of(note.about, segments) == segment) there.push_back(note.about);
    }
    if (!there.empty()) return there;
    const track::Segment& s = segments[segment].segment;
    return {{session, std::nullopt, text(s.name), 0.5 * (s.start_m + s.end_m)}};
}

} // namespace lapwright::models
