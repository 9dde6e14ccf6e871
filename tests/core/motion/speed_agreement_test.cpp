// SPDX-License-Identifier: GPL-3.0-or-later
// A recorded speed that fits its positions is used, whatever its latency and noise; one that does not is not, in words.
#include "core/motion/estimate_motion.h"
#include "core/motion/recorded_drive.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lapwright::motion {
namespace {

using recording::Meaning;
using recording::Recording;
using test::channel;
using test::Drive;

constexpr double length_s = 150.0;

Recording recorded(const std::function<double(double)>& speed, unsigned seed) {
    const Drive drive;
    std::mt19937_64 engine(seed);
    std::normal_distribution<double> normal;
    const recording::Stamps time = test::stamps(0.0, length_s, 10.0);
    Recording recording;
    recording.channels.push_back(
        channel(Meaning::east, time, [&](double t) { return drive.east(t) + 0.03 * normal(engine); }));
    recording.channels.push_back(
        channel(Meaning::north, time, [&](double t) { return drive.north(t) + 0.03 * normal(engine); }));
    recording.channels.push_back(
        channel(Meaning::speed, time, [&](double t) { return speed(t) + 0.04 * normal(engine); }));
    return recording;
}

double worst_position_error_m(const MotionEstimate& motion) {
    const Drive drive;
    double worst = 0.0;
    for (double t = 2.0; t < length_s - 2.0; t += 0.37) {
        const Vec2 p = motion.best.at(t).position_m;
        worst = std::max(worst, std::hypot(p.east - drive.east(t), p.north - drive.north(t)));
    }
    return worst;
}

const SensorReport* report(const MotionEstimate& motion, const std::string& name) {
    const auto found = std::ranges::find(motion.sensors, name, &SensorReport::name);
    return found == motion.sensors.end() ? nullptr : &*found;
}

TEST(SpeedAgreement, AReceiversSpeedIsUsedAtAnyLatency) {
    const Drive drive;
    for (const double late_s : {-0.05, 0.0, 0.3}) {
        const auto motion = estimate_motion(recorded([&](double t) { return drive.speed(t - late_s); }, 1));
        ASSERT_TRUE(motion);
        EXPECT_TRUE(motion->warnings.empty());
        EXPECT_NE(report(*motion, "speed"), nullptr);
        EXPECT_LT(worst_position_error_m(*motion), 0.15);
    }
}

TEST(SpeedAgreement, ASpeedThatReadsHighIsAWheels) {
    const Drive drive;
    const auto motion = estimate_motion(recorded([&](double t) { return 1.07 * drive.speed(t); }, 2));
    ASSERT_TRUE(motion);
    ASSERT_EQ(motion->warnings.size(), 1U);
    EXPECT_EQ(motion->warnings.front().kind, recording::WarningKind::speed_scale_off);
    EXPECT_NEAR(motion->warnings.front().figures.at(0), 1.07, 0.005);
    EXPECT_EQ(report(*motion, "speed"), nullptr);
    ASSERT_NE(report(*motion, "wheel speed"), nullptr);
    EXPECT_NEAR(*report(*motion, "wheel speed")->scale, 1.07, 0.01);
    EXPECT_LT(worst_position_error_m(*motion), 0.15);
}

// Another unit, another drive, noise, a constant, nothing.
TEST(SpeedAgreement, ASpeedThatContradictsThePositionsDoesNotWin) {
    const Drive drive;
    std::mt19937_64 engine(5);
    std::uniform_real_distribution<double> even(0.0, 80.0);
    const std::vector<std::function<double(double)>> wrong{
        [&](double t) { return 3.6 * drive.speed(t); }, [&](double t) { return 0.62 * drive.speed(t); },
        [&](double t) { return 40.0 + 35.0 * std::sin(0.7 * t); }, [&](double) { return even(engine); },
        [](double) { return 3.0; }};
    unsigned seed = 10;
    for (const auto& speed : wrong) {
        const auto motion = estimate_motion(recorded(speed, seed++));
        ASSERT_TRUE(motion);
        EXPECT_LT(worst_position_error_m(*motion), 0.15) << seed;
        ASSERT_FALSE(motion->warnings.empty()) << seed;
        EXPECT_EQ(motion->warnings.front().kind, recording::WarningKind::speed_contradicts_positions) << seed;
        EXPECT_EQ(report(*motion, "speed"), nullptr) << seed;
    }
}

} // namespace
} // namespace lapwright::motion
