// SPDX-License-Identifier: GPL-3.0-or-later
// Corner speeds against the closed form v^2 = mu g R / (1 -
// mu k R) (checks.md B2) and the load exponent's own equation.
#include "tests/truth/car.h"

#include <gtest/gtest.h>

#include <cmath>

namespace truth {
namespace {

constexpr double kCeiling = 120.0 * 120.0;

CarTruth published_car(const double downforce_area_m2) {
    CarTruth car;
    car.mass_kg = 1200.0;
    car.mu = 1.3;
    car.downforce_area_m2 = downforce_area_m2;
    return car;
}

double corner_speed(const CarTruth& car, const double radius_m) {
    return std::sqrt(corner_speed_squared(car, 1.225, 1.0 / radius_m, 1.0, kCeiling));
}

TEST(Car, CornersAtThePublishedSpeeds) {
    EXPECT_NEAR(corner_speed(published_car(0.0), 100.0), 35.705245, 1e-6);
    EXPECT_NEAR(corner_speed(published_car(1.5), 100.0), 37.626835, 1e-6);
    EXPECT_NEAR(corner_speed(published_car(3.0), 100.0), 39.896307, 1e-6);
}

TEST(Car, BeyondTheCriticalRadiusGripNoLongerLimits) {
    const CarTruth car = published_car(3.0); // critical radius 502.355 m
    EXPECT_EQ(corner_speed(car, 503.0), 120.0);
    EXPECT_LT(corner_speed(car, 300.0), 120.0);
}

TEST(Car, LoadExponentSolvesItsOwnEquation) {
    CarTruth car = published_car(3.0);
    car.load_exponent = 0.8;
    for (const double radius : {20.0, 80.0, 150.0, 260.0}) {
        const double w = corner_speed_squared(car, 1.225, 1.0 / radius, 0.95, kCeiling);
        EXPECT_NEAR(w / radius, 0.95 * tyre_limit_mps2(car, 1.225, w), 1e-9) << radius;
        EXPECT_LT(std::sqrt(w), corner_speed(published_car(3.0), radius));
    }
}

TEST(Car, PowerCurveIsLinearBetweenItsPoints) {
    CarTruth car;
    car.power_curve = {{3000.0, 0.5}, {6000.0, 1.0}, {7000.0, 0.9}};
    car.redline_rpm = 7000.0;
    car.gear_top_mps = {35.0, 70.0};
    EXPECT_NEAR(power_at(car, 1, 22.5), 0.75 * car.power_w, 1e-6); // 4500 rpm
    EXPECT_NEAR(power_at(car, 2, 65.0), 0.95 * car.power_w, 1e-6); // 6500 rpm
    EXPECT_NEAR(power_at(car, 1, 5.0), 0.5 * car.power_w, 1e-6);
}

} // namespace
} // namespace truth
