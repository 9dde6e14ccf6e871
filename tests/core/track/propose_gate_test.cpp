// SPDX-License-Identifier: GPL-3.0-or-later
// Where the program puts a timing line that nobody told it, on drives round invented tracks of straights and bends.
#include "core/track/gate.h"
#include "support/shapes.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <functional>

using namespace lapwright;
using namespace lapwright::track;

namespace {

constexpr double straight_m = 600.0;
constexpr double bend_m = 100.0; // radius
const double stadium_m = 2.0 * straight_m + 2.0 * test::pi * bend_m;

struct Pose {
    motion::Vec2 position_m;
    double heading_rad;
};

// A stadium, counter-clockwise from the west end of its southern straight.
Pose on_stadium(double station_m) {
    const double s = station_m - stadium_m * std::floor(station_m / stadium_m);
    const double bend = test::pi * bend_m;
    if (s < straight_m) return {{s, 0.0}, 0.0};
    if (s < straight_m + bend) {
        const double phi = (s - straight_m) / bend_m;
        return {{straight_m + bend_m * std::sin(phi), bend_m - bend_m * std::cos(phi)}, phi};
    }
    if (s < 2.0 * straight_m + bend) return {{2.0 * straight_m + bend - s, 2.0 * bend_m}, test::pi};
    const double phi = (s - 2.0 * straight_m - bend) / bend_m;
    return {{-bend_m * std::sin(phi), bend_m + bend_m * std::cos(phi)}, test::pi + phi};
}

// Drives from station 0 on with a speed that depends on the place.
motion::Path drive(const std::function<double(double)>& speed_mps, double seconds) {
    motion::Path path;
    std::vector<double> time_s;
    constexpr double step_s = 0.05;
    double station = 0.0;
    for (double t = 0.0; t < seconds; t += step_s) {
        const Pose pose = on_stadium(station);
        const double v = speed_mps(station - stadium_m * std::floor(station / stadium_m));
        time_s.push_back(t);
        path.position_m.push_back(pose.position_m);
        path.velocity_mps.push_back({v * std::cos(pose.heading_rad), v * std::sin(pose.heading_rad)});
        path.acceleration_mps2.push_back({});
        station += v * step_s;
    }
    path.time_s = std::make_shared<const std::vector<double>>(std::move(time_s));
    return path;
}

// 25 m/s in the bends; on the southern straight up to 50 m/s and hard on the brakes at its end, on the northern one a
// limit of 45 m/s from its middle to 50 m before its end.
double speed_at(double s) {
    const double bend = test::pi * bend_m;
    if (s < straight_m) {
        const double gained = std::sqrt(25.0 * 25.0 + 2.0 * 2.0 * s);
        const double braked = std::sqrt(25.0 * 25.0 + 2.0 * 9.0 * (straight_m - s));
        return std::min({gained, braked, 60.0});
    }
    const double north = s - straight_m - bend;
    if (north < 0.0 || north > straight_m) return 25.0;
    return std::min(
        {std::sqrt(25.0 * 25.0 + 2.0 * 4.0 * north), 45.0, std::sqrt(25.0 * 25.0 + 2.0 * 9.0 * (straight_m - north))});
}

} // namespace

TEST(ProposeGate, TakesSteadySpeedRatherThanThePeakBeforeBraking) {
    const auto proposed = propose_gate(drive(speed_at, 400.0));
    ASSERT_TRUE(proposed);
    EXPECT_TRUE(proposed->origin.starts_with("proposed")); // what analysis looks for
    EXPECT_NEAR(proposed->gate.centre_m.north, 2.0 * bend_m, 1.0) << "the northern straight";
    EXPECT_GT(proposed->gate.centre_m.east, 100.0) << "well before its braking zone";
    EXPECT_NEAR(std::abs(std::remainder(proposed->gate.heading_rad, 2.0 * test::pi)), test::pi, 1e-6);
}

// Ten small rounds in a paddock before three laps: more passings, less of the drive.
TEST(ProposeGate, TakesTheLapsAndNotTheRoundsOfThePaddock) {
    motion::Path path = test::circle_drive(25.0, 12.0, 20.0, 140.0);
    for (auto& p : path.position_m)
        p = {p.east - 400.0, p.north - 300.0};
    const motion::Path laps = drive(speed_at, 200.0);
    std::vector<double> time_s = *path.time_s;
    const double begin = time_s.back() + 30.0;
    for (std::size_t i = 0; i < laps.size(); ++i) {
        time_s.push_back(begin + (*laps.time_s)[i]);
        path.position_m.push_back(laps.position_m[i]);
        path.velocity_mps.push_back(laps.velocity_mps[i]);
        path.acceleration_mps2.push_back({});
    }
    path.time_s = std::make_shared<const std::vector<double>>(std::move(time_s));
    const auto proposed = propose_gate(path);
    ASSERT_TRUE(proposed);
    EXPECT_GT(proposed->gate.centre_m.north, -150.0) << "not in the paddock";
}

TEST(ProposeGate, FindsNoneWhereAReceiverWandersAtRest) {
    motion::Path path;
    std::vector<double> time_s;
    for (int i = 0; i < 20000; ++i) {
        time_s.push_back(0.1 * i);
        path.position_m.push_back({4.0 * std::sin(0.3 * i), 4.0 * std::cos(0.17 * i)});
        path.velocity_mps.push_back({1.0, 0.5});
        path.acceleration_mps2.push_back({});
    }
    path.time_s = std::make_shared<const std::vector<double>>(std::move(time_s));
    EXPECT_FALSE(propose_gate(path));
}

TEST(RecordedPassings, ComeNotFromAColumnThatChangesEveryRow) {
    const auto path = test::circle_drive(150.0, 30.0, 10.0, 130.0, -1.0);
    recording::Recording recording;
    recording.channels.push_back({});
    recording::Channel& channel = recording.channels.back();
    channel.meaning = recording::Meaning::lap_number;
    channel.time_s = path.time_s;
    for (std::size_t i = 0; i < path.size(); ++i)
        channel.values.push_back(static_cast<double>(i));
    EXPECT_FALSE(recorded_passings(recording));
    for (std::size_t i = 0; i < path.size(); ++i)
        channel.values[i] = 9.0 - std::floor((*path.time_s)[i] / 31.0); // laps to go
    const auto counted_down = recorded_passings(recording);
    ASSERT_TRUE(counted_down);
    EXPECT_EQ(counted_down->time_s.size(), 4U);
}
