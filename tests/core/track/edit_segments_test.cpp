// SPDX-License-Identifier: GPL-3.0-or-later
// Segments edited by hand: always in order and without holes, refused with a sentence, and read back where they were
// put, on the line on which they were put and on another round the same track.
#include "core/track/edit_segments.h"
#include "core/track/find_segments.h"

#include <gtest/gtest.h>
#include <numbers>
#include <random>

using namespace lapwright;
using namespace lapwright::track;

namespace {

// Five segments: a start straight, two half circles of 50 m with 500 m between them, and the run home.
ReferenceLine stadium(double straight_m = 500.0, double radius_m = 50.0) {
    const double half = std::numbers::pi * radius_m;
    const double length = 2.0 * (straight_m + half);
    const auto nodes = static_cast<std::size_t>(std::lround(length));
    ReferenceLine line;
    line.length_m = length;
    line.step_m = length / static_cast<double>(nodes);
    Vec2 at{0.0, 0.0};
    double heading = 0.0;
    for (std::size_t i = 0; i < nodes; ++i) {
        const double s = std::fmod(static_cast<double>(i) * line.step_m + 0.5 * straight_m, straight_m + half);
        const double curvature = s >= straight_m ? 1.0 / radius_m : 0.0;
        line.position_m.push_back(at);
        line.tangent.push_back({std::cos(heading), std::sin(heading)});
        line.curvature_per_m.push_back(curvature);
        at.east += line.step_m * std::cos(heading);
        at.north += line.step_m * std::sin(heading);
        heading += curvature * line.step_m;
    }
    return line;
}

Track stadium_track() {
    Track track;
    track.name = "Gull Head";
    track.frame = {{0.9, 0.1, 0.0}, true};
    track.line = stadium();
    track.gate = {track.line.position_m.front(), 0.0, 20.0};
    track.segments = find_segments(track.line);
    return track;
}

void expect_whole(const Segments& segments, double length_m) {
    double at = 0.0;
    for (const Segment& s : segments) {
        EXPECT_DOUBLE_EQ(s.start_m, at);
        EXPECT_GE(s.length_m(), shortest_segment_m - 1e-6);
        EXPECT_FALSE(s.name.empty());
        at = s.end_m;
    }
    EXPECT_NEAR(at, length_m, 1e-6);
}

Segments read_back(const TrackRecord& record, const ReferenceLine& line) {
    const auto parsed = parse_track_record(track_record_json(record), "x.track.json");
    EXPECT_TRUE(parsed.ok());
    return recorded_segments(line, parsed.value().segments, parsed.value().length_m, parsed.value().turns_m);
}

} // namespace

TEST(EditSegments, ANameIsGivenOnceAndIsNeverEmpty) {
    const Segments segments = stadium_track().segments;
    EXPECT_EQ(with_name(segments, 1, " Sweep\n").value()[1].name, "Sweep");
    EXPECT_TRUE(with_name(segments, 1, "CORNER 1").ok()) << "its own, written otherwise";
    EXPECT_FALSE(with_name(segments, 1, "corner 2").ok());
    EXPECT_FALSE(with_name(segments, 1, " ").ok());
    EXPECT_FALSE(with_name(segments, 1, std::string(121, 'x')).ok());
    EXPECT_FALSE(with_name(segments, 9, "Sweep").ok());
}

TEST(EditSegments, AnEndMovesBothItsNeighbours) {
    const Segments segments = stadium_track().segments;
    const Segments moved = with_end(segments, 1, segments[1].end_m + 30.0).value();
    EXPECT_DOUBLE_EQ(moved[1].end_m, segments[1].end_m + 30.0);
    EXPECT_DOUBLE_EQ(moved[2].start_m, segments[1].end_m + 30.0);
    EXPECT_FALSE(with_end(segments, 1, segments[1].start_m + 5.0).ok());
    EXPECT_FALSE(with_end(segments, 1, segments[2].end_m - 5.0).ok());
    EXPECT_FALSE(with_end(segments, segments.size() - 1, 100.0).ok()) << "the timing line";
}

TEST(EditSegments, WhatIsSplitAndJoinedAgainIsWhatItWas) {
    const Track track = stadium_track();
    const double middle = 0.5 * (track.segments[1].start_m + track.segments[1].end_m);
    const Segments split = split_at(track.segments, middle).value();
    ASSERT_EQ(split.size(), track.segments.size() + 1);
    EXPECT_EQ(split[2].name, "Corner 1 2");
    EXPECT_EQ(split_at(split, split[1].start_m + 20.0).value()[2].name, "Corner 1 3") << "the next that is free";
    expect_whole(split, track.line.length_m);
    const Segments joined = joined_with_next(split, 1).value();
    ASSERT_EQ(joined.size(), track.segments.size());
    EXPECT_DOUBLE_EQ(joined[1].end_m, track.segments[1].end_m);
    EXPECT_EQ(joined_with_next(track.segments, 0).value()[0].name, "Corner 1") << "of a straight and a corner";
    EXPECT_EQ(joined_with_next(track.segments, 0).value()[0].kind, SegmentKind::corner);
    EXPECT_FALSE(joined_with_next(track.segments, track.segments.size() - 1).ok());
    EXPECT_FALSE(split_at(track.segments, track.segments[1].start_m + 1.0).ok());
}

