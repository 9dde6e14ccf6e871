// SPDX-License-Identifier: GPL-3.0-or-later
// The speed solver on straight roads against closed forms (checks.md B1, B2): constant power, braking at constant
// deceleration, coast-down; to 0.1 % or better.
#include "tests/truth/speed_profile.h"

#include <gtest/gtest.h>

#include <cmath>
#include <vector>

namespace truth {
namespace {

CarTruth car_without_aero() {
    CarTruth car;
    car.mass_kg = 1200.0;
    car.mu = 1.0;
    car.downforce_area_m2 = 0.0;
    car.drag_area_m2 = 0.0;
    car.power_w = 200e3;
    car.rolling_resistance = 0.0;
    car.rotating_share = 0.0;
    car.brake_efficiency = 1.0;
    car.traction_share = 1.0;
    car.gear_top_mps = {500.0};
    return car;
}

double elapsed_s(const SpeedProfile& profile, const double step_m) {
    double sum = 0.0;
    for (std::size_t i = 1; i < profile.energy.size(); ++i) {
        sum += 2.0 * step_m / (std::sqrt(2.0 * profile.energy[i]) + std::sqrt(2.0 * profile.energy[i - 1]));
    }
    return sum;
}

TEST(SpeedProfile, ConstantPowerWithoutDrag) {
    const std::vector<RoadPoint> road(301);
    const SpeedProfile profile = solve_speed(car_without_aero(), 1.2, road, {}, 20.0, 119.0);
    EXPECT_NEAR(std::sqrt(2.0 * profile.energy.back()), 54.061202, 5e-4);
    EXPECT_NEAR(elapsed_s(profile, 1.0), 7.567841, 7e-4);
    EXPECT_DOUBLE_EQ(profile.throttle[150], 1.0);
}

TEST(SpeedProfile, BrakesAtConstantDeceleration) {
    CarTruth car = car_without_aero();
    car.power_w = 400e3;
    const std::vector<RoadPoint> road(2001);
    const SpeedProfile profile = solve_speed(car, 1.2, road, {}, 60.0, 20.0);
    std::size_t at_fifty = road.size() - 1;
    while (profile.energy[at_fifty] < 0.5 * 50.0 * 50.0)
        --at_fifty;
    const double rest = (profile.energy[at_fifty] - 1250.0) / 9.80665;
    const double distance_m = static_cast<double>(road.size() - 1 - at_fifty) - rest;
    EXPECT_NEAR(distance_m, 107.070202, 1e-6); // 50 to 20 m/s at 1 g
    EXPECT_NEAR(profile.brake[road.size() - 20], 1.0, 1e-9);
}

TEST(SpeedProfile, CoastDown) {
    CarTruth car = car_without_aero();
    car.mass_kg = 1400.0;
    car.rolling_resistance = 150.0 / (1400.0 * kGravity_mps2);
    car.drag_area_m2 = 2.0 * 0.4 / 1.2;
    std::vector<RoadPoint> road(1637);
    for (RoadPoint& point : road)
        point.throttle_limit = 0.0;
    const SpeedProfile profile = solve_speed(car, 1.2, road, {}, 40.0, 119.0);
    EXPECT_NEAR(std::sqrt(2.0 * profile.energy.back()), 20.0, 0.02);          // after 1637.056134 m
    EXPECT_NEAR(elapsed_s(profile, 1.0), 57.5475266 - 1.056134 / 20.0, 0.02); // and 57.5475266 s
}

TEST(SpeedProfile, RotatingPartsAndSlopeEnterAsTheyShould) {
    CarTruth car = car_without_aero();
    car.rotating_share = 0.04;
    std::vector<RoadPoint> road(101);
    for (RoadPoint& point : road)
        point.slope = 0.01;
    const SpeedProfile profile = solve_speed(car, 1.2, road, {}, 30.0, 119.0);
    const double v = std::sqrt(2.0 * profile.energy[50]);
    const double a = (profile.energy[51] - profile.energy[49]) / 2.0;
    EXPECT_NEAR(1.04 * a + 0.01 * kGravity_mps2, 200e3 / (1200.0 * v), 1e-3);
}

TEST(SpeedProfile, ShiftCutsTheDriveForItsTime) {
    CarTruth car = car_without_aero();
    car.gear_top_mps = {30.0, 90.0};
    car.shift_s = 0.3;
    const std::vector<RoadPoint> road(400);
    const SpeedProfile profile = solve_speed(car, 1.2, road, {}, 25.0, 119.0);
    double without_drive_s = 0.0;
    for (std::size_t i = 0; i + 1 < road.size(); ++i) {
        const double a = profile.energy[i + 1] - profile.energy[i];
        if (std::abs(a) < 1e-9) without_drive_s += 1.0 / std::sqrt(2.0 * profile.energy[i]);
    }
    EXPECT_NEAR(without_drive_s, 0.3, 0.04); // a grid step is 0.033 s here
    EXPECT_EQ(profile.gear.front(), 1);
    EXPECT_EQ(profile.gear.back(), 2);
}

} // namespace
} // namespace truth
