// SPDX-License-Identifier: GPL-3.0-or-later
// Curvature and length of known curves: circle 1/R; ellipse 150 × 100 m: largest curvature a/b² = 0.0150 1/m, smallest
// b/a² = 0.0044444 1/m, perimeter 793.271979 m (Ramanujan's second formula; the curve is a published case of Lenzo and
// Rossi 2020, Appl. Sci. 10(4):1498).
#include "core/track/build_line.h"
#include "core/track/projection.h"
#include "support/shapes.h"

#include <algorithm>
#include <gtest/gtest.h>
#include <random>

using namespace lapwright;
using namespace lapwright::track;

TEST(ReferenceLine, CircleHasItsCurvatureAndLength) {
    const auto line = line_through(test::ellipse_points(100.0, 100.0, 400), 1.0);
    EXPECT_NEAR(line.length_m, 200.0 * test::pi, 0.02);
    for (const double k : line.curvature_per_m)
        EXPECT_NEAR(k, 0.01, 1e-5);
}

TEST(ReferenceLine, EllipseHasItsCurvatureAndPerimeter) {
    const auto line = line_through(test::ellipse_points(150.0, 100.0, 1600), 0.5, 10.0);
    EXPECT_NEAR(line.length_m, 793.271979, 0.01);
    const auto [least, most] = std::ranges::minmax(line.curvature_per_m);
    EXPECT_NEAR(most, 0.0150, 0.0150 * 2e-3);
    EXPECT_NEAR(least, 0.0044444, 0.0044444 * 2e-3);
}

TEST(ReferenceLine, NodesAreEvenAndTheTangentIsTheDerivative) {
    const auto line = line_through(test::ellipse_points(150.0, 100.0, 900), 1.0);
    for (double s = 0.3; s < line.length_m; s += 13.7) {
        const Vec2 a = line.position(s - 0.01);
        const Vec2 b = line.position(s + 0.01);
        EXPECT_NEAR(std::hypot(b.east - a.east, b.north - a.north), 0.02, 2e-6);
        const Vec2 t = line.tangent_at(s);
        EXPECT_NEAR((b.east - a.east) / 0.02, t.east, 1e-4);
        EXPECT_NEAR((b.north - a.north) / 0.02, t.north, 1e-4);
    }
    EXPECT_NEAR(line.position(-5.0).east, line.position(line.length_m - 5.0).east, 1e-9);
}

// A constant offset n to the left shortens a left-hand lap by 2πn (Hopf's Umlaufsatz): 1 m, 6.283 m.
TEST(ReferenceLine, ALapOnTheInsideIsShorterByTwoPiTimesItsOffset) {
    const auto outer = line_through(test::ellipse_points(100.0, 100.0, 800), 1.0);
    const auto inner = line_through(test::ellipse_points(99.0, 99.0, 800), 1.0);
    EXPECT_NEAR(outer.length_m - inner.length_m, 6.283, 0.002);
}

// The slow obvious way against the fast one: the nearest of very many points.
TEST(Projection, AgreesWithBruteForce) {
    const auto line = line_through(test::ellipse_points(150.0, 100.0, 900), 1.0);
    std::mt19937_64 random(7);
    std::uniform_real_distribution<double> station(0.0, line.length_m);
    std::uniform_real_distribution<double> offset(-8.0, 8.0);
    for (int i = 0; i < 200; ++i) {
        const double s = station(random);
        const double n = offset(random);
        const Vec2 r = line.position(s);
        const Vec2 t = line.tangent_at(s);
        const Vec2 p{r.east - n * t.north, r.north + n * t.east};
        const auto near = project_near(line, p, s + 6.0 * offset(random) / 8.0, 12.0);
        ASSERT_TRUE(near);
        EXPECT_NEAR(near->station_m, s, 1e-4);
        EXPECT_NEAR(near->offset_m, n, 1e-6);
        const auto anywhere = project_anywhere(line, p);
        EXPECT_NEAR(std::remainder(anywhere.station_m - s, line.length_m), 0.0, 1e-4);
        double best = 1e9;
        double best_at = 0.0;
        for (double q = 0.0; q < line.length_m; q += 0.05) {
            const Vec2 c = line.position(q);
            const double d = std::hypot(c.east - p.east, c.north - p.north);
            if (d < best) best_at = q;
            best = std::min(best, d);
        }
        EXPECT_NEAR(std::remainder(best_at - s, line.length_m), 0.0, 0.06);
        EXPECT_GE(best, std::abs(n) - 1e-6);
        EXPECT_LE(best, std::hypot(n, 0.026)); // brute force knows the foot to half its step
    }
}

TEST(Projection, IsFollowedThroughACrossing) {
    // A figure of eight crosses itself at the origin: the hint decides which leg is meant.
    std::vector<Vec2> points;
    for (int i = 0; i < 1200; ++i) {
        const double phi = 2.0 * test::pi * i / 1200.0;
        points.push_back({200.0 * std::sin(phi), 100.0 * std::sin(2.0 * phi)});
    }
    const auto line = line_through(points, 1.0);
    const auto first = project_near(line, {0.0, 0.0}, 2.0, 20.0);
    const auto second = project_near(line, {0.0, 0.0}, 0.5 * line.length_m + 2.0, 20.0);
    ASSERT_TRUE(first && second);
    EXPECT_NEAR(second->station_m - first->station_m, 0.5 * line.length_m, 0.5);
}

TEST(BuildLine, LiesInTheMiddleOfTheLapsAndClosesOverDrift) {
    // Three drives round concentric circles; the third drifts outwards by 0.6 m over its lap.
    std::vector<motion::Path> drives;
    for (const double radius : {99.0, 100.0, 101.0})
        drives.push_back(test::circle_drive(radius, 20.0, 25.0, 80.0, -0.5));
    for (std::size_t i = 0; i < drives[2].size(); ++i) {
        const double stretch = 1.0 + 0.006 * static_cast<double>(i) / static_cast<double>(drives[2].size());
        drives[2].position_m[i].east *= stretch;
        drives[2].position_m[i].north *= stretch;
    }
    const Gate gate{{100.0, 0.0}, test::pi / 2.0, 20.0};
    std::vector<Stretch> laps;
    for (const auto& drive : drives) {
        const double omega = drive.velocity_mps[0].east == 0.0
                                 ? 0.0
                                 : 20.0 / std::hypot(drive.position_m[0].east, drive.position_m[0].north);
        laps.push_back({&drive, 0.5 / omega, (0.5 + 2.0 * test::pi) / omega});
    }
    const auto line = build_line(laps, gate);
    ASSERT_TRUE(line);
    EXPECT_NEAR(line->length_m, 200.0 * test::pi, 1.0);
    EXPECT_NEAR(line->position(0.0).north, 0.0, 0.05);
    for (const double k : line->curvature_per_m)
        EXPECT_NEAR(k, 0.01, 6e-4);
}
