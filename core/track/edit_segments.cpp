// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/edit_segments.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/base/translation.h"
#include "core/track/find_segments.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::track {
namespace {

using base::Error;
using base::Result;
using base::said;

constexpr std::size_t max_characters = 120; // of a name

Error refused(const std::string& what, const std::string& remedy) {
    return {base::ErrorCode::cannot_be_computed, {}, what, remedy};
}

std::string in_metres(double length_m) {
    return base::integer_text(std::llround(length_m)) + " m";
}

bool has_name(const Segments& segments, const std::string& name) {
    return std::ranges::any_of(segments, [&](const Segment& one) { return base::same_name(one.name, name); });
}

// "Sweep 2", or the next number that is free.
std::string further_name(const Segments& segments, const std::string& name) {
    for (std::int64_t i = 2;; ++i)
        if (std::string further = name + " " + base::integer_text(i); !has_name(segments, further)) return further;
}

Error too_short(const std::string& name) {
    return refused(said("%1 would be shorter than %2", {name, in_metres(shortest_segment_m)}),
                   said("choose a place further away"));
}

const Segment& longer(const Segment& one, const Segment& other) {
    return one.length_m() >= other.length_m() ? one : other;
}

Segment joined(const Segment& one, const Segment& next) {
    const bool same_kind = one.kind == next.kind;
    Segment both = same_kind ? longer(one, next) : one.kind == SegmentKind::corner ? one : next;
    both.start_m = one.start_m;
    both.end_m = next.end_m;
    return both;
}

// Places of the old lap as places of a lap that begins at `start_m` of it.
double on_new_lap(double place_m, double start_m, double length_m) {
    const double moved = std::fmod(place_m - start_m + length_m, length_m);
    return moved < 0.0 ? moved + length_m : moved;
}

// The lap's last and first segment, which meet at the timing line no more, are one where both are straights.
void join_at_old_gate(Segments& segments, std::size_t last) {
    if (last + 1 >= segments.size()) return;
    const bool straights =
        segments[last].kind == SegmentKind::straight && segments[last + 1].kind == SegmentKind::straight;
    if (!straights) return;
    segments[last] = joined(segments[last], segments[last + 1]);
    segments.erase(segments.begin() + static_cast<std::ptrdiff_t>(last) + 1);
}

Segments begun_at(const Segments& split, double place_m, double length_m) {
    const auto first = std::ranges::find_if(split, [&](const Segment& one) { return one.start_m >= place_m - 1e-6; });
    Segments segments(first, split.end());
    const std::size_t before_gate = segments.size();
    segments.insert(segments.end(), split.begin(), first);
    double at = 0.0;
    for (Segment& one : segments) {
        const double length = one.length_m();
        one.start_m = at;
        one.end_m = at += length;
    }
    segments.back().end_m = length_m;
    if (before_gate > 0) join_at_old_gate(segments, before_gate - 1);
    return segments;
}

} // namespace

Result<Segments> with_name(Segments segments, std::size_t segment, const std::string& name) {
    const std::string plain = base::plain_name(name);
    if (segment >= segments.size()) return refused(said("there is no such segment"), said("choose one"));
    if (plain.empty()) return refused(said("the name is empty"), said("give one"));
    if (base::count_characters(plain) > max_characters)
        return refused(said("the name is longer than %1 characters",
                            {base::integer_text(static_cast<std::int64_t>(max_characters))}),
                       said("give a shorter one"));
    if (!base::same_name(plain, segments[segment].name) && has_name(segments, plain))
        return refused(said("there is a segment \"%1\" already", {plain}), said("give another name"));
    segments[segment].name = plain;
    return segments;
}

Result<Segments> with_end(Segments segments, std::size_t segment, double end_m) {
    if (segment + 1 >= segments.size())
        return refused(said("the lap begins and ends at the timing line"),
                       said("move the timing line to move this end"));
    Segment& one = segments[segment];
    Segment& next = segments[segment + 1];
    if (end_m - one.start_m < shortest_segment_m) return too_short(one.name);
    if (next.end_m - end_m < shortest_segment_m) return too_short(next.name);
    one.end_m = end_m;
    next.start_m = end_m;
    return segments;
}

Result<Segments> split_at(Segments segments, double place_m) {
    const auto found = std::ranges::find_if(
        segments, [&](const Segment& one) { return one.start_m <= place_m && place_m < one.end_m; });
    if (found == segments.end()) return refused(said("no segment lies there"), said("choose a place on the lap"));
    if (std::min(place_m - found->start_m, found->end_m - place_m) < shortest_segment_m)
        return too_short(said("one part of %1", {found->name}));
    Segment second = *found;
    second.name = further_name(segments, found->name);
    second.start_m = place_m;
    found->end_m = place_m;
    segments.insert(found + 1, second);
    return segments;
}

Result<Segments> joined_with_next(Segments segments, std::size_t segment) {
    if (segment + 1 >= segments.size())
        return refused(said("behind the last segment lies the timing line"), said("move the timing line first"));
    segments[segment] = joined(segments[segment], segments[segment + 1]);
    segments.erase(segments.begin() + static_cast<std::ptrdiff_t>(segment) + 1);
    return segments;
}

Result<Segments> of_other_kind(Segments segments, std::size_t segment) {
    if (segment >= segments.size()) return refused(said("there is no such segment"), said("choose one"));
    SegmentKind& kind = segments[segment].kind;
    kind = kind == SegmentKind::corner ? SegmentKind::straight : SegmentKind::corner;
    return segments;
}

Result<TrackRecord> record_of(const Track& track) {
    if (!track.frame.on_earth)
        return refused(
            said("this track has no place on the earth: the files have no positions in latitude and longitude"),
            said("its corners stay as the program finds them"));
    const motion::EastNorthUp centre{track.gate.centre_m.east, track.gate.centre_m.north, 0.0};
    TrackRecord record{track.name,
                       {motion::to_geodetic(track.frame, centre), track.gate.heading_rad, track.gate.half_width_m},
                       track.line.length_m,
                       track.segments,
                       turns_of(track.line)};
    return record;
}

Result<TrackRecord> record_with_gate_at(const Track& track, double place_m) {
    auto written = record_of(track);
    if (!written) return written;
    TrackRecord record = std::move(written).value();
    const double length_m = track.line.length_m;
    const double place = track.line.wrapped(place_m);
    if (std::min(place, length_m - place) < shortest_segment_m)
        return refused(said("the timing line lies there already"), said("choose a place further away"));
    const auto boundary = std::ranges::find_if(track.segments, [&](const Segment& one) {
        return std::abs(one.start_m - place) < shortest_segment_m || std::abs(one.end_m - place) < shortest_segment_m;
    });
    Segments cut = track.segments;
    double start_m = place; // of the lap from now on
    if (boundary != track.segments.end()) {
        start_m = std::abs(boundary->start_m - place) < shortest_segment_m ? boundary->start_m : boundary->end_m;
    } else {
        auto split = split_at(cut, place);
        if (!split) return split.error();
        cut = std::move(split).value();
    }
    const LinePoint at = track.line.at(start_m);
    const motion::EastNorthUp centre{at.position_m.east, at.position_m.north, 0.0};
    record.gate.position = motion::to_geodetic(track.frame, centre);
    record.gate.heading_rad = std::atan2(at.tangent.north, at.tangent.east);
    record.segments = begun_at(cut, start_m, length_m);
    for (double& turn : record.turns_m)
        turn = on_new_lap(turn, start_m, length_m);
    std::ranges::sort(record.turns_m);
    return record;
}

} // namespace lapwright::track
