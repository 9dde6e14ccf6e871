// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/motion_estimate.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>
#include <utility>

namespace lapwright::motion {
namespace {

struct Quintic {
    double value(double t) const { return 3.0 + t * (2.0 + t * (-1.0 + t * (0.5 + t * (0.25 - 0.1 * t)))); }
    double rate(double t) const { return 2.0 + t * (-2.0 + t * (1.5 + t * (1.0 - 0.5 * t))); }
    double bend(double t) const { return -2.0 + t * (3.0 + t * (3.0 - 2.0 * t)); }
};

Path path_of(const Quintic& curve, const std::vector<double>& stamps) {
    Path path;
    path.time_s = std::make_shared<const std::vector<double>>(stamps);
    for (const double t : stamps) {
        path.position_m.push_back({curve.value(t), -curve.value(t)});
        path.velocity_mps.push_back({curve.rate(t), -curve.rate(t)});
        path.acceleration_mps2.push_back({curve.bend(t), -curve.bend(t)});
    }
    return path;
}

TEST(Path, IsExactOnQuinticsBetweenItsStamps) {
    const Quintic curve;
    const Path path = path_of(curve, {0.0, 0.7, 1.1, 2.0});
    for (double t = 0.0; t <= 2.0; t += 0.05) {
        const Moment moment = path.at(t);
        EXPECT_NEAR(moment.position_m.east, curve.value(t), 1e-12);
        EXPECT_NEAR(moment.velocity_mps.north, -curve.rate(t), 1e-11);
        EXPECT_NEAR(moment.acceleration_mps2.east, curve.bend(t), 1e-10);
    }
}

TEST(Path, ClampsTimeToItsEnds) {
    const Path path = path_of({}, {1.0, 2.0});
    EXPECT_DOUBLE_EQ(path.at(0.0).time_s, 1.0);
    EXPECT_DOUBLE_EQ(path.at(0.0).position_m.east, Quintic{}.value(1.0));
    EXPECT_DOUBLE_EQ(path.at(9.0).time_s, 2.0);
}

// Bit for bit what was taken for a departure comes back; a stretch is the same path between fewer stamps.
TEST(Draws, ArePathsAgainOnAnyStretch) {
    MotionEstimate motion;
    motion.best = path_of({}, {0.0, 0.5, 1.0, 1.5, 2.0});
    for (const double off : {0.25, -0.5}) {
        Path draw = motion.best;
        for (std::size_t i = 0; i < draw.size(); ++i) {
            draw.position_m[i].north += off;
            draw.velocity_mps[i].east -= off;
            draw.acceleration_mps2[i].north += 2.0 * off;
        }
        motion.draws.push_back(departures(draw, motion.best));
        EXPECT_EQ(drawn_path(motion, motion.draws.size() - 1).velocity_mps[3].east, draw.velocity_mps[3].east);
    }
    const Path whole = drawn_path(motion, 1);
    for (const auto& [from_s, to_s] : {std::pair(0.6, 1.2), std::pair(-3.0, 0.5), std::pair(1.9, 9.0), {0.7, 0.7}}) {
        const Path part = drawn_paths(motion, from_s, to_s).at(1);
        EXPECT_LE(part.size(), 3U);
        for (double t = std::max(0.0, from_s); t <= std::min(2.0, to_s); t += 0.05) {
            EXPECT_EQ(part.at(t).position_m.north, whole.at(t).position_m.north) << t;
            EXPECT_EQ(part.at(t).acceleration_mps2.north, whole.at(t).acceleration_mps2.north) << t;
        }
    }
}

// Shift and rate of a drift at a moment, by its definition.
std::pair<Vec2, Vec2> drift_at(const Drift& drift, double t) {
    if (t <= drift.time_s.front()) return {drift.shift_m.front(), {}};
    for (std::size_t i = 1; i < drift.time_s.size(); ++i) {
        if (t >= drift.time_s[i]) continue;
        const Vec2& from = drift.shift_m[i - 1];
        const Vec2& to = drift.shift_m[i];
        const double lasts_s = drift.time_s[i] - drift.time_s[i - 1];
        const double u = (t - drift.time_s[i - 1]) / lasts_s;
        return {{from.east + u * (to.east - from.east), from.north + u * (to.north - from.north)},
                {(to.east - from.east) / lasts_s, (to.north - from.north) / lasts_s}};
    }
    return {drift.shift_m.back(), {}};
}

// On the whole path and on any stretch of it, whether the drift's moments lie within or beyond.
TEST(Draws, AreReadWithTheirDriftTakenOff) {
    std::mt19937_64 engine(20261201);
    std::uniform_real_distribution<double> any(-1.0, 1.0);
    for (int round = 0; round < 50; ++round) {
        std::vector<double> stamps{0.0};
        while (stamps.size() < 30)
            stamps.push_back(stamps.back() + 0.06 + 0.05 * any(engine));
        MotionEstimate motion;
        motion.best = path_of({}, stamps);
        Path draw = motion.best;
        for (Vec2& position : draw.position_m)
            position.east += any(engine);
        motion.draws.push_back(departures(draw, motion.best));
        const Path undrifted = drawn_path(motion, 0);
        Drift drift;
        for (int i = 0; i <= round % 5; ++i) {
            drift.time_s.push_back((i == 0 ? 0.5 * any(engine) : drift.time_s.back()) + 0.6 + 0.5 * any(engine));
            drift.shift_m.push_back({3.0 * any(engine), 3.0 * any(engine)});
        }
        motion.draws[0].drift = drift;
        const double from_s = 0.9 + 0.9 * any(engine);
        for (const Path& path : {drawn_path(motion, 0), drawn_paths(motion, from_s, from_s + 0.4).at(0)}) {
            const auto first = static_cast<std::size_t>(std::ranges::find(stamps, path.start_s()) - stamps.begin());
            for (std::size_t i = 0; i < path.size(); ++i) {
                const auto [shift, rate] = drift_at(drift, (*path.time_s)[i]);
                ASSERT_NEAR(path.position_m[i].east, undrifted.position_m[first + i].east - shift.east, 1e-12);
                ASSERT_NEAR(path.position_m[i].north, undrifted.position_m[first + i].north - shift.north, 1e-12);
                ASSERT_NEAR(path.velocity_mps[i].east, undrifted.velocity_mps[first + i].east - rate.east, 1e-12);
                ASSERT_NEAR(path.velocity_mps[i].north, undrifted.velocity_mps[first + i].north - rate.north, 1e-12);
                ASSERT_EQ(path.acceleration_mps2[i].east, undrifted.acceleration_mps2[first + i].east);
            }
        }
    }
}

TEST(Path, FindsTheStampBeforeAMoment) {
    const Path path = path_of({}, {1.0, 2.0, 3.0});
    EXPECT_EQ(path.index_before(0.5), 0U);
    EXPECT_EQ(path.index_before(1.0), 0U);
    EXPECT_EQ(path.index_before(2.0), 1U);
    EXPECT_EQ(path.index_before(3.0), 1U);
    EXPECT_EQ(path.index_before(7.0), 1U);
}

TEST(Moment, SplitsAccelerationAlongAndToTheLeftOfTheVelocity) {
    const Moment moment{0.0, {}, {0.0, 10.0}, {-3.0, 2.0}}; // northward, accelerating, turning left
    EXPECT_DOUBLE_EQ(moment.speed_mps(), 10.0);
    EXPECT_DOUBLE_EQ(moment.longitudinal_mps2(), 2.0);
    EXPECT_DOUBLE_EQ(moment.lateral_mps2(), 3.0);
}

TEST(Moment, HasNoDirectionAtAStandstill) {
    EXPECT_TRUE(std::isnan(Moment{}.lateral_mps2()));
}

} // namespace
} // namespace lapwright::motion
