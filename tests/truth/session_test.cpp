// SPDX-License-Identifier: GPL-3.0-or-later
// A driven session: closed forms on simple tracks, and the consistency that everything else relies on (speed is the
// derivative of position, acceleration that of velocity, clocks and stations are inverse functions).
#include "tests/truth/drive.h"
#include "tests/truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace truth {
namespace {

constexpr double kAir = 1.2;

DriverTruth robot() {
    DriverTruth driver;
    driver.grip_share = 0.995;
    driver.grip_share_habit_sd = 0.0;
    driver.grip_share_lap_sd = 0.0;
    driver.brake_share = 0.99;
    driver.brake_share_habit_sd = 0.0;
    driver.brake_share_lap_sd = 0.0;
    driver.exit_share = 1.0;
    driver.line_half_width_m = 0.0;
    driver.line_habit_sd_m = 0.0;
    driver.line_lap_sd_m = 0.0;
    driver.coast_s = 0.0;
    driver.throttle_ramp_s = 0.0;
    driver.response_s = 0.0;
    return driver;
}

CarTruth bare_car() {
    CarTruth car;
    car.mass_kg = 1200.0;
    car.mu = 1.0;
    car.downforce_area_m2 = 0.0;
    car.drag_area_m2 = 0.0;
    car.power_w = 200e3;
    car.rolling_resistance = 0.0;
    car.rotating_share = 0.0;
    car.brake_efficiency = 1.0 / 0.99;
    car.traction_share = 1.0;
    car.gear_top_mps = {500.0};
    return car;
}

SessionPlan circuit_plan(const int laps) {
    SessionPlan plan;
    plan.flying_laps = laps;
    plan.pit_lane = false;
    plan.air_density = kAir;
    return plan;
}

TEST(Session, StadiumLapIsTheClosedForm) {
    CarTruth car = bare_car();
    car.mu /= 0.995; // so that the driver's share gives mu = 1
    car.brake_efficiency *= 0.995;
    SessionPlan plan = circuit_plan(2);
    plan.grid_step_m = 0.5;
    const Session session = drive_session(stadium(500.0, 50.0), car, robot(), plan, 1);
    EXPECT_NEAR(session.lap(2).time_s(), 38.221456, 0.02); // checks.md B2; the bar is 0.1 %
    EXPECT_NEAR(session.speed_mps(2, 550.0), 22.143453, 1e-3);
}

TEST(Session, CircleWithDownforceIsTheClosedForm) {
    CarTruth car = bare_car();
    car.mu = 1.3;
    car.downforce_area_m2 = 3.0;
    car.power_w = 2e6;
    SessionPlan plan = circuit_plan(2);
    plan.air_density = 1.225;
    const Session session = drive_session(circle(100.0), car, robot(), plan, 1);
    const double k = downforce_factor(car, 1.225);
    const double mu = 1.3 * 0.995;
    const double speed = std::sqrt(mu * kGravity_mps2 * 100.0 / (1.0 - mu * k * 100.0));
    EXPECT_NEAR(session.lap(2).time_s(), 200.0 * std::numbers::pi / speed, 1e-6);
    EXPECT_NEAR(session.at_time(session.lap(2).start_s + 3.0).a_lat_mps2, speed * speed / 100.0, 1e-6);
}

class Driven : public testing::Test {
  protected:
    static const Session& session() {
        static const Session driven = [] {
            SessionPlan plan;
            plan.traffic_lap = 4;
            plan.mistakes = {{5, 1600.0, 1900.0, 0.85, 1.0}};
            plan.air_density = kAir;
            return drive_session(ternbank_with_hills(), heavy_powerful_coupe(), DriverTruth{}, plan, 3);
        }();
        return driven;
    }
};

TEST_F(Driven, SpeedIsTheDerivativeOfPosition) {
    const double h = 2e-4;
    for (double t = 1.0; t < session().duration_s() - 1.0; t += 0.37) {
        const TruthSample before = session().at_time(t - h);
        const TruthSample here = session().at_time(t);
        const TruthSample after = session().at_time(t + h);
        EXPECT_NEAR((after.x_m - before.x_m) / (2.0 * h), here.speed_mps * std::cos(here.heading_rad), 2e-5) << t;
        EXPECT_NEAR((after.y_m - before.y_m) / (2.0 * h), here.speed_mps * std::sin(here.heading_rad), 2e-5) << t;
        EXPECT_NEAR((after.height_m - before.height_m) / (2.0 * h), here.speed_mps * here.slope, 2e-5) << t;
    }
}

TEST_F(Driven, AccelerationIsTheDerivativeOfVelocity) {
    const double h = 1e-3;
    for (double t = 1.0; t < session().duration_s() - 1.0; t += 0.37) {
        const TruthSample before = session().at_time(t - h);
        const TruthSample here = session().at_time(t);
        const TruthSample after = session().at_time(t + h);
        EXPECT_NEAR((after.speed_mps - before.speed_mps) / (2.0 * h), here.a_long_mps2, 5e-3) << t;
        EXPECT_NEAR((after.heading_rad - before.heading_rad) / (2.0 * h), here.yaw_rate_radps, 5e-4) << t;
        EXPECT_NEAR(here.a_lat_mps2, here.speed_mps * here.yaw_rate_radps, 1e-9);
    }
}

TEST_F(Driven, AccelerationHasNoJumps) {
    double largest = 0.0;
    const double h = 1e-3;
    for (double t = 1.0; t < session().duration_s() - 1.0; t += 0.0101) {
        const TruthSample a = session().at_time(t);
        const TruthSample b = session().at_time(t + h);
        largest = std::max({largest, std::abs(b.a_long_mps2 - a.a_long_mps2), std::abs(b.a_lat_mps2 - a.a_lat_mps2)});
    }
    EXPECT_LT(largest, 0.2); // a thousandth of a second at 200 m/s^3; a step onto the brakes would show as 15
}

TEST_F(Driven, StationOffsetAndPositionAgree) {
    for (double t = 40.0; t < session().duration_s() - 40.0; t += 1.93) {
        const TruthSample here = session().at_time(t);
        const TrackPlace place = session().track().project(here.x_m, here.y_m, here.station_m);
        EXPECT_NEAR(place.station_m, here.station_m, 1e-7);
        EXPECT_NEAR(place.offset_m, here.offset_m, 1e-7);
        EXPECT_LT(std::abs(here.offset_m), 5.5);
    }
}

TEST_F(Driven, LapsBeginWhereTheGateIs) {
    const auto& laps = session().laps();
    ASSERT_EQ(laps.size(), 9U);
    EXPECT_EQ(laps.front().kind, LapKind::out);
    EXPECT_EQ(laps[4].kind, LapKind::traffic);
    EXPECT_EQ(laps[5].kind, LapKind::mistake);
    EXPECT_EQ(laps.back().kind, LapKind::in);
    for (std::size_t i = 1; i < laps.size(); ++i) {
        EXPECT_DOUBLE_EQ(laps[i].start_s, laps[i - 1].end_s);
        const TruthSample crossing = session().at_time(laps[i].start_s);
        const double off = std::abs(std::remainder(crossing.unwrapped_m, session().track().length_m()));
        EXPECT_LT(off / crossing.speed_mps, 1e-9);
    }
}

TEST_F(Driven, ClockAndStationAreInverse) {
    for (double s = 5.0; s < session().track().length_m(); s += 97.0) {
        const double t = session().lap(3).start_s + session().lap_clock_s(3, s);
        EXPECT_NEAR(session().at_time(t).station_m, s, 1e-8);
        EXPECT_NEAR(session().at_time(t).speed_mps, session().speed_mps(3, s), 1e-8);
    }
    EXPECT_NEAR(session().lap_clock_s(3, session().track().length_m()), session().lap(3).time_s(), 1e-10);
}

TEST_F(Driven, StaysWithinTheCarsFrictionCircle) {
    double most = 0.0;
    for (const TruthSample& s : session().dense(50.0)) {
        const CarTruth& car = session().car();
        const double v2 = s.speed_mps * s.speed_mps;
        const double tyre = (1.0 + car.rotating_share) * s.a_long_mps2 + drag_factor(car, kAir) * v2 +
                            (car.rolling_resistance + s.slope) * kGravity_mps2;
        most = std::max(most, std::hypot(s.a_lat_mps2, tyre) / tyre_limit_mps2(car, kAir, v2));
    }
    EXPECT_GT(most, 0.95);
    EXPECT_LT(most, 1.03); // smoothing may exceed the limit for a moment
}

TEST_F(Driven, FullThrottleObeysThePowerEquation) {
    const CarTruth& car = session().car();
    int used = 0;
    for (double t = 60.0; t < session().duration_s(); t += 0.2) {
        bool settled = true;
        for (double around = -0.5; around <= 0.5; around += 0.05)
            settled &= session().at_time(t + around).throttle > 0.9999;
        const TruthSample s = session().at_time(t);
        const double v = s.speed_mps;
        if (!settled || v < 40.0) continue;
        ++used;
        const double specific = ((1.0 + car.rotating_share) * s.a_long_mps2 + drag_factor(car, kAir) * v * v +
                                 (car.rolling_resistance + s.slope) * kGravity_mps2) *
                                v;
        EXPECT_NEAR(specific * car.mass_kg, car.power_w, 0.002 * car.power_w) << t;
    }
    EXPECT_GT(used, 200);
}

TEST_F(Driven, TrafficAndMistakesCostTime) {
    const double clean = session().lap(session().fastest_lap()).time_s();
    EXPECT_GT(session().lap(4).time_s(), clean + 1.5);
    EXPECT_GT(session().lap(5).time_s(), clean + 0.2);
    EXPECT_LT(session().lap(5).time_s(), clean + 3.0);
}

} // namespace
} // namespace truth
