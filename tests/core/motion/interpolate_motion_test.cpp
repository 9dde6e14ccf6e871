// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/interpolate_motion.h"

#include "core/motion/estimate_motion.h"
#include "core/motion/in_frame.h"
#include "core/motion/recorded_drive.h"

#include <gtest/gtest.h>

namespace lapwright::motion {
namespace {

using recording::Meaning;
using recording::Recording;
using test::channel;
using test::degree_rad;
using test::Drive;

const LocalFrame place{{51.98 * degree_rad, -1.02 * degree_rad, 0.0}};

// What a receiver calls the course: clockwise from the meridian of the place where it is.
double receiver_course(const Drive& drive, double t) {
    Geodetic here = to_geodetic(place, {drive.east(t), drive.north(t), 0.0});
    const EastNorthUp from = to_local(place, here);
    here.latitude_rad += 1e-5;
    const EastNorthUp to = to_local(place, here);
    return drive.course(t) - std::atan2(to.east_m - from.east_m, to.north_m - from.north_m);
}

Recording satellite_recording(const Drive& drive, double rate_hz, bool with_velocity) {
    const recording::Stamps time = test::stamps(0.0, 120.0, rate_hz);
    const auto point = [&](double t) { return to_geodetic(place, {drive.east(t), drive.north(t), 0.0}); };
    Recording recording;
    recording.channels.push_back(channel(Meaning::latitude, time, [&](double t) { return point(t).latitude_rad; }));
    recording.channels.push_back(channel(Meaning::longitude, time, [&](double t) { return point(t).longitude_rad; }));
    if (!with_velocity) return recording;
    recording.channels.push_back(channel(Meaning::speed, time, [&](double t) { return drive.speed(t); }));
    recording.channels.push_back(channel(Meaning::course, time, [&](double t) { return receiver_course(drive, t); }));
    return recording;
}

// The moment near `guess_s` at which the path crosses north = 0 northward.
double crossing_s(const Path& path, double guess_s) {
    double low = guess_s - 1.0;
    double high = guess_s + 1.0;
    for (int i = 0; i < 100; ++i) {
        const double middle = 0.5 * (low + high);
        (path.at(middle).position_m.north < 0.0 ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

class NoiseFree : public testing::TestWithParam<bool> {};

// The bar for noise-free 25 Hz input is 1 ms; interpolation itself is far better.
TEST_P(NoiseFree, LapTimesAreWithinATenthOfAMillisecondAt25Hz) {
    const Drive drive;
    const auto motion = interpolate_motion(satellite_recording(drive, 25.0, GetParam()));
    ASSERT_TRUE(motion.ok());
    const double first = drive.passing_s(1.0);
    const double second = drive.passing_s(2.0);
    const double measured = crossing_s(motion->best, second) - crossing_s(motion->best, first);
    EXPECT_NEAR(measured, second - first, 1e-4);
}

TEST_P(NoiseFree, VelocityAndAccelerationFollowTheDrive) {
    const Drive drive;
    const auto motion = interpolate_motion(satellite_recording(drive, 25.0, GetParam()));
    ASSERT_TRUE(motion.ok());
    for (double t = 1.0; t < 119.0; t += 0.173) {
        const Moment moment = motion->best.at(t);
        EXPECT_NEAR(moment.speed_mps(), drive.speed(t), 1e-3);
        EXPECT_NEAR(moment.longitudinal_mps2(), drive.longitudinal(t), 0.02);
        EXPECT_NEAR(moment.lateral_mps2(), drive.lateral(t), 0.02);
    }
}

INSTANTIATE_TEST_SUITE_P(InterpolateMotion, NoiseFree, testing::Bool());

TEST(InterpolateMotion, BridgesADropOutAndReportsIt) {
    const Drive drive;
    Recording recording = satellite_recording(drive, 25.0, true);
    auto kept = std::make_shared<std::vector<double>>();
    for (auto& values : recording.channels) {
        std::vector<double> left;
        for (std::size_t i = 0; i < values.size(); ++i) {
            const double t = (*values.time_s)[i];
            if (t > 40.0 && t < 42.0) continue;
            left.push_back(values.values[i]);
            if (&values == &recording.channels.front()) kept->push_back(t);
        }
        values.values = left;
        values.time_s = kept;
    }
    const auto motion = interpolate_motion(recording);
    ASSERT_TRUE(motion.ok());
    ASSERT_EQ(motion->bridges.size(), 1U);
    EXPECT_NEAR(motion->bridges[0].from_s, 40.0, 0.041);
    EXPECT_NEAR(motion->bridges[0].to_s, 42.0, 0.041);
}

TEST(InterpolateMotion, NeverDifferentiatesAcrossASplit) {
    const recording::Stamps time = test::stamps(0.0, 10.0, 25.0);
    Recording recording;
    const auto jump = [](double t) { return t < 5.0 ? 10.0 * t : 1000.0 + 10.0 * t; };
    recording.channels.push_back(channel(Meaning::east, time, jump));
    recording.channels.push_back(channel(Meaning::north, time, [](double) { return 0.0; }));
    recording.splits_s = {5.0};
    const auto motion = interpolate_motion(recording);
    ASSERT_TRUE(motion.ok());
    EXPECT_EQ(motion->source, PositionSource::local_metres);
    EXPECT_EQ(motion->bridges.size(), 1U);
    for (const Vec2& velocity : motion->best.velocity_mps)
        EXPECT_NEAR(velocity.east, 10.0, 1e-6);
}

TEST(InterpolateMotion, ReadsASlowReceiverOutOfAFastTable) {
    const Drive drive;
    const recording::Stamps time = test::stamps(0.0, 60.0, 100.0);
    const auto held = [](double t) { return std::floor(t * 10.0 + 1e-6) / 10.0; };
    Recording recording;
    recording.channels.push_back(channel(Meaning::east, time, [&](double t) { return drive.east(held(t)); }));
    recording.channels.push_back(channel(Meaning::north, time, [&](double t) { return drive.north(held(t)); }));
    const auto motion = interpolate_motion(recording);
    ASSERT_TRUE(motion.ok());
    EXPECT_NEAR(static_cast<double>(motion->best.size()), 601.0, 1.0);
    EXPECT_NEAR(motion->best.at(30.05).position_m.east, drive.east(30.05), 0.01);
}

TEST(InterpolateMotion, SaysWhenNothingMoves) {
    Recording recording;
    recording.channels.push_back(channel(Meaning::throttle, test::stamps(0, 1, 10), [](double) { return 0.5; }));
    const auto motion = interpolate_motion(recording);
    ASSERT_FALSE(motion.ok());
    EXPECT_EQ(motion.error().code, base::ErrorCode::no_motion);
}

TEST(NaturalFrame, IsSharedBySessionsAtOneTrack) {
    const Drive drive;
    const Recording one = satellite_recording(drive, 10.0, false);
    Recording other = satellite_recording(Drive{310.0, 175.0, 0.12, 0.1}, 5.0, false);
    const auto a = natural_frame(one);
    const auto b = natural_frame(other);
    ASSERT_TRUE(a.ok() && b.ok());
    EXPECT_TRUE(same_frame(*a, *b));
    EXPECT_NEAR(a->origin.latitude_rad / degree_rad, 51.98, 1e-9);
}

TEST(InFrame, PutsTheSameCarOnTheSameSpotOfAnotherMap) {
    const Drive drive;
    const Recording recording = satellite_recording(drive, 25.0, true);
    const LocalFrame near{{51.95 * degree_rad, -1.0 * degree_rad, 200.0}};
    const auto in_near = measurements(recording, near);
    ASSERT_TRUE(in_near.ok());
    const auto there = interpolate_motion(recording);
    const auto directly = interpolate_motion(*in_near);
    ASSERT_TRUE(there.ok() && directly.ok());
    const auto moved = in_frame(*there, near);
    ASSERT_TRUE(moved.ok());
    ASSERT_EQ(moved->best.size(), directly->best.size());
    for (std::size_t i = 0; i < moved->best.size(); i += 50) {
        EXPECT_NEAR(moved->best.position_m[i].east, directly->best.position_m[i].east, 1e-4);
        EXPECT_NEAR(moved->best.position_m[i].north, directly->best.position_m[i].north, 1e-4);
        EXPECT_NEAR(moved->best.velocity_mps[i].east, directly->best.velocity_mps[i].east, 1e-3);
        EXPECT_NEAR(moved->best.velocity_mps[i].north, directly->best.velocity_mps[i].north, 1e-3);
    }
}

// Two metres beside the car are two metres on every map, in the direction that geodesy gives them; a drift is in them.
TEST(InFrame, TakesTheDrawsAlong) {
    const LocalFrame near{{51.95 * degree_rad, -1.4 * degree_rad, 0.0}};
    auto motion = interpolate_motion(satellite_recording(Drive{}, 10.0, true));
    ASSERT_TRUE(motion.ok());
    MotionEstimate estimate = std::move(motion).value();
    Path draw = estimate.best;
    for (std::size_t i = 0; i < draw.size(); ++i)
        draw.position_m[i].east += 3.0;
    estimate.draws.push_back(departures(draw, estimate.best));
    estimate.draws.front().drift = {{0.0}, {{1.0, -0.5}}};
    const auto moved = in_frame(estimate, near);
    ASSERT_TRUE(moved.ok());
    const Path there = drawn_path(*moved, 0);
    const auto placed = [&](const Vec2& p) {
        return to_local(near, to_geodetic(estimate.frame, {p.east, p.north, 0.0}));
    };
    for (std::size_t i = 0; i < there.size(); i += 20) {
        const Vec2& p = estimate.best.position_m[i];
        const EastNorthUp from = placed(p);
        const EastNorthUp to = placed({p.east + 2.0, p.north + 0.5});
        EXPECT_GT(std::abs(to.north_m - from.north_m - 0.5), 0.005) << "the maps must be turned for this to tell";
        EXPECT_NEAR(there.position_m[i].east - moved->best.position_m[i].east, to.east_m - from.east_m, 1e-3);
        EXPECT_NEAR(there.position_m[i].north - moved->best.position_m[i].north, to.north_m - from.north_m, 1e-3);
    }
}

TEST(InFrame, RefusesSessionsOfDifferentTracks) {
    const auto motion = estimate_motion(satellite_recording(Drive{}, 10.0, false));
    ASSERT_TRUE(motion.ok());
    const auto far = in_frame(*motion, LocalFrame{{48.0 * degree_rad, 2.0 * degree_rad, 0.0}});
    ASSERT_FALSE(far.ok());
    EXPECT_EQ(far.error().code, base::ErrorCode::different_tracks);
    EXPECT_FALSE(in_frame(*motion, LocalFrame{{}, false}).ok());
}

} // namespace
} // namespace lapwright::motion
