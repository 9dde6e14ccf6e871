// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/summed_segments.h"

#include <gtest/gtest.h>

using namespace lapwright;
using track::Segment;
using track::SegmentKind;

TEST(SummedSegments, ACornerTakesTheStraightBehindIt) {
    const std::vector<Segment> segments{
        {"Start", SegmentKind::straight, 0, 100, 0, {}},     {"One", SegmentKind::corner, 100, 160, 1.2, 40.0},
        {"Two", SegmentKind::corner, 160, 220, -0.8, 55.0},  {"Back", SegmentKind::straight, 220, 500, 0, {}},
        {"Three", SegmentKind::corner, 500, 580, 2.0, 20.0},
    };
    const auto summed = comparison::corners_with_their_straights(segments);
    ASSERT_EQ(summed.size(), 4U);
    EXPECT_EQ(summed[0].name, "Start");
    EXPECT_EQ(summed[1].name, "One");
    EXPECT_EQ(summed[1].end_m, 160);
    EXPECT_EQ(summed[2].name, "Two + Back");
    EXPECT_EQ(summed[2].kind, SegmentKind::corner);
    EXPECT_EQ(summed[2].radius_m, 55.0);
    EXPECT_EQ(summed[3].start_m, 500);
    for (std::size_t i = 1; i < summed.size(); ++i)
        EXPECT_EQ(summed[i].start_m, summed[i - 1].end_m);
    EXPECT_EQ(summed.back().end_m, segments.back().end_m);
}

TEST(SummedSegments, NothingStaysNothing) {
    EXPECT_TRUE(comparison::corners_with_their_straights({}).empty());
}
