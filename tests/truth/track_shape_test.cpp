// SPDX-License-Identifier: GPL-3.0-or-later
// Tracks against closed forms: circle, stadium, ellipse (Ramanujan's perimeter, checks.md A3), the turning number, and
// the invented circuit's closure, smoothness and projection.
#include "tests/truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numbers>
#include <string>

namespace truth {
namespace {

constexpr double kPi = std::numbers::pi;

TEST(TrackShape, CircleIsExact) {
    const TrackShape track = circle(100.0);
    EXPECT_NEAR(track.length_m(), 200.0 * kPi, 1e-12);
    for (double s = 0.0; s < track.length_m(); s += 7.3) {
        const TrackPoint p = track.at(s);
        EXPECT_NEAR(p.x_m, 100.0 * std::cos(s / 100.0), 1e-9);
        EXPECT_NEAR(p.y_m, 100.0 * std::sin(s / 100.0), 1e-9);
        EXPECT_DOUBLE_EQ(p.bend.curvature_per_m, 0.01);
    }
}

TEST(TrackShape, EllipseHasItsPerimeterAndCurvatures) {
    const TrackShape track = ellipse(150.0, 100.0);
    EXPECT_NEAR(track.length_m(), 793.271979, 1e-6); // checks.md A3
    EXPECT_LT(track.closure_error_m(), 1e-6);
    EXPECT_NEAR(track.turned_rad(), 2.0 * kPi, 1e-9);
    EXPECT_NEAR(track.bend(0.0).curvature_per_m, 0.0150, 1e-12);                            // a / b^2
    EXPECT_NEAR(track.bend(track.length_m() / 4.0).curvature_per_m, 100.0 / 22500.0, 1e-9); // b / a^2
    for (double s = 0.0; s < track.length_m(); s += 3.1) {
        const TrackPoint p = track.at(s);
        EXPECT_NEAR(std::pow(p.x_m / 150.0, 2) + std::pow(p.y_m / 100.0, 2), 1.0, 1e-8);
    }
}

TEST(TrackShape, FigureEightCrossesItselfAndTurnsByNothing) {
    const TrackShape track = figure_eight(1200.0);
    EXPECT_LT(track.closure_error_m(), 1e-6);
    EXPECT_NEAR(track.turned_rad(), 0.0, 1e-12);
    const TrackPoint a = track.at(300.0);
    const TrackPoint b = track.at(900.0);
    EXPECT_LT(std::hypot(a.x_m - b.x_m, a.y_m - b.y_m), 1200.0 / 2.0);
}

TEST(TrackShape, StadiumClosesAndNamesItsParts) {
    const TrackShape track = stadium(500.0, 50.0);
    EXPECT_NEAR(track.length_m(), 1314.159265, 1e-6); // checks.md B2
    EXPECT_LT(track.closure_error_m(), 1e-9);
    EXPECT_EQ(track.corners().size(), 2U);
}

TEST(BuildCircuit, ClothoidsCloseToo) {
    CircuitPlan plan;
    plan.name = "triangle";
    plan.first_straight_m = 100.0;
    plan.length_m = 1500.0;
    plan.clothoids = true;
    plan.corners = {{"one", 120.0, 60.0, 30.0, 300.0, "after one"},
                    {"two", 100.0, 40.0, 20.0, 350.0, "after two"},
                    {"three", 140.0, 50.0, 25.0, 150.0, "after three"}};
    const TrackShape track = build_circuit(plan);
    EXPECT_LT(track.closure_error_m(), 1e-9);
    EXPECT_NEAR(track.length_m(), 1500.0, 1e-9);
    const double start = track.corners().front().start_m;
    EXPECT_NEAR(track.bend(start + 15.0).curvature_per_m, 0.5 / 60.0, 1e-12); // half way in: half the curvature
    EXPECT_NEAR(track.bend(start + 10.0).curvature_rate_per_m2, 1.0 / (60.0 * 30.0), 1e-12);
}

TEST(Ternbank, ClosesExactly) {
    const TrackShape track = ternbank();
    EXPECT_NEAR(track.length_m(), 3860.0, 1e-9);
    EXPECT_LT(track.closure_error_m(), 1e-9);
    EXPECT_NEAR(track.turned_rad(), 2.0 * kPi, 1e-12);
}

TEST(Ternbank, SegmentsCoverTheLapAndCurvatureLivesInTheCorners) {
    const TrackShape track = ternbank();
    EXPECT_EQ(track.corners().size(), 9U);
    double reached = 0.0;
    for (const TrackSegment& segment : track.segments()) {
        EXPECT_DOUBLE_EQ(segment.start_m, reached);
        reached = segment.end_m;
        const double middle = std::abs(track.bend((segment.start_m + segment.end_m) / 2.0).curvature_per_m);
        if (segment.is_corner) {
            EXPECT_GT(middle, 1.0 / 400.0) << segment.name;
        } else {
            EXPECT_EQ(middle, 0.0) << segment.name;
        }
    }
    EXPECT_DOUBLE_EQ(reached, track.length_m());
}

TEST(Ternbank, HeadingAndCurvatureAreDerivativesOfThePosition) {
    const TrackShape track = ternbank();
    const double h = 0.01;
    double steepest = 0.0;
    for (double s = 1.0; s < track.length_m(); s += 1.7) {
        const TrackPoint before = track.at(s - h);
        const TrackPoint here = track.at(s);
        const TrackPoint after = track.at(s + h);
        EXPECT_NEAR((after.x_m - before.x_m) / (2.0 * h), std::cos(here.bend.heading_rad), 1e-6);
        EXPECT_NEAR((after.y_m - before.y_m) / (2.0 * h), std::sin(here.bend.heading_rad), 1e-6);
        const double turned = after.bend.heading_rad - before.bend.heading_rad;
        EXPECT_NEAR(turned / (2.0 * h), here.bend.curvature_per_m, 1e-6);
        steepest = std::max(steepest, std::abs(after.bend.curvature_per_m - before.bend.curvature_per_m) / (2.0 * h));
    }
    EXPECT_LT(steepest, 0.01); // a jump of curvature would show as 0.5 or more
}

TEST(Ternbank, ProjectionFindsTheStationAgain) {
    const TrackShape track = ternbank();
    for (double s = 0.5; s < track.length_m(); s += 11.0) {
        for (const double n : {-7.0, 0.0, 4.0}) {
            const TrackPoint p = track.at(s);
            const double x = p.x_m - n * std::sin(p.bend.heading_rad);
            const double y = p.y_m + n * std::cos(p.bend.heading_rad);
            const TrackPlace global = track.project(x, y);
            EXPECT_NEAR(global.station_m, s, 1e-9);
            EXPECT_NEAR(global.offset_m, n, 1e-9);
            EXPECT_NEAR(track.project(x, y, s + 4.0).station_m, s, 1e-9);
        }
    }
}

TEST(Ternbank, LegsOfTheTrackStayApart) {
    const TrackShape track = ternbank();
    for (double s = 0.0; s < track.length_m(); s += 10.0) {
        const TrackPoint a = track.at(s);
        for (double ahead = 150.0; ahead < track.length_m() - 150.0; ahead += 10.0) {
            const TrackPoint b = track.at(s + ahead);
            EXPECT_GT(std::hypot(a.x_m - b.x_m, a.y_m - b.y_m), 25.0) << s << " and " << s + ahead;
        }
    }
}

TEST(Ternbank, HillsAreGentleAndPeriodic) {
    const TrackShape track = ternbank_with_hills();
    EXPECT_NEAR(track.height_m(0.0), track.height_m(track.length_m()), 1e-9);
    double steepest = 0.0;
    for (double s = 0.0; s < track.length_m(); s += 5.0) {
        EXPECT_NEAR((track.height_m(s + 0.5) - track.height_m(s - 0.5)), track.slope(s), 1e-6);
        steepest = std::max(steepest, std::abs(track.slope(s)));
    }
    EXPECT_GT(steepest, 0.005);
    EXPECT_LT(steepest, 0.025);
}

} // namespace
} // namespace truth
