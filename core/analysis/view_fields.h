// SPDX-License-Identifier: GPL-3.0-or-later
// The fields of every struct that a pairing's page shows, once for writing and for reading: fields(visit, value) calls
// visit(field, field …).  Each struct is taken apart whole, so that a field that comes to it does not compile before
// somebody has said here whether it is kept.
#pragma once

#include "core/analysis/analysis.h"

#include <concepts>
#include <type_traits>

namespace lapwright::analysis {

// T, or const T.
template <typename Given, typename T>
concept Of = std::same_as<std::remove_const_t<Given>, T>;

void fields(auto& visit, Of<motion::Vec2> auto& value) {
    auto& [east, north] = value;
    visit(east, north);
}

void fields(auto& visit, Of<motion::LocalFrame> auto& value) {
    auto& [origin, on_earth] = value;
    auto& [latitude, longitude, height] = origin;
    visit(latitude, longitude, height, on_earth);
}

void fields(auto& visit, Of<track::Gate> auto& value) {
    auto& [centre, heading, half_width] = value;
    visit(centre, heading, half_width);
}

void fields(auto& visit, Of<track::ReferenceLine> auto& value) {
    auto& [step, length, position, tangent, curvature] = value;
    visit(step, length, position, tangent, curvature);
}

void fields(auto& visit, Of<track::Segment> auto& value) {
    auto& [name, kind, start, end, turned, radius] = value;
    visit(name, kind, start, end, turned, radius);
}

void fields(auto& visit, Of<track::Track> auto& value) {
    auto& [name, frame, gate, line, segments] = value;
    visit(name, frame, gate, line, segments);
}

void fields(auto& visit, Of<track::TrackRecord> auto& value) {
    auto& [name, gate, length, segments] = value;
    auto& [position, heading, half_width] = gate;
    auto& [latitude, longitude, height] = position;
    visit(name, latitude, longitude, height, heading, half_width, length, segments);
}

void fields(auto& visit, Of<lap::Lap> auto& value) {
    auto& [number, kind, start, end, time_sd, clean, why_not_clean] = value;
    visit(number, kind, start, end, time_sd, clean, why_not_clean);
}

void fields(auto& visit, Of<lap::TraceChannel> auto& value) {
    auto& [name, meaning, source_unit, values] = value;
    visit(name, meaning, source_unit, values);
}

// Channels are carried over from the samples again.
void fields(auto& visit, Of<lap::LapTrace> auto& value) {
    auto& [distance, time, speed, longitudinal, lateral, offset, channels, driven_length] = value;
    visit(distance, time, speed, longitudinal, lateral, offset, driven_length);
}

void fields(auto& visit, Of<comparison::Figure> auto& value) {
    auto& [figure, sd, derived] = value;
    visit(figure, sd, derived);
}

void fields(auto& visit, Of<comparison::GapTrace> auto& value) {
    auto& [distance, gap, sd, low, high] = value;
    visit(distance, gap, sd, low, high);
}

void fields(auto& visit, Of<comparison::SegmentFigures> auto& value) {
    auto& [time, entry, exit, min_speed, min_at, top_speed, top_at, lift, braking_point, braking, opens, full, lateral,
           coasting, lift_to_brakes, driven, shifts, shift_cost] = value;
    visit(time, entry, exit, min_speed, min_at, top_speed, top_at, lift, braking_point, braking, opens, full, lateral,
          coasting, lift_to_brakes, driven, shifts, shift_cost);
}

void fields(auto& visit, Of<comparison::SegmentComparison> auto& value) {
    auto& [segment, gain, a, b] = value;
    visit(segment, gain, a, b);
}

void fields(auto& visit, Of<comparison::Comparison> auto& value) {
    auto& [gap, gap_at_end, segments] = value;
    visit(gap, gap_at_end, segments);
}

void fields(auto& visit, Of<comparison::Repeatability> auto& value) {
    auto& [times_a, times_b, mean_difference, low, high, chance_a_wins] = value;
    visit(times_a, times_b, mean_difference, low, high, chance_a_wins);
}

void fields(auto& visit, Of<comparison::IdealLap> auto& value) {
    auto& [time, best_lap, noise_only_gain, mean_lap] = value;
    visit(time, best_lap, noise_only_gain, mean_lap);
}

void fields(auto& visit, Of<findings::Headline> auto& value) {
    auto& [ahead, verdict, uncertainty, sentence, deciding_segment] = value;
    visit(ahead, verdict, uncertainty, sentence, deciding_segment);
}

void fields(auto& visit, Of<recording::Warning> auto& value) {
    auto& [code, message, line] = value;
    visit(code, message, line);
}

// The session comes from elsewhere; draws and clean traces are for working out more.
void fields(auto& visit, Of<Side> auto& value) {
    auto& [session, lap, trace, clean_laps, clean_traces] = value;
    auto& [best, draws] = trace;
    visit(lap, best, clean_laps);
}

// What it was compared with is part of what the view was made from.
void fields(auto& visit, Of<Pairing> auto& value) {
    auto& [track, a, b, comparison, repeatability, ideal_a, ideal_b, headline, warnings, track_choice] = value;
    visit(track, a, b, comparison, repeatability, ideal_a, ideal_b, headline, warnings);
}

// The highest value of each enum that is kept, asked with any of them.
constexpr track::SegmentKind last_of(track::SegmentKind) {
    return track::SegmentKind::straight;
}
constexpr lap::LapKind last_of(lap::LapKind) {
    return lap::LapKind::incomplete;
}
constexpr recording::Meaning last_of(recording::Meaning) {
    return recording::Meaning::humidity;
}
constexpr base::Unit last_of(base::Unit) {
    return base::Unit::ampere;
}
constexpr findings::Favours last_of(findings::Favours) {
    return findings::Favours::neither;
}

} // namespace lapwright::analysis
