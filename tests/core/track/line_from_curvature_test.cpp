// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/line_from_curvature.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <vector>

namespace lapwright::track {
namespace {

TEST(LineFromCurvature, ConstantCurvatureIsACircle) {
    const double radius = 200.0;
    const ReferenceLine line =
        line_from_curvature(std::vector<double>(1256, 1.0 / radius), 2.0 * std::numbers::pi * radius);
    for (const double station : {0.0, 100.0, 700.0, 1200.0}) {
        const Vec2 p = line.position(station);
        EXPECT_NEAR(std::hypot(p.east + radius, p.north), radius, 0.01) << station;
    }
    EXPECT_NEAR(line.tangent_at(0.0).north, 1.0, 1e-4);
}

// A gyro's or an accelerometer's bias turns the sum of angles off: the line closes all the same.
TEST(LineFromCurvature, ClosesInSpiteOfABias) {
    std::vector<double> curvature(1000);
    for (std::size_t i = 0; i < curvature.size(); ++i)
        curvature[i] = 2.0 * std::numbers::pi / 2000.0 + 2e-4 +
                       0.004 * std::sin(6.0 * std::numbers::pi * static_cast<double>(i) / 1000.0);
    const ReferenceLine line = line_from_curvature(curvature, 2000.0);
    const Vec2 before = line.position(1999.0);
    const Vec2 after = line.position(1.0);
    EXPECT_LT(std::hypot(after.east - before.east, after.north - before.north), 2.5);
    EXPECT_EQ(line.curvature(500.0), curvature[250]);
}

// Without any cornering the lap is as long as it is, and every figure is finite.
TEST(LineFromCurvature, WithoutCornersIsACircle) {
    const ReferenceLine line = line_from_curvature(std::vector<double>(500, 0.0), 1000.0);
    EXPECT_NEAR(line.length_m, 1000.0, 1e-9);
    const double radius = 500.0 / std::numbers::pi;
    const Vec2 a = line.position(0.0);
    const Vec2 b = line.position(500.0);
    EXPECT_NEAR(std::hypot(b.east - a.east, b.north - a.north), 2.0 * radius, 0.1);
    for (std::size_t i = 0; i < line.size(); ++i)
        EXPECT_NEAR(std::hypot(line.tangent[i].east, line.tangent[i].north), 1.0, 1e-9);
}

} // namespace
} // namespace lapwright::track
