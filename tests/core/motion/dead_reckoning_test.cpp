// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/dead_reckoning.h"

#include "core/motion/estimate_motion.h"
#include "core/motion/recorded_drive.h"
#include "core/motion/smooth_motion.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lapwright::motion {
namespace {

using recording::Meaning;
using recording::Recording;
using test::channel;
using test::Drive;

Recording recorded(Meaning speed, std::optional<Meaning> turning, double scale = 1.0) {
    const Drive drive;
    std::mt19937_64 engine(4);
    std::normal_distribution<double> normal;
    const recording::Stamps time = test::stamps(0.0, 120.0, 50.0);
    Recording recording;
    recording.channels.push_back(
        channel(speed, time, [&](double t) { return scale * drive.speed(t) + 0.05 * normal(engine); }));
    if (turning == Meaning::yaw_rate)
        recording.channels.push_back(
            channel(Meaning::yaw_rate, time, [&](double t) { return drive.yaw_rate(t) + 0.006 * normal(engine); }));
    if (turning == Meaning::lateral_acceleration)
        recording.channels.push_back(channel(Meaning::lateral_acceleration, time,
                                             [&](double t) { return drive.lateral(t) + 0.2 * normal(engine); }));
    return recording;
}

double driven_m(const Path& path, double from_s, double to_s) {
    double length = 0.0;
    constexpr double step = 0.01;
    for (double t = from_s; t < to_s - 0.5 * step; t += step)
        length += step * path.at(t + 0.5 * step).speed_mps();
    return length;
}

double truly_driven_m(double from_s, double to_s) {
    const Drive drive;
    double length = 0.0;
    constexpr double step = 0.01;
    for (double t = from_s; t < to_s - 0.5 * step; t += step)
        length += step * drive.speed(t + 0.5 * step);
    return length;
}

class Turning : public testing::TestWithParam<std::optional<Meaning>> {};

TEST_P(Turning, DistanceIsIntegratedSpeed) {
    const auto motion = estimate_motion(recorded(Meaning::wheel_speed, GetParam()));
    ASSERT_TRUE(motion.ok());
    EXPECT_EQ(motion->source, PositionSource::dead_reckoning);
    EXPECT_FALSE(motion->frame.on_earth);
    EXPECT_NEAR(driven_m(motion->best, 10.0, 110.0), truly_driven_m(10.0, 110.0), 0.3);
}

INSTANTIATE_TEST_SUITE_P(DeadReckoning, Turning,
                         testing::Values(std::nullopt, Meaning::yaw_rate, Meaning::lateral_acceleration));

// Noise of the yaw rate alone turns the heading by some mrad in a lap: metres on a lap of a kilometre and a half.
// What is left of a damaged file: some samples of a speed, or none, and cornering at another time.
TEST(DeadReckoning, TooLittleToFollowTheCarByIsRefused) {
    for (const std::size_t speeds : {std::size_t{0}, std::size_t{1}, std::size_t{3}}) {
        Measurements measured;
        measured.source = PositionSource::dead_reckoning;
        for (std::size_t i = 0; i < speeds; ++i) {
            measured.wheel_speed.time_s.push_back(static_cast<double>(i));
            measured.wheel_speed.values.push_back(20.0);
        }
        for (int i = 0; i < 40; ++i) {
            measured.lateral_mps2.time_s.push_back(100.0 + 0.1 * i);
            measured.lateral_mps2.values.push_back(1.0);
        }
        const auto motion = smooth_motion(measured, {}, {}, std::nullopt);
        if (motion.ok())
            EXPECT_GE(motion->best.size(), 2U) << speeds;
        else
            EXPECT_EQ(motion.error().code, base::ErrorCode::no_motion) << speeds;
    }
}

TEST(DeadReckoning, ALapNearlyCloses) {
    for (const Meaning turning : {Meaning::yaw_rate, Meaning::lateral_acceleration}) {
        const auto motion = estimate_motion(recorded(Meaning::speed, turning));
        ASSERT_TRUE(motion.ok());
        const Drive drive;
        const Vec2 start = motion->best.at(drive.passing_s(1.0)).position_m;
        const Vec2 end = motion->best.at(drive.passing_s(2.0)).position_m;
        EXPECT_LT(std::hypot(end.east - start.east, end.north - start.north), 15.0);
        EXPECT_NEAR(motion->best.at(60.0).lateral_mps2(), drive.lateral(60.0), 0.4);
    }
}

TEST(DeadReckoning, DrawsDifferInTheDistanceWithinALap) {
    const auto motion = estimate_motion(recorded(Meaning::speed, Meaning::yaw_rate));
    ASSERT_TRUE(motion.ok());
    double sum = 0.0;
    for (const Path& draw : drawn_paths(*motion, 20.0, 60.0))
        sum += std::pow(driven_m(draw, 20.0, 60.0) - driven_m(motion->best, 20.0, 60.0), 2);
    const double sd = std::sqrt(sum / static_cast<double>(motion->draws.size()));
    // 0.3 % with 5 s at some 30 m/s over 40 s: 0.003 · 30 · √(2 · 5 · (40 - 5)) m, and a little from the noise.
    EXPECT_NEAR(sd, 1.7, 0.7);
}

} // namespace
} // namespace lapwright::motion