// The class of fault: an end that was moved pulls back the places round it when the record is read.
TEST(EditSegments, AnyChainOfEditsIsReadBackWhereItWasPut) {
    std::mt19937_64 random(11);
    const auto draw = [&](double low, double high) { return std::uniform_real_distribution(low, high)(random); };
    Track track = stadium_track();
    int done = 0;
    for (int i = 0; i < 400; ++i) {
        const auto segment = static_cast<std::size_t>(draw(0.0, static_cast<double>(track.segments.size())));
        const int what = static_cast<int>(draw(0.0, 4.0));
        auto edited = what == 0   ? with_end(track.segments, segment, draw(0.0, track.line.length_m))
                      : what == 1 ? split_at(track.segments, draw(0.0, track.line.length_m))
                      : what == 2 ? joined_with_next(track.segments, segment)
                                  : of_other_kind(track.segments, segment);
        if (!edited) continue;
        ++done;
        track.segments = edited.value();
        expect_whole(track.segments, track.line.length_m);
        const Segments read = read_back(record_of(track).value(), track.line);
        ASSERT_EQ(read.size(), track.segments.size());
        for (std::size_t j = 0; j < read.size(); ++j) {
            ASSERT_NEAR(read[j].end_m, track.segments[j].end_m, 1e-6) << "edit " << i << ", segment " << j;
            ASSERT_EQ(read[j].kind, track.segments[j].kind);
            ASSERT_EQ(read[j].name, track.segments[j].name);
        }
    }
    EXPECT_GT(done, 100);
}

TEST(EditSegments, AMovedEndKeepsItsDistanceFromItsCornerOnAnotherLine) {
    Track track = stadium_track();
    const double end_m = track.segments[1].end_m + 40.0;
    track.segments = with_end(track.segments, 1, end_m).value();
    const ReferenceLine wider = stadium(500.0, 53.0); // the same track, a wider line through its corners
    const double turn_before = turns_of(track.line)[0];
    const double turn_there = turns_of(wider)[0];
    const Segments there = read_back(record_of(track).value(), wider);
    EXPECT_NEAR(there[1].end_m - turn_there, end_m - turn_before, 6.0);
}

TEST(EditSegments, TheTimingLineIsPutElsewhereAndBack) {
    const Track track = stadium_track();
    const double length = track.line.length_m;
    const double place = track.segments[2].start_m + 100.0; // in the straight between the corners
    const TrackRecord moved = record_with_gate_at(track, place).value();
    expect_whole(moved.segments, length);
    ASSERT_EQ(moved.segments.size(), 5U) << "one straight is cut, two meet";
    EXPECT_EQ(moved.segments[1].name, "Corner 2");
    EXPECT_EQ(moved.segments[3].name, "Corner 1");
    const motion::EastNorthUp gate = motion::to_local(track.frame, moved.gate.position);
    EXPECT_NEAR(gate.east_m, track.line.position(place).east, 1e-3);
    EXPECT_NEAR(gate.north_m, track.line.position(place).north, 1e-3);
    ASSERT_EQ(moved.turns_m.size(), 2U);
    EXPECT_NEAR(moved.turns_m[0], turns_of(track.line)[1] - place, 1e-6);
    EXPECT_NEAR(moved.turns_m[1], turns_of(track.line)[0] - place + length, 1e-6);
    EXPECT_FALSE(record_with_gate_at(track, 3.0).ok()) << "where it is";
}

TEST(EditSegments, ATimingLineNearABoundaryIsPutOnIt) {
    const Track track = stadium_track();
    const TrackRecord moved = record_with_gate_at(track, track.segments[2].start_m + 4.0).value();
    EXPECT_EQ(moved.segments.front().name, track.segments[2].name);
    EXPECT_EQ(moved.segments.back().name, "Corner 1");
}

TEST(EditSegments, ATrackWithoutAPlaceOnTheEarthIsRefused) {
    Track track = stadium_track();
    track.frame.on_earth = false;
    EXPECT_FALSE(record_of(track).ok());
    EXPECT_FALSE(record_with_gate_at(track, 400.0).ok());
}

TEST(EditSegments, TurnsThatAreNoneAreRefusedInAFile) {
    const std::string good = track_record_json(record_of(stadium_track()).value());
    ASSERT_TRUE(parse_track_record(good, "x").ok());
    for (const char* const bad : {"[5, 4]", "[-1]", "[1e9]", "\"no list\"", "[null]"}) {
        std::string text = good;
        const std::size_t at = text.find("\"turns_m\":") + 10;
        text.replace(at, text.find(']', at) + 1 - at, bad);
        EXPECT_FALSE(parse_track_record(text, "x").ok()) << bad;
    }
}
