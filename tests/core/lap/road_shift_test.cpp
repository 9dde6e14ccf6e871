// SPDX-License-Identifier: GPL-3.0-or-later
// A known shift under habits of drawn smoothness, on drawn
// roads: how near it is found, and whether its spread is honest.
#include "core/lap/road_shift.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <limits>
#include <numbers>
#include <random>

namespace lapwright::lap {
namespace {

using Eigen::Vector2d;

constexpr std::size_t cells = 180;
constexpr double cell_m = 20.0;
constexpr double turn = 2.0 * std::numbers::pi;

// Corners of drawn sharpness that turn once round in all.
std::vector<Vector2d> drawn_road(std::mt19937_64& engine) {
    std::uniform_real_distribution<double> even(0.0, 1.0);
    std::vector<double> bend(cells, 0.0);
    double sum = 0.0;
    for (int corner = 0; corner < 11; ++corner) {
        const double angle = (even(engine) < 0.3 ? -1.0 : 1.0) * (0.4 + 2.0 * even(engine));
        const auto at = static_cast<std::size_t>(even(engine) * cells);
        const auto length = 2 + static_cast<std::size_t>(6.0 * even(engine));
        for (std::size_t i = 0; i < length; ++i)
            bend[(at + i) % cells] += angle / static_cast<double>(length);
        sum += angle;
    }
    std::vector<Vector2d> normals;
    double heading = turn * even(engine);
    for (const double b : bend) {
        heading += b + (turn - sum) / cells;
        normals.push_back({-std::sin(heading), std::cos(heading)});
    }
    return normals;
}

// White noise blurred over `length_m`, with a standard deviation of sd_m.
std::vector<double> drawn_habit(std::mt19937_64& engine, double length_m, double sd_m) {
    std::normal_distribution<double> normal;
    std::vector<double> white(cells);
    for (double& value : white)
        value = normal(engine);
    std::vector<double> habit(cells, 0.0);
    double squares = 0.0;
    for (std::size_t i = 0; i < cells; ++i) {
        for (std::size_t j = 0; j < cells; ++j) {
            const auto apart = static_cast<double>(std::min((i + cells - j) % cells, (j + cells - i) % cells));
            habit[i] += white[j] * std::exp(-0.5 * std::pow(apart * cell_m / length_m, 2));
        }
        squares += habit[i] * habit[i];
    }
    for (double& value : habit)
        value *= sd_m / std::sqrt(squares / cells);
    return habit;
}

Vector2d plain_least_squares(const std::vector<Vector2d>& normals, const std::vector<double>& offsets) {
    Eigen::Matrix2d a = Eigen::Matrix2d::Zero();
    Vector2d b = Vector2d::Zero();
    for (std::size_t i = 0; i < cells; ++i) {
        a += normals[i] * normals[i].transpose();
        b += offsets[i] * normals[i];
    }
    return a.inverse() * b;
}

TEST(RoadShift, IsFoundUnderHabitsAndKnowsItsError) {
    double squares = 0.0;
    double plain_squares = 0.0;
    int covered = 0;
    constexpr int draws = 200;
    // Hotelling's T² of two figures with eight degrees of freedom: 2·8/7 times the 95 % quantile of F(2, 7), 4.737.
    constexpr double limit = 2.0 * 8.0 / 7.0 * 4.737;
    for (int seed = 0; seed < draws; ++seed) {
        std::mt19937_64 engine(static_cast<std::uint64_t>(seed) + 900);
        std::uniform_real_distribution<double> even(0.0, 1.0);
        std::normal_distribution<double> normal;
        const auto normals = drawn_road(engine);
        const double length_m = 15.0 * std::pow(5.0, even(engine)); // part of a corner to a complex of them
        std::vector<double> offsets = drawn_habit(engine, length_m, 0.3 + even(engine));
        const Vector2d truth{normal(engine), normal(engine)};
        for (std::size_t i = 0; i < cells; ++i)
            offsets[i] += normals[i].dot(truth) + 0.05 * normal(engine);
        const Shift found = RoadShift(normals, cell_m).of(offsets);
        squares += 0.5 * (found.value - truth).squaredNorm();
        plain_squares += 0.5 * (plain_least_squares(normals, offsets) - truth).squaredNorm();
        if ((found.value - truth).dot(found.covariance.inverse() * (found.value - truth)) < limit) ++covered;
    }
    const double rms = std::sqrt(squares / draws);
    const double plain = std::sqrt(plain_squares / draws);
    std::printf("  shift RMS %.3f m, plain %.3f, inside the 95 %% ellipse %d of %d\n", rms, plain, covered, draws);
    EXPECT_LT(rms, 0.6 * plain);
    EXPECT_GE(covered, 0.90 * draws);
    EXPECT_LE(covered, 0.99 * draws);
}

TEST(RoadShift, IsExactWithoutHabits) {
    std::mt19937_64 engine(3);
    const auto normals = drawn_road(engine);
    std::vector<double> offsets;
    for (const Vector2d& n : normals)
        offsets.push_back(n.dot(Vector2d{0.4, -0.7}));
    const Shift found = RoadShift(normals, cell_m).of(offsets);
    EXPECT_NEAR(found.value[0], 0.4, 1e-9);
    EXPECT_NEAR(found.value[1], -0.7, 1e-9);
    offsets[5] = offsets[6] = offsets[179] = std::numeric_limits<double>::quiet_NaN();
    EXPECT_NEAR(RoadShift(normals, cell_m).of(offsets).value[0], 0.4, 0.02);
}

} // namespace
} // namespace lapwright::lap
