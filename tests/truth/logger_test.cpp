// SPDX-License-Identifier: GPL-3.0-or-later
// The loggers' errors have the statistics that their specification states; without errors the truth comes through.
#include "tests/truth/logger.h"

#include "tests/truth/drive.h"
#include "tests/truth/geodesy.h"
#include "tests/truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <vector>

namespace truth {
namespace {

constexpr double kMetresPerDegree = 111318.0; // of latitude at 54.9 degrees, within 0.02 %

const Session& driven() {
    static const Session session = drive_session(ternbank_with_hills(), light_aero_hatch(), {}, {}, 4);
    return session;
}

std::vector<double> north_errors(const LoggedSession& logged, const LoggedSession& perfect) {
    const LoggedChannel& noisy = *logged.find(Quantity::latitude_deg);
    const LoggedChannel& clean = *perfect.find(Quantity::latitude_deg);
    std::vector<double> errors;
    for (std::size_t i = 0; i < noisy.value.size(); ++i) {
        errors.push_back((noisy.value[i] - clean.value[i]) * kMetresPerDegree);
    }
    return errors;
}

// Clockwise from true north: from where the car is to a metre ahead, over the ellipsoid's two radii of curvature.
double course_on_earth(const TruthSample& truth) {
    constexpr double radians = std::numbers::pi / 180.0;
    const GeodeticOrigin& origin = driven().track().origin();
    const GeodeticOrigin here = from_local(origin, truth.x_m, truth.y_m, 0.0);
    const GeodeticOrigin ahead =
        from_local(origin, truth.x_m + std::cos(truth.heading_rad), truth.y_m + std::sin(truth.heading_rad), 0.0);
    constexpr double e2 = 6.69437999014e-3; // WGS 84
    const double sine = std::sin(here.latitude_deg * radians);
    const double north_over_east = (1.0 - e2) / (1.0 - e2 * sine * sine);
    return std::atan2((ahead.longitude_deg - here.longitude_deg) * std::cos(here.latitude_deg * radians),
                      (ahead.latitude_deg - here.latitude_deg) * north_over_east);
}

TEST(Logger, PerfectOneShowsTheTruth) {
    const LoggedSession logged = log_session(driven(), perfect_logger(20.0), 1);
    const LoggedChannel& speed = *logged.find(Quantity::speed_mps);
    for (std::size_t i = 0; i < speed.value.size(); i += 37) {
        const TruthSample truth = driven().at_time(speed.time_s[i]);
        EXPECT_DOUBLE_EQ(speed.time_s[i], static_cast<double>(i) / 20.0);
        EXPECT_DOUBLE_EQ(speed.value[i], truth.speed_mps);
        EXPECT_NEAR(std::remainder(logged.find(Quantity::course_rad)->value[i] - course_on_earth(truth),
                                   2.0 * std::numbers::pi),
                    0.0, 1e-6);
        EXPECT_DOUBLE_EQ(logged.find(Quantity::a_lat_mps2)->value[i], truth.a_lat_mps2);
        EXPECT_DOUBLE_EQ(logged.find(Quantity::wheel_speed_mps)->value[i], truth.speed_mps);
        EXPECT_NEAR(logged.find(Quantity::a_long_mps2)->value[i], truth.a_long_mps2 + kGravity_mps2 * truth.slope,
                    1e-12);
        const GeodeticOrigin place = from_local(driven().track().origin(), truth.x_m, truth.y_m, truth.height_m);
        EXPECT_DOUBLE_EQ(logged.find(Quantity::latitude_deg)->value[i], place.latitude_deg);
        EXPECT_DOUBLE_EQ(logged.find(Quantity::longitude_deg)->value[i], place.longitude_deg);
    }
}

TEST(Logger, DopplerNoiseIsWhiteAndAsLargeAsStated) {
    const LoggedSession logged = log_session(driven(), typical_logger(25.0), 9);
    const LoggedSession perfect = log_session(driven(), perfect_logger(25.0), 9);
    const auto errors_of = [&](const Quantity quantity) {
        std::vector<double> errors;
        for (std::size_t i = 0; i < logged.find(quantity)->value.size(); ++i) {
            const double error = logged.find(quantity)->value[i] - perfect.find(quantity)->value[i];
            errors.push_back(quantity == Quantity::course_rad ? std::remainder(error, 2.0 * std::numbers::pi) : error);
        }
        return errors;
    };
    const auto check = [](const std::vector<double>& errors, const double sd) {
        const auto n = static_cast<double>(errors.size());
        double square = 0.0;
        double lagged = 0.0;
        for (std::size_t i = 0; i < errors.size(); ++i)
            square += errors[i] * errors[i] / n;
        for (std::size_t i = 1; i < errors.size(); ++i)
            lagged += errors[i] * errors[i - 1] / n;
        EXPECT_NEAR(std::sqrt(square), sd, 4.0 * sd / std::sqrt(2.0 * n));
        EXPECT_NEAR(lagged / square, 0.0, 4.0 / std::sqrt(n));
    };
    check(errors_of(Quantity::speed_mps), 0.04);
    check(errors_of(Quantity::course_rad), 0.15 * std::numbers::pi / 180.0);
}

TEST(Logger, PositionBiasIsAnOrnsteinUhlenbeckProcess) {
    LoggerSpec spec = typical_logger(2.0);
    spec.position_white_sd_m = 0.0;
    LoggerSpec clean = perfect_logger(2.0);
    const LoggedSession perfect = log_session(driven(), clean, 1);
    constexpr int kSeeds = 60;
    double square = 0.0;
    double lagged = 0.0;
    double pairs = 0.0;
    double count = 0.0;
    for (std::uint64_t seed = 1; seed <= kSeeds; ++seed) {
        const std::vector<double> errors = north_errors(log_session(driven(), spec, seed), perfect);
        constexpr std::size_t kLag = 240; // 120 s at 2 Hz, one correlation time
        for (std::size_t i = 0; i < errors.size(); ++i)
            square += errors[i] * errors[i];
        for (std::size_t i = kLag; i < errors.size(); ++i)
            lagged += errors[i] * errors[i - kLag];
        count += static_cast<double>(errors.size());
        pairs += static_cast<double>(errors.size() - kLag);
    }
    // Some 60 * 850 s / 240 s = 210 independent pieces: 4 standard errors of a variance are 4 sqrt(2 / 210) = 39 %.
    EXPECT_NEAR(square / count, 0.49, 0.39 * 0.49);
    EXPECT_NEAR((lagged / pairs) / (square / count), std::exp(-1.0), 0.25);
}

TEST(Logger, PositionWhiteNoiseLiesOnTopOfTheBias) {
    LoggerSpec spec = typical_logger(25.0);
    const std::vector<double> errors =
        north_errors(log_session(driven(), spec, 3), log_session(driven(), perfect_logger(25.0), 3));
    double square = 0.0;
    for (std::size_t i = 1; i < errors.size(); ++i)
        square += std::pow(errors[i] - errors[i - 1], 2);
    const double step_variance = square / static_cast<double>(errors.size() - 1);
    const double expected = 2.0 * 0.03 * 0.03 + 2.0 * 0.49 * (1.0 - std::exp(-0.04 / 120.0));
    EXPECT_NEAR(step_variance, expected, 0.06 * expected);
}

TEST(Logger, LatencyJitterAndRoundingOfStamps) {
    LoggerSpec spec = perfect_logger(25.0);
    spec.velocity.latency_s = 0.15;
    spec.stamp_jitter_sd_s = 0.003;
    spec.stamp_step_s = 0.001;
    const LoggedSession logged = log_session(driven(), spec, 2);
    const LoggedChannel& speed = *logged.find(Quantity::speed_mps);
    double square = 0.0;
    for (std::size_t i = 0; i < speed.time_s.size(); ++i) {
        if (i > 0) {
            EXPECT_GT(speed.time_s[i], speed.time_s[i - 1]);
        }
        EXPECT_NEAR(speed.time_s[i], std::round(speed.time_s[i] * 1000.0) / 1000.0, 1e-9);
        if (i % 101 != 0) continue;
        const double base = static_cast<double>(i + 4) / 25.0; // 0.16 s is the first stamp at or after the latency
        square += std::pow(speed.time_s[i] - base, 2);
        EXPECT_NEAR(speed.value[i], driven().at_time(base - 0.15).speed_mps, 1e-9);
    }
    const double draws = std::ceil(static_cast<double>(speed.time_s.size()) / 101.0);
    EXPECT_NEAR(std::sqrt(square / draws), 0.003, 0.001);
}

TEST(Logger, DropOutsTakeTheSatellitesOnly) {
    LoggerSpec spec = typical_logger(10.0);
    spec.drop_outs = {{100.0, 0.8}, {300.0, 2.5}};
    const LoggedSession logged = log_session(driven(), spec, 2);
    const auto& times = logged.find(Quantity::speed_mps)->time_s;
    EXPECT_TRUE(std::none_of(times.begin(), times.end(), [](const double t) { return t > 300.01 && t < 302.45; }));
    EXPECT_EQ(logged.find(Quantity::throttle)->time_s.size(), times.size() + 8 + 25);
}

TEST(Logger, WheelReadsHighAndFallsShortUnderBraking) {
    LoggerSpec spec = perfect_logger(25.0);
    spec.wheel_scale = 1.02;
    spec.wheel_lock_share = 0.2;
    const LoggedSession logged = log_session(driven(), spec, 2);
    const LoggedChannel& wheel = *logged.find(Quantity::wheel_speed_mps);
    double lowest = 2.0;
    for (std::size_t i = 0; i < wheel.value.size(); ++i) {
        const TruthSample truth = driven().at_time(wheel.time_s[i]);
        const double ratio = wheel.value[i] / truth.speed_mps;
        if (truth.brake < 0.8) {
            EXPECT_NEAR(ratio, 1.02, 1e-9);
        }
        lowest = std::min(lowest, ratio);
    }
    EXPECT_LT(lowest, 0.97);
}

TEST(Logger, StandingCarStaysAndShowsAnyCourse) {
    SessionPlan plan;
    plan.flying_laps = 1;
    plan.standing_s = 20.0;
    const Session session = drive_session(ternbank(), light_aero_hatch(), {}, plan, 4);
    EXPECT_EQ(session.at_time(3.0).speed_mps, 0.0);
    EXPECT_EQ(session.at_time(3.0).x_m, session.at_time(19.9).x_m);
    EXPECT_NEAR(session.at_time(20.0 + 1e-6).x_m, session.at_time(3.0).x_m, 1e-4);
    EXPECT_GT(session.lap(1).start_s, 100.0);
    const LoggedSession logged = log_session(session, typical_logger(10.0), 1);
    const auto& course = logged.find(Quantity::course_rad)->value;
    const auto [least, most] = std::minmax_element(course.begin(), course.begin() + 200);
    EXPECT_LT(*least, 0.5);
    EXPECT_GT(*most, 5.5);
}

TEST(Logger, SensorsKeepTheirOwnClocksAndMayBeAbsent) {
    LoggerSpec spec = typical_logger(10.0);
    spec.inertial.rate_hz = 100.0;
    spec.engine.rate_hz = 0.0;
    const LoggedSession logged = log_session(driven(), spec, 2);
    const auto slow = logged.find(Quantity::speed_mps)->time_s.size();
    const auto fast = logged.find(Quantity::a_lat_mps2)->time_s.size();
    EXPECT_NEAR(static_cast<double>(fast) / static_cast<double>(slow), 10.0, 0.01);
    EXPECT_EQ(logged.find(Quantity::gear), nullptr);
    EXPECT_EQ(logged.find(Quantity::wheel_speed_mps), nullptr);
}

} // namespace
} // namespace truth
