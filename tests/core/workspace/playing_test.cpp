// SPDX-License-Identifier: GPL-3.0-or-later
// Two cars on one line, one always 10 % faster.
#include "core/workspace/playing.h"

#include <gtest/gtest.h>

using namespace lapwright;
using workspace::Side;

namespace {

analysis::Side driven(double start_s, double speed_mps) {
    analysis::Side side;
    side.lap.start_s = start_s;
    for (int i = 0; i <= 100; ++i) {
        side.trace.best.distance_m.push_back(10.0 * i);
        side.trace.best.time_s.push_back(10.0 * i / speed_mps);
        side.trace.best.speed_mps.push_back(speed_mps);
    }
    return side;
}

analysis::Pairing pairing() {
    analysis::Pairing both;
    both.a = driven(100.0, 44.0);
    both.b = driven(300.0, 40.0);
    return both;
}

TEST(Playing, SamePlace) {
    const auto moment = workspace::at_place(pairing(), 440.0);
    EXPECT_DOUBLE_EQ(moment.time_a_s, 110.0);
    EXPECT_DOUBLE_EQ(moment.time_b_s, 311.0);
    for (const Side side : {Side::a, Side::b}) {
        const auto again = workspace::at_time_of(pairing(), side, side == Side::a ? moment.time_a_s : moment.time_b_s);
        EXPECT_NEAR(again.place_m, 440.0, 1e-9);
        EXPECT_NEAR(again.time_a_s, 110.0, 1e-9);
        EXPECT_NEAR(again.time_b_s, 311.0, 1e-9);
    }
    EXPECT_DOUBLE_EQ(workspace::stretch_of_b(pairing(), 440.0), 1.1);
}

TEST(Playing, SameClock) {
    const auto moment = workspace::on_one_clock(pairing(), 220.0, 110.0);
    EXPECT_DOUBLE_EQ(moment.place_m, 440.0);
    EXPECT_DOUBLE_EQ(moment.time_b_s, 305.5 + 5.0); // 5 s behind its own passing of 220 m
}

TEST(Playing, StaysWithinTheLap) {
    EXPECT_DOUBLE_EQ(workspace::at_time_of(pairing(), Side::a, 5.0).place_m, 0.0);
    EXPECT_DOUBLE_EQ(workspace::at_time_of(pairing(), Side::a, 500.0).place_m, 1000.0);
    EXPECT_NEAR(workspace::at_time_of(pairing(), Side::a, 500.0).time_a_s, 100.0 + 1000.0 / 44.0, 1e-9);
}

} // namespace
