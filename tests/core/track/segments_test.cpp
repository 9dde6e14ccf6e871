// SPDX-License-Identifier: GPL-3.0-or-later
// Corners of a stadium (two 500 m straights, two half circles
// of 50 m) and of a line with a kink, an S and a double apex.
#include "core/track/find_segments.h"
#include "support/shapes.h"

#include <gtest/gtest.h>
#include <numeric>

using namespace lapwright;
using namespace lapwright::track;

namespace {

// Only curvature and length matter for segments.
ReferenceLine line_with_curvature(const std::vector<std::pair<double, double>>& pieces) {
    ReferenceLine line;
    for (const auto& [length_m, curvature] : pieces)
        for (int i = 0; i < static_cast<int>(length_m); ++i)
            line.curvature_per_m.push_back(curvature);
    line.position_m.resize(line.curvature_per_m.size());
    line.tangent.resize(line.curvature_per_m.size());
    line.length_m = static_cast<double>(line.curvature_per_m.size());
    line.step_m = 1.0;
    return line;
}

void expect_without_holes(const std::vector<Segment>& segments, double length_m) {
    double at = 0.0;
    for (const Segment& s : segments) {
        EXPECT_DOUBLE_EQ(s.start_m, at);
        EXPECT_GT(s.end_m, s.start_m);
        at = s.end_m;
    }
    EXPECT_DOUBLE_EQ(at, length_m);
}

} // namespace

TEST(Segments, StadiumHasTwoCorners) {
    const double half = 50.0 * test::pi;
    const auto line = line_with_curvature({{250, 0}, {half, 0.02}, {500, 0}, {half, 0.02}, {250, 0}});
    const auto segments = find_segments(line);
    ASSERT_EQ(segments.size(), 5U);
    expect_without_holes(segments, line.length_m);
    EXPECT_EQ(segments[0].name, "Start straight");
    EXPECT_EQ(segments[1].name, "Corner 1");
    EXPECT_EQ(segments[2].name, "1 to 2");
    EXPECT_EQ(segments[4].name, "Run home");
    EXPECT_NEAR(segments[1].turned_rad, test::pi, 0.05);
    EXPECT_NEAR(*segments[1].radius_m, 50.0, 0.1);
}

TEST(Segments, JoinsWhatIsOneCornerToTheDriver) {
    // Two left turns 30 m apart; a kink of 1,500 m radius; an S without a straight between.
    const auto line = line_with_curvature({{300, 0},
                                           {40, 0.01},
                                           {30, 0},
                                           {40, 0.01},
                                           {300, 0},
                                           {80, 1.0 / 1500.0},
                                           {300, 0},
                                           {50, 0.02},
                                           {10, 0},
                                           {50, -0.02},
                                           {300, 0}});
    const auto segments = find_segments(line);
    expect_without_holes(segments, line.length_m);
    std::vector<Segment> corners;
    for (const Segment& s : segments)
        if (s.kind == SegmentKind::corner) corners.push_back(s);
    ASSERT_EQ(corners.size(), 3U);
    EXPECT_NEAR(corners[0].turned_rad, 0.8, 0.03);
    EXPECT_DOUBLE_EQ(corners[1].end_m, corners[2].start_m);
    EXPECT_NEAR(corners[1].end_m, 1145.0, 2.5); // the middle of the ten metres between them
    EXPECT_GT(corners[1].turned_rad, 0.0);
    EXPECT_LT(corners[2].turned_rad, 0.0);
}

TEST(Segments, ALineWithoutCornersIsOneStraight) {
    const auto segments = find_segments(line_with_curvature({{500, 0.0}}));
    ASSERT_EQ(segments.size(), 1U);
    EXPECT_EQ(segments[0].kind, SegmentKind::straight);
}

TEST(Segments, ARecordIsMovedByTheCornersThatTheCurvatureShows) {
    const auto line = line_with_curvature({{200, 0}, {100, 0.015}, {400, 0}, {100, 0.015}, {300, 0}});
    // Measured on a line that is 40 m longer, all of it in the first corner.
    std::vector<Segment> recorded;
    const auto add = [&](const char* name, SegmentKind kind, double start, double end) {
        Segment s;
        s.name = name;
        s.kind = kind;
        s.start_m = start;
        s.end_m = end;
        recorded.push_back(s);
    };
    add("Out", SegmentKind::straight, 0, 200);
    add("First", SegmentKind::corner, 200, 340);
    add("Mid", SegmentKind::straight, 340, 740);
    add("Second", SegmentKind::corner, 740, 840);
    add("Home", SegmentKind::straight, 840, 1140);
    const auto segments = recorded_segments(line, recorded, 1140.0);
    expect_without_holes(segments, line.length_m);
    ASSERT_EQ(segments.size(), 5U);
    EXPECT_EQ(segments[3].name, "Second");
    EXPECT_NEAR(segments[3].start_m, 700.0, 5.0);
    EXPECT_NEAR(segments[3].end_m, 800.0, 5.0);
    EXPECT_NEAR(*segments[3].radius_m, 1.0 / 0.015, 0.5);
}
