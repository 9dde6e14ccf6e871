// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/gate.h"
#include "support/shapes.h"

#include <gtest/gtest.h>

using namespace lapwright;
using namespace lapwright::track;

namespace {

constexpr double radius_m = 150.0;
constexpr double speed_mps = 30.0;
const double lap_s = 2.0 * test::pi * radius_m / speed_mps;

recording::Recording with_channel(recording::Meaning meaning, const motion::Path& path,
                                  const std::vector<double>& values) {
    recording::Recording recording;
    recording::Channel channel;
    channel.meaning = meaning;
    channel.time_s = path.time_s;
    channel.values = values;
    recording.channels.push_back(channel);
    return recording;
}

} // namespace

TEST(Gate, IsPassedOnceALapAtTheExactTime) {
    const auto path = test::circle_drive(radius_m, speed_mps, 10.0, 4.2 * lap_s, -1.0);
    const auto times = crossings(path, {{radius_m, 0.0}, test::pi / 2.0, 20.0});
    ASSERT_EQ(times.size(), 5U);
    for (std::size_t i = 0; i < times.size(); ++i)
        EXPECT_NEAR(times[i], radius_m / speed_mps + static_cast<double>(i) * lap_s, 1e-6);
}

TEST(Gate, IsNotPassedAgainstItsDirectionOrBesideIt) {
    const auto path = test::circle_drive(radius_m, speed_mps, 10.0, 2.2 * lap_s, -1.0);
    EXPECT_TRUE(crossings(path, {{radius_m, 0.0}, -test::pi / 2.0, 20.0}).empty());
    EXPECT_TRUE(crossings(path, {{radius_m + 30.0, 0.0}, test::pi / 2.0, 20.0}).empty());
    EXPECT_FALSE(crossing_near(path, {{radius_m, 0.0}, test::pi / 2.0, 20.0}, 12.0));
    EXPECT_TRUE(crossing_near(path, {{radius_m, 0.0}, test::pi / 2.0, 20.0}, radius_m / speed_mps + 0.7));
}

TEST(Gate, IsFoundFromALapColumn) {
    const auto path = test::circle_drive(radius_m, speed_mps, 20.0, 4.2 * lap_s, -1.0);
    std::vector<double> lap;
    for (const double t : *path.time_s)
        lap.push_back(std::floor((t - radius_m / speed_mps) / lap_s + 1.0));
    const auto gate = gate_from_channels(path, with_channel(recording::Meaning::lap_number, path, lap));
    ASSERT_TRUE(gate);
    EXPECT_EQ(gate->origin, "lap column of the file");
    EXPECT_NEAR(gate->gate.centre_m.east, radius_m, 0.5);
    EXPECT_NEAR(gate->gate.centre_m.north, 0.0, 1.0);
    EXPECT_NEAR(gate->gate.heading_rad, test::pi / 2.0, 0.01);
}

TEST(Gate, IsFoundFromABeaconPulse) {
    const auto path = test::circle_drive(radius_m, speed_mps, 20.0, 4.2 * lap_s, -1.0);
    std::vector<double> pulse;
    for (const double t : *path.time_s) {
        const double since = std::fmod(t - radius_m / speed_mps + lap_s, lap_s);
        pulse.push_back(since < 0.3 ? 1.0 : 0.0);
    }
    const auto gate = gate_from_channels(path, with_channel(recording::Meaning::beacon, path, pulse));
    ASSERT_TRUE(gate);
    EXPECT_NEAR(gate->gate.centre_m.north, 0.0, 1.6);
}

TEST(Gate, IsProposedWhereThePathComesBack) {
    const auto path = test::circle_drive(radius_m, speed_mps, 10.0, 3.5 * lap_s, 0.0);
    const auto gate = propose_gate(path);
    ASSERT_TRUE(gate);
    EXPECT_GE(crossings(path, gate->gate).size(), 3U);
    EXPECT_FALSE(propose_gate(test::circle_drive(radius_m, speed_mps, 10.0, 0.8 * lap_s)));
}
