// SPDX-License-Identifier: GPL-3.0-or-later
// What the smoother does with each subset of channels, on a drive known in closed form with seeded noise.
#include "core/motion/smooth_motion.h"

#include "core/motion/estimate_motion.h"
#include "core/motion/interpolate_motion.h"
#include "core/motion/recorded_drive.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

namespace lapwright::motion {
namespace {

using recording::Meaning;
using recording::Recording;
using test::channel;
using test::Drive;

constexpr double length_s = 150.0;

struct Sensors {
    double position_sd_m = 0.03;
    double speed_sd_mps = 0.04;
    double course_sd_rad = 0.0026;
    double acceleration_sd_mps2 = 0.25;
    double velocity_latency_s = 0.0;
    double acceleration_latency_s = 0.0;
    double lateral_sign = 1.0;
    double rate_hz = 25.0;
    bool with_speed = true;
    bool with_course = true;
    bool with_accelerations = false;
};

// Positions in metres of the file's own frame: no meridians to think of.
Recording recorded(const Drive& drive, const Sensors& s, unsigned seed = 1) {
    std::mt19937_64 engine(seed);
    std::normal_distribution<double> normal;
    const auto noise = [&](double sd) { return sd * normal(engine); };
    const recording::Stamps time = test::stamps(0.0, length_s, s.rate_hz);
    const recording::Stamps fast = test::stamps(0.003, length_s, 100.0);
    Recording recording;
    const auto add = [&](Meaning meaning, const recording::Stamps& stamps, const std::function<double(double)>& value) {
        recording.channels.push_back(channel(meaning, stamps, value));
    };
    add(Meaning::east, time, [&](double t) { return drive.east(t) + noise(s.position_sd_m); });
    add(Meaning::north, time, [&](double t) { return drive.north(t) + noise(s.position_sd_m); });
    const double late = s.velocity_latency_s;
    if (s.with_speed)
        add(Meaning::speed, time, [&](double t) { return drive.speed(t - late) + noise(s.speed_sd_mps); });
    if (s.with_course)
        add(Meaning::course, time, [&](double t) { return drive.course(t - late) + noise(s.course_sd_rad); });
    if (!s.with_accelerations) return recording;
    const double later = s.acceleration_latency_s;
    add(Meaning::longitudinal_acceleration, fast,
        [&](double t) { return 0.1 + drive.longitudinal(t - later) + noise(s.acceleration_sd_mps2); });
    add(Meaning::lateral_acceleration, fast,
        [&](double t) { return s.lateral_sign * (drive.lateral(t - later) + noise(s.acceleration_sd_mps2)); });
    return recording;
}

MotionEstimate estimated(const Recording& recording, const Options& options = {}) {
    auto motion = estimate_motion(recording, options);
    EXPECT_TRUE(motion.ok());
    return std::move(motion).value();
}

const SensorReport* report(const MotionEstimate& motion, const std::string& name) {
    for (const SensorReport& sensor : motion.sensors)
        if (sensor.name == name) return &sensor;
    return nullptr;
}

struct Errors {
    double position_m = 0.0; // RMS
    double speed_mps = 0.0;
    double acceleration_mps2 = 0.0;
};

Errors errors(const MotionEstimate& motion, const Drive& drive) {
    Errors sum;
    double count = 0.0;
    for (double t = 2.0; t < length_s - 2.0; t += 0.093) {
        const Moment m = motion.best.at(t);
        sum.position_m +=
            std::pow(m.position_m.east - drive.east(t), 2) + std::pow(m.position_m.north - drive.north(t), 2);
        sum.speed_mps += std::pow(m.speed_mps() - drive.speed(t), 2);
        sum.acceleration_mps2 += std::pow(m.longitudinal_mps2() - drive.longitudinal(t), 2);
        count += 1.0;
    }
    return {std::sqrt(sum.position_m / count), std::sqrt(sum.speed_mps / count),
            std::sqrt(sum.acceleration_mps2 / count)};
}

double spread_m(const MotionEstimate& motion, double t) {
    const Vec2 best = motion.best.at(t).position_m;
    double sum = 0.0;
    for (const Path& draw : drawn_paths(motion, t, t)) {
        const Vec2 p = draw.at(t).position_m;
        sum += std::pow(p.east - best.east, 2) + std::pow(p.north - best.north, 2);
    }
    return std::sqrt(sum / static_cast<double>(motion.draws.size()));
}

// The median jerk density of this gentle drive is far below a car's: speeds are known to a third of their noise.
TEST(SmoothMotion, KnowsSpeedBetterTheMoreIsMeasured) {
    const Drive drive;
    Sensors sensors;
    sensors.with_speed = sensors.with_course = false;
    const Errors positions = errors(estimated(recorded(drive, sensors)), drive);
    sensors.with_speed = true;
    const Errors speeds = errors(estimated(recorded(drive, sensors)), drive);
    sensors.with_course = true;
    sensors.with_accelerations = true;
    const Errors all = errors(estimated(recorded(drive, sensors)), drive);
    EXPECT_LT(positions.speed_mps, 0.08);
    EXPECT_LT(speeds.speed_mps, 0.015);
    EXPECT_LT(all.speed_mps, 0.010);
    EXPECT_LT(all.acceleration_mps2, 0.1);
    const auto plain = interpolate_motion(recorded(drive, sensors));
    EXPECT_LT(5.0 * all.speed_mps, errors(*plain, drive).speed_mps);
}

TEST(SmoothMotion, LearnsTheNoiseOfEachSensor) {
    Sensors sensors;
    sensors.with_accelerations = true;
    const MotionEstimate motion = estimated(recorded(Drive{}, sensors));
    EXPECT_NEAR(*report(motion, "position")->noise_sd, 0.03, 0.002);
    EXPECT_NEAR(*report(motion, "speed")->noise_sd, 0.04, 0.003);
    EXPECT_NEAR(*report(motion, "course")->noise_sd, 0.0026, 0.0003);
    EXPECT_NEAR(*report(motion, "longitudinal acceleration")->noise_sd, 0.125, 0.02); // means of four
    EXPECT_NEAR(*report(motion, "longitudinal acceleration")->bias, 0.1, 0.03);
    EXPECT_EQ(report(motion, "position")->rejected, 0U);
}

// Without noise covariances become as unequal as they can; rounding must not build up over a session.
TEST(SmoothMotion, BelievesEveryNoiseFreeSample) {
    const Drive drive;
    Sensors sensors{0.0, 0.0, 0.0, 0.0};
    sensors.with_accelerations = true;
    const Recording recording = recorded(drive, sensors);
    const MotionEstimate motion = estimated(recording);
    for (const SensorReport& sensor : motion.sensors)
        EXPECT_EQ(sensor.rejected, 0U) << sensor.name;
    EXPECT_LT(errors(motion, drive).position_m, 0.005);
    EXPECT_LT(errors(motion, drive).speed_mps, 0.001);
}

class Latency : public testing::TestWithParam<double> {};

TEST_P(Latency, IsFoundAndTakenOut) {
    const Drive drive;
    Sensors sensors;
    sensors.velocity_latency_s = GetParam();
    sensors.with_accelerations = true;
    sensors.acceleration_latency_s = -0.5 * GetParam();
    const MotionEstimate motion = estimated(recorded(drive, sensors));
    EXPECT_NEAR(*report(motion, "speed")->latency_s, GetParam(), 0.02);
    EXPECT_NEAR(*report(motion, "course")->latency_s, GetParam(), 0.01);
    EXPECT_NEAR(*report(motion, "lateral acceleration")->latency_s, -0.5 * GetParam(), 0.02);
    EXPECT_LT(errors(motion, drive).speed_mps, 0.03);
}

INSTANTIATE_TEST_SUITE_P(SmoothMotion, Latency, testing::Values(0.0, 0.08, 0.3, -0.05));

TEST(SmoothMotion, TurnsALateralSensorRoundThatIsPositiveToTheRight) {
    const Drive drive;
    Sensors sensors;
    sensors.with_accelerations = true;
    sensors.lateral_sign = -1.0;
    const MotionEstimate motion = estimated(recorded(drive, sensors));
    EXPECT_NEAR(*report(motion, "lateral acceleration")->scale, -1.0, 0.02);
    EXPECT_NEAR(*report(motion, "longitudinal acceleration")->scale, 1.0, 0.02);
    EXPECT_NEAR(motion.best.at(60.0).lateral_mps2(), drive.lateral(60.0), 0.3);
    EXPECT_LT(errors(motion, drive).speed_mps, 0.015);
}

void remove_between(Recording& recording, double from_s, double to_s) {
    for (recording::Channel& channel : recording.channels) {
        if (channel.meaning == Meaning::longitudinal_acceleration || channel.meaning == Meaning::lateral_acceleration)
            continue;
        std::vector<double> time;
        std::vector<double> values;
        for (std::size_t i = 0; i < channel.size(); ++i) {
            if ((*channel.time_s)[i] > from_s && (*channel.time_s)[i] < to_s) continue;
            time.push_back((*channel.time_s)[i]);
            values.push_back(channel.values[i]);
        }
        channel.time_s = std::make_shared<const std::vector<double>>(time);
        channel.values = values;
    }
}

TEST(SmoothMotion, BridgesADropOutWithAGrowingErrorThatAccelerometersReduce) {
    const Drive drive;
    Sensors sensors;
    Recording bare = recorded(drive, sensors);
    sensors.with_accelerations = true;
    Recording aided = recorded(drive, sensors);
    remove_between(bare, 60.0, 64.0);
    remove_between(aided, 60.0, 64.0);
    Options options;
    options.draws = 64;
    const MotionEstimate alone = estimated(bare, options);
    const MotionEstimate helped = estimated(aided, options);
    ASSERT_EQ(alone.bridges.size(), 1U);
    EXPECT_NEAR(alone.bridges[0].from_s, 60.0, 0.05);
    EXPECT_NEAR(alone.bridges[0].to_s, 64.0, 0.05);
    const auto off = [&](const MotionEstimate& motion) {
        const Vec2 p = motion.best.at(62.0).position_m;
        return std::hypot(p.east - drive.east(62.0), p.north - drive.north(62.0));
    };
    EXPECT_GT(spread_m(alone, 62.0), spread_m(alone, 60.5));
    EXPECT_GT(spread_m(alone, 60.5), 0.9 * spread_m(alone, 59.5));
    EXPECT_LT(spread_m(helped, 62.0), spread_m(alone, 62.0));
    EXPECT_LT(off(alone), 3.0 * spread_m(alone, 62.0));
    EXPECT_LT(off(helped), 3.0 * spread_m(helped, 62.0));
}

TEST(SmoothMotion, JoinsNothingAcrossASplit) {
    const Drive drive;
    Recording recording = recorded(drive, {});
    recording.splits_s = {70.0};
    for (recording::Channel& channel : recording.channels) // the clock jumped: the car is elsewhere afterwards
        for (std::size_t i = 0; i < channel.size(); ++i)
            if (channel.meaning == Meaning::east && (*channel.time_s)[i] >= 70.0) channel.values[i] += 5000.0;
    const MotionEstimate motion = estimated(recording);
    ASSERT_EQ(motion.bridges.size(), 1U);
    EXPECT_NEAR(motion.best.at(69.9).position_m.east, drive.east(69.9), 3.0);
    EXPECT_NEAR(motion.best.at(70.1).position_m.east, drive.east(70.1) + 5000.0, 3.0);
    EXPECT_NEAR(motion.best.at(69.9).speed_mps(), drive.speed(69.9), 0.15);
    EXPECT_NEAR(motion.best.at(70.1).speed_mps(), drive.speed(70.1), 0.15);
}

TEST(SmoothMotion, ThrowsOutOutliers) {
    const Drive drive;
    Recording recording = recorded(drive, {});
    for (recording::Channel& channel : recording.channels) {
        if (channel.meaning == Meaning::east)
            for (std::size_t i = 100; i < channel.size(); i += 500)
                channel.values[i] += 4.0;
        if (channel.meaning == Meaning::speed)
            for (std::size_t i = 350; i < channel.size(); i += 500)
                channel.values[i] -= 6.0;
    }
    const MotionEstimate motion = estimated(recording);
    EXPECT_GE(report(motion, "position")->rejected, 8U);
    EXPECT_LE(report(motion, "position")->rejected, 20U);
    EXPECT_GE(report(motion, "speed")->rejected, 7U);
    EXPECT_LE(report(motion, "speed")->rejected, 9U);
    EXPECT_LT(errors(motion, drive).speed_mps, 0.02);
}

// A receiver that takes up another satellite may be off by metres from one fix to the next, and stay so.
TEST(SmoothMotion, FollowsAReceiverThatChangesItsMind) {
    const Drive drive;
    Recording recording = recorded(drive, {});
    for (recording::Channel& channel : recording.channels)
        for (std::size_t i = 0; i < channel.size(); ++i)
            if (channel.meaning == Meaning::north && (*channel.time_s)[i] >= 75.0) channel.values[i] += 4.0;
    const MotionEstimate motion = estimated(recording);
    EXPECT_LT(report(motion, "position")->rejected, 10U);
    for (double t = 72.0; t < 78.0; t += 0.05)
        EXPECT_NEAR(motion.best.at(t).speed_mps(), drive.speed(t), 0.15);
}

TEST(SmoothMotion, IsTheSameForAnyNumberOfThreads) {
    Sensors sensors;
    sensors.with_accelerations = true;
    const Recording recording = recorded(Drive{}, sensors);
    Options options;
    options.threads = 1;
    options.draws = 12;
    const MotionEstimate one = estimated(recording, options);
    options.threads = 3;
    const MotionEstimate three = estimated(recording, options);
    ASSERT_EQ(one.draws.size(), 12U);
    ASSERT_EQ(three.draws.size(), 12U);
    for (std::size_t i = 0; i < one.best.size(); ++i) {
        ASSERT_EQ(one.best.position_m[i].east, three.best.position_m[i].east);
        ASSERT_EQ(one.draws[11][i].north_mps, three.draws[11][i].north_mps);
    }
}

TEST(SmoothMotion, DrawsDoNotDependOnHowManyThereAre) {
    const Recording recording = recorded(Drive{}, {});
    Options options;
    options.draws = 5;
    const MotionEstimate few = estimated(recording, options);
    options.draws = 20;
    const MotionEstimate many = estimated(recording, options);
    EXPECT_EQ(few.draws[4][1000].east_m, many.draws[4][1000].east_m);
    options.seed = 2;
    EXPECT_NE(estimated(recording, options).draws[4][1000].east_m, many.draws[4][1000].east_m);
}

// Where a draw lies beside the best path, east, of every draw.
std::vector<double> deviations(const MotionEstimate& motion, std::size_t at) {
    std::vector<double> result;
    for (const Draw& draw : motion.draws)
        result.push_back(static_cast<double>(draw[at].east_m));
    return result;
}

double correlation(const std::vector<double>& a, const std::vector<double>& b) {
    double aa = 0.0;
    double bb = 0.0;
    double ab = 0.0;
    for (std::size_t i = 0; i < a.size(); ++i) {
        aa += a[i] * a[i];
        bb += b[i] * b[i];
        ab += a[i] * b[i];
    }
    return ab / std::sqrt(aa * bb);
}

// Else the difference of two sessions would seem far better known than it is.
TEST(SmoothMotion, TwoRecordingsDrawEachTheirOwnAndOneAlwaysTheSame) {
    const Recording recording = recorded(Drive{}, {}, 1);
    const MotionEstimate one = estimated(recording);
    const MotionEstimate again = estimated(recording);
    const MotionEstimate other = estimated(recorded(Drive{}, {}, 2));
    for (const std::size_t at : {1000U, 2000U, 3000U}) {
        EXPECT_EQ(deviations(one, at), deviations(again, at));
        EXPECT_LT(std::fabs(correlation(deviations(one, at), deviations(other, at))), 0.6) << "three sd of 32 draws";
    }
}

TEST(SmoothMotion, StampsAreThoseOfPositionsAndSpeeds) {
    Sensors sensors;
    sensors.with_accelerations = true; // at 100 Hz
    const MotionEstimate motion = estimated(recorded(Drive{}, sensors));
    EXPECT_EQ(motion.best.size(), 1U + static_cast<std::size_t>(length_s * 25.0));
    sensors.rate_hz = 100.0;
    EXPECT_LE(estimated(recorded(Drive{}, sensors)).best.size(), static_cast<std::size_t>(length_s * 25.0) + 1U);
}

// A clock in a unit that was not understood puts a whole session into an instant.
TEST(SmoothMotion, PositionsOfAnInstantAreRefusedOrFollowed) {
    for (const double rate_hz : {30.0, 1e3, 1e5, 1e8})
        for (const int rows : {2, 3, 10, 200, 3000}) {
            Recording recording;
            const recording::Stamps time = test::stamps(0.0, (rows - 0.5) / rate_hz, rate_hz);
            const Drive drive;
            recording.channels.push_back(channel(Meaning::east, time, [&](double t) { return drive.east(t); }));
            recording.channels.push_back(channel(Meaning::north, time, [&](double t) { return drive.north(t); }));
            const auto motion = estimate_motion(recording, {});
            if (motion.ok())
                EXPECT_GE(motion->best.size(), 2U) << rate_hz << " Hz, " << rows << " rows";
            else
                EXPECT_EQ(motion.error().code, base::ErrorCode::no_motion) << rate_hz << " Hz, " << rows << " rows";
        }
}

TEST(SmoothMotion, StopsWhenNobodyWantsItAnyMore) {
    const Recording recording = recorded(Drive{}, {});
    int questions = 0;
    ASSERT_TRUE(estimate_motion(recording, {}, [&](std::string_view, double) { return ++questions > 0; }).ok());
    EXPECT_GT(questions, 20);
    for (int stop_at = 1; stop_at <= questions; stop_at += 3) {
        int calls = 0;
        const auto motion = estimate_motion(recording, {}, [&](std::string_view, double) { return ++calls < stop_at; });
        ASSERT_FALSE(motion.ok());
        EXPECT_EQ(motion.error().code, base::ErrorCode::cancelled);
    }
}

TEST(SmoothMotion, TellsHowFarItIs) {
    double last = -1.0;
    const auto motion = estimate_motion(recorded(Drive{}, {}), {}, [&](std::string_view stage, double part) {
        EXPECT_FALSE(stage.empty());
        EXPECT_GE(part, last);
        EXPECT_LE(part, 1.0);
        last = part;
        return true;
    });
    EXPECT_TRUE(motion.ok());
    EXPECT_NEAR(last, 1.0, 1e-9);
}

} // namespace
} // namespace lapwright::motion
