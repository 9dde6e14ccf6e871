// SPDX-License-Identifier: GPL-3.0-or-later
// A lap over distance against drives with formulas: a circle at constant speed, driven on and beside the line.
#include "core/lap/trace_lap.h"
#include "core/track/build_line.h"
#include "support/shapes.h"

#include <cmath>
#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::lap;

namespace {

constexpr double radius_m = 100.0;
constexpr double speed_mps = 25.0;

track::ReferenceLine circle_line() {
    return track::line_through(test::ellipse_points(radius_m, radius_m, 1200), 1.0);
}

std::optional<LapTrace> lap_beside(double offset_m, double rate_hz) {
    // To the left of a counter-clockwise line is the inside.
    const double driven_radius = radius_m - offset_m;
    const double lap_s = 2.0 * test::pi * driven_radius / speed_mps;
    const auto path = test::circle_drive(driven_radius, speed_mps, rate_hz, lap_s + 2.0, -speed_mps / driven_radius);
    return trace_lap(path, 1.0, 1.0 + lap_s, circle_line(), 1.0);
}

} // namespace

TEST(LapTrace, TimeIsLinearOnACircleAtConstantSpeed) {
    const auto trace = lap_beside(0.0, 10.0);
    ASSERT_TRUE(trace);
    for (std::size_t i = 0; i < trace->size(); ++i) {
        EXPECT_NEAR(trace->time_s[i], trace->distance_m[i] / speed_mps, 2e-4);
        EXPECT_NEAR(trace->speed_mps[i], speed_mps, 1e-5);
        EXPECT_NEAR(trace->lateral_mps2[i], speed_mps * speed_mps / radius_m, 1e-3);
        EXPECT_NEAR(trace->offset_m[i], 0.0, 1e-3);
    }
    EXPECT_DOUBLE_EQ(trace->distance_m.front(), 0.0);
    EXPECT_NEAR(trace->driven_length_m, 2.0 * test::pi * radius_m, 1e-3);
}

// The driven length differs from the line's by 2πn; distance on the line does not.
TEST(LapTrace, AnOffsetChangesTheDrivenLengthAndNotTheDistance) {
    const auto trace = lap_beside(2.0, 10.0);
    ASSERT_TRUE(trace);
    EXPECT_NEAR(trace->distance_m.back(), 2.0 * test::pi * radius_m, 0.01);
    EXPECT_NEAR(trace->driven_length_m, 2.0 * test::pi * (radius_m - 2.0), 1e-3);
    for (const double n : trace->offset_m)
        EXPECT_NEAR(n, 2.0, 2e-3);
    for (std::size_t i = 1; i < trace->size(); ++i)
        EXPECT_GT(trace->time_s[i], trace->time_s[i - 1]);
}

TEST(LapTrace, ADriveThatLeavesTheLineHasNone) {
    const auto elsewhere = test::circle_drive(250.0, speed_mps, 10.0, 100.0);
    EXPECT_FALSE(trace_lap(elsewhere, 1.0, 60.0, circle_line(), 1.0));
    EXPECT_FALSE(trace_lap(elsewhere, 5.0, 5.0, circle_line(), 1.0));
}

TEST(LapTrace, AStandstillAndAStepBackDoNotBreakTheOrder) {
    // Half a lap, three seconds standing with half a metre of wandering, the other half.
    auto path = test::circle_drive(radius_m, speed_mps, 10.0, 2.0 * test::pi * radius_m / speed_mps + 2.0, -0.25);
    std::vector<double> time = *path.time_s;
    const std::size_t stop = time.size() / 2;
    const motion::Vec2 here = path.position_m[stop];
    for (std::size_t i = stop; i < time.size(); ++i)
        time[i] += 3.1;
    std::vector<double> still;
    for (int i = 1; i <= 30; ++i)
        still.push_back(time[stop] - 3.1 + 0.1 * i);
    time.insert(time.begin() + static_cast<long>(stop) + 1, still.begin(), still.end());
    time[stop] -= 3.1;
    for (int i = 0; i < 30; ++i) {
        const auto at = static_cast<long>(stop) + 1;
        path.position_m.insert(path.position_m.begin() + at, {here.east + 0.3 * std::sin(i), here.north});
        path.velocity_mps.insert(path.velocity_mps.begin() + at, {0.0, 0.0});
        path.acceleration_mps2.insert(path.acceleration_mps2.begin() + at, {0.0, 0.0});
    }
    path.time_s = std::make_shared<const std::vector<double>>(time);
    const double end_s = 1.0 + 2.0 * test::pi * radius_m / speed_mps + 3.1;
    const auto trace = trace_lap(path, 1.0, end_s, circle_line(), 1.0);
    ASSERT_TRUE(trace);
    for (std::size_t i = 1; i < trace->size(); ++i)
        EXPECT_GT(trace->time_s[i], trace->time_s[i - 1]);
    EXPECT_NEAR(trace->lap_time_s(), end_s - 1.0, 1e-9);
}

TEST(LapChannels, AreLinearButGearsStepAndHolesStayHoles) {
    const auto trace = lap_beside(0.0, 10.0);
    ASSERT_TRUE(trace);
    recording::Recording recording;
    const auto stamps = std::make_shared<const std::vector<double>>(
        std::vector<double>{0.0, 1.0, 2.0, 3.0, 4.0, 24.0, 25.0, 26.0, 27.0});
    recording::Channel throttle;
    throttle.meaning = recording::Meaning::throttle;
    throttle.time_s = stamps;
    throttle.values = {0, 1, 0, 1, 0, 1, 1, 1, 1};
    recording::Channel gear = throttle;
    gear.meaning = recording::Meaning::gear;
    gear.values = {2, 2, 3, 3, 4, 4, 4, 4, 4};
    recording.channels = {throttle, gear};
    const LapTrace with = with_channels(*trace, 1.0, recording);
    const auto* t = with.find(recording::Meaning::throttle);
    const auto* g = with.find(recording::Meaning::gear);
    ASSERT_TRUE(t && g);
    const std::size_t half = with.index_before(12.5) + 1; // 0.5 s into the lap: 1.5 s of the recording
    EXPECT_NEAR(t->values[half], 0.5, 0.03);
    EXPECT_DOUBLE_EQ(g->values[half], 2.0);
    EXPECT_TRUE(std::isnan(t->values[with.index_before(10.0 * speed_mps)])) << "nothing was measured from 4 s to 24 s";
}
