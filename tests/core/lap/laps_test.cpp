// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/find_laps.h"
#include "support/shapes.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::lap;
using testing::HasSubstr;

namespace {

constexpr double circle_radius_m = 150.0;
constexpr double circle_speed_mps = 30.0;
const double circle_lap_s = 2.0 * test::pi * circle_radius_m / circle_speed_mps;
const track::Gate gate{{circle_radius_m, 0.0}, test::pi / 2.0, 20.0};

// Starts and ends at walking pace: a pit lane at both ends.
motion::MotionEstimate session(double laps) {
    motion::MotionEstimate motion;
    motion.best = test::circle_drive(circle_radius_m, circle_speed_mps, 10.0, laps * circle_lap_s, -2.0);
    for (const std::size_t i : {std::size_t{0}, motion.best.size() - 1})
        motion.best.velocity_mps[i] = {0.5, 0.5};
    return motion;
}

// Lap of length 1000 m in which section `slow` (of 24) takes so much longer.
LapTrace trace_of(double lap_time_s, std::size_t slow = 99, double lost_s = 0.0) {
    LapTrace trace;
    for (int i = 0; i <= 240; ++i) {
        const double part = i / 240.0;
        const double begin = static_cast<double>(slow) / 24.0;
        const double share = std::clamp((part - begin) * 24.0, 0.0, 1.0);
        trace.distance_m.push_back(1000.0 * part);
        trace.time_s.push_back(lap_time_s * part + (slow < 24 ? lost_s * share : 0.0));
    }
    trace.driven_length_m = 1000.0;
    return trace;
}

std::vector<Lap> flying(const std::vector<LapTrace>& traces) {
    std::vector<Lap> laps;
    for (const LapTrace& trace : traces) {
        Lap lap;
        lap.number = static_cast<int>(laps.size()) + 1;
        lap.kind = LapKind::flying;
        lap.end_s = trace.size() ? trace.lap_time_s() : 60.0;
        laps.push_back(lap);
    }
    return laps;
}

} // namespace

TEST(FindLaps, OutFlyingAndIn) {
    const auto laps = find_laps(session(3.9), gate, {});
    ASSERT_EQ(laps.size(), 5U);
    EXPECT_EQ(laps[0].kind, LapKind::out);
    EXPECT_EQ(laps[0].number, 0);
    for (std::size_t i = 1; i < 4; ++i) {
        EXPECT_EQ(laps[i].kind, LapKind::flying);
        EXPECT_EQ(laps[i].number, static_cast<int>(i));
        EXPECT_NEAR(laps[i].time_s(), circle_lap_s, 1e-4);
        EXPECT_FALSE(laps[i].time_sd_s) << "without an ensemble there is no uncertainty to tell";
    }
    EXPECT_EQ(laps[4].kind, LapKind::in);
}

TEST(FindLaps, ARecordingThatStartsAtSpeedHasNoOutLap) {
    auto motion = session(2.9);
    motion.best = test::circle_drive(circle_radius_m, circle_speed_mps, 10.0, 2.9 * circle_lap_s, -2.0);
    const auto laps = find_laps(motion, gate, {});
    EXPECT_EQ(laps.front().kind, LapKind::incomplete);
    EXPECT_EQ(laps.back().kind, LapKind::incomplete);
}

TEST(FindLaps, AHoleMakesALapIncomplete) {
    auto motion = session(3.9);
    motion.bridges.push_back({circle_lap_s, circle_lap_s + 4.0});
    recording::Recording recording;
    recording.splits_s.push_back(2.0 * circle_lap_s);
    const auto laps = find_laps(motion, gate, recording);
    EXPECT_EQ(laps[1].kind, LapKind::incomplete);
    EXPECT_EQ(laps[2].kind, LapKind::incomplete);
    EXPECT_EQ(laps[3].kind, LapKind::flying);
    EXPECT_THAT(laps[1].why_not_clean, HasSubstr("hole"));
}

// Draws that agree on the way through a hole, as accelerometers let them, make it none; a very long one stays one.
TEST(FindLaps, AHoleThroughWhichTheCarIsKnownIsNone) {
    const auto with_hole = [](double length_s, double sd_m) {
        auto motion = session(3.9);
        const double from_s = circle_lap_s + 2.0;
        motion.bridges.push_back({from_s, from_s + length_s});
        for (const double side : {-1.0, 1.0}) {
            motion::Path draw = motion.best;
            for (std::size_t i = 0; i < draw.size(); ++i)
                if ((*draw.time_s)[i] > from_s && (*draw.time_s)[i] < from_s + length_s)
                    draw.position_m[i].east += side * sd_m;
            motion.draws.push_back(motion::departures(draw, motion.best));
        }
        return find_laps(motion, gate, {})[1].kind;
    };
    EXPECT_EQ(with_hole(4.0, 0.5), LapKind::flying);
    EXPECT_EQ(with_hole(4.0, 6.0), LapKind::incomplete);
    EXPECT_EQ(with_hole(14.0, 0.5), LapKind::incomplete);
    EXPECT_EQ(with_hole(1.5, 6.0), LapKind::flying);
}

