// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/pairing_notes.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/base/translation.h"

#include <algorithm>
#include <optional>

namespace lapwright::workspace {
namespace {

using Segments = std::vector<comparison::SegmentComparison>;

std::optional<std::size_t> home_of(const NoteAbout& about, const Segments& segments) {
    auto found = std::ranges::find_if(segments, [&](const auto& s) { return s.segment.name == about.segment; });
    if (found == segments.end() && about.at_m) {
        found = std::ranges::find_if(
            segments, [&](const auto& s) { return *about.at_m >= s.segment.start_m && *about.at_m < s.segment.end_m; });
    }
    if (found == segments.end()) return std::nullopt;
    return static_cast<std::size_t>(found - segments.begin());
}

void add_lines(std::string& words, const std::string& more) {
    if (!words.empty() && !more.empty()) words += '\n';
    words += more;
}

// Each run of blanks and line breaks becomes one blank.
std::string on_one_line(const std::string& note) {
    std::string line;
    for (const char c : base::plain_name(note))
        if (c != ' ' || line.back() != ' ') line += c;
    return line;
}

struct Lines {
    std::vector<std::string> lines;

    void add(const std::string& place, const std::string& side, const std::string& note) {
        if (note.empty()) return;
        const std::string comma = place.empty() || side.empty() ? "" : ", ";
        lines.push_back(place + comma + side + ": " + on_one_line(note));
    }
};

std::string lap_words(int number) {
    return base::said("lap %1", {base::integer_text(number)});
}

} // namespace

void SegmentNotes::add(const SegmentNotes& other) {
    add_lines(a, other.a);
    add_lines(b, other.b);
}

std::vector<SegmentNotes> segment_notes(const Notes& notes, const Segments& segments, const SessionKey& session_a,
                                        const SessionKey& session_b) {
    std::vector<SegmentNotes> result(segments.size());
    const auto collect = [&](const SessionKey& session, std::string SegmentNotes::* side) {
        for (const Note& note : notes.of_session(session)) {
            if (note.about.segment.empty()) continue;
            if (const auto home = home_of(note.about, segments)) add_lines(result[*home].*side, note.text);
        }
    };
    collect(session_a, &SegmentNotes::a);
    if (session_b != session_a) collect(session_b, &SegmentNotes::b);
    return result;
}

std::vector<NoteAbout> notes_about(const Notes& notes, const Segments& segments, std::size_t segment,
                                   const SessionKey& session) {
    std::vector<NoteAbout> there;
    for (const Note& note : notes.of_session(session))
        if (!note.about.segment.empty() && home_of(note.about, segments) == segment) there.push_back(note.about);
    if (!there.empty()) return there;
    const track::Segment& s = segments[segment].segment;
    return {{session, std::nullopt, s.name, 0.5 * (s.start_m + s.end_m)}};
}

std::vector<std::string> note_lines(const Notes& notes, const Segments& segments, const TwoLaps& laps) {
    const bool one = laps.session_a == laps.session_b;
    const std::string a = one ? "" : "A";
    const std::string b = one ? "" : "B";
    Lines result;
    result.add(one ? "session" : a, "", notes.text({laps.session_a}));
    if (!one) result.add(b, "", notes.text({laps.session_b}));
    result.add(a, lap_words(laps.lap_a), notes.text({laps.session_a, laps.lap_a}));
    if (!one || laps.lap_a != laps.lap_b)
        result.add(b, lap_words(laps.lap_b), notes.text({laps.session_b, laps.lap_b}));
    const auto on_segments = segment_notes(notes, segments, laps.session_a, laps.session_b);
    for (std::size_t i = 0; i < segments.size(); ++i) {
        result.add(segments[i].segment.name, a, on_segments[i].a);
        result.add(segments[i].segment.name, b, on_segments[i].b);
    }
    return result.lines;
}

} // namespace lapwright::workspace