// A receiver that stands and wanders by metres passes any line now and then, and in time comes a long way.
TEST(FindLaps, AReceiverThatHardlyMovesHasNoFlyingLaps) {
    for (const double reach_m : {3.0, 12.0}) {
        motion::MotionEstimate motion;
        motion.best = test::circle_drive(reach_m, 2.0 * test::pi * reach_m / 15.0, 5.0, 400.0, -2.0);
        const auto laps = find_laps(motion, {{reach_m, 0.0}, test::pi / 2.0, 20.0}, {});
        EXPECT_GT(laps.size(), 10U);
        for (const Lap& lap : laps) {
            EXPECT_NE(lap.kind, LapKind::flying);
        }
        EXPECT_THAT(laps[2].why_not_clean, HasSubstr("too short"));
    }
}

TEST(FindLaps, AWalkIsNoLap) {
    motion::MotionEstimate motion;
    motion.best = test::circle_drive(40.0, 1.5, 5.0, 700.0, -1.0);
    for (const Lap& lap : find_laps(motion, {{40.0, 0.0}, test::pi / 2.0, 20.0}, {})) {
        EXPECT_NE(lap.kind, LapKind::flying);
    }
}

TEST(FindLaps, NumbersFollowTheFile) {
    const auto motion = session(3.9);
    recording::Recording recording;
    recording::Channel channel;
    channel.meaning = recording::Meaning::lap_number;
    channel.time_s = motion.best.time_s;
    const double first = find_laps(motion, gate, {})[1].start_s;
    for (const double t : *motion.best.time_s)
        channel.values.push_back(12.0 + std::floor((t - first) / circle_lap_s));
    recording.channels.push_back(channel);
    const auto laps = find_laps(motion, gate, recording);
    EXPECT_EQ(laps[0].number, 11);
    EXPECT_EQ(laps[3].number, 14);
}

TEST(FindLaps, TheEnsembleGivesTheLapTimesSpread) {
    auto motion = session(2.9);
    for (int k = 0; k < 20; ++k) {
        motion::Path draw = motion.best;
        // Shifted along the track by up to a metre at the second passing only.
        for (std::size_t i = 0; i < draw.size(); ++i) {
            const double phase = (*draw.time_s)[i] / circle_lap_s;
            draw.position_m[i].north += (k - 9.5) * 0.1 * phase;
        }
        motion.draws.push_back(motion::departures(draw, motion.best));
    }
    const auto laps = find_laps(motion, gate, {});
    ASSERT_TRUE(laps[1].time_sd_s);
    // sd of k·0.1 m over one lap, over the speed; twenty draws tell it so well (JCGM 101:2008, 6.4.9.4).
    EXPECT_NEAR(*laps[1].time_sd_s, 0.1 * std::sqrt(35.0 * 19.0 / 17.0) / circle_speed_mps, 0.0003);
}

TEST(JudgeClean, TrafficAndSlowLapsAreSetAside) {
    const std::vector<LapTrace> traces{trace_of(60.0), trace_of(60.1), trace_of(60.05, 7, 0.8),
                                       trace_of(59.9), trace_of(63.0), trace_of(60.02)};
    const auto laps = judged(flying(traces), traces);
    EXPECT_TRUE(laps[0].clean && laps[1].clean && laps[3].clean && laps[5].clean);
    EXPECT_FALSE(laps[2].clean);
    EXPECT_THAT(laps[2].why_not_clean, HasSubstr("0.8 s lost near 292 m"));
    EXPECT_FALSE(laps[4].clean);
    EXPECT_THAT(laps[4].why_not_clean, HasSubstr("slower than the usual lap"));
}

// A lap that was slow all round lost little in its worst place.
TEST(JudgeClean, ALapSlowAllRoundIsSaidToBe) {
    const std::vector<LapTrace> traces{trace_of(60.0), trace_of(60.1), trace_of(60.05), trace_of(120.0)};
    const auto laps = judged(flying(traces), traces);
    EXPECT_THAT(laps[3].why_not_clean, HasSubstr("s slower than the usual lap"));
}

TEST(JudgeClean, TwoLapsAreComparedWithEachOther) {
    const std::vector<LapTrace> traces{trace_of(60.0), trace_of(75.0)};
    const auto laps = judged(flying(traces), traces);
    EXPECT_TRUE(laps[0].clean);
    EXPECT_FALSE(laps[1].clean);
}

TEST(JudgeClean, ALapWithoutATraceIsNotClean) {
    const std::vector<LapTrace> traces{trace_of(60.0), LapTrace{}, trace_of(60.1)};
    const auto laps = judged(flying(traces), traces);
    EXPECT_FALSE(laps[1].clean);
    EXPECT_THAT(laps[1].why_not_clean, HasSubstr("does not follow the track"));
}
