// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/local_frame.h"

#include "core/motion/recorded_drive.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lapwright::motion {
namespace {

using test::degree_rad;

double from_dms(double degrees, double minutes, double seconds) {
    return (degrees + minutes / 60.0 + seconds / 3600.0) * degree_rad;
}

// EPSG Guidance Note 7-2, geographic to topocentric, worked example; given to 1 mm.
TEST(LocalFrame, AgreesWithTheWorkedExampleOfGuidanceNote7Part2) {
    const LocalFrame frame{{55.0 * degree_rad, 5.0 * degree_rad, 200.0}};
    const EastNorthUp local = to_local(frame, {from_dms(53, 48, 33.820), from_dms(2, 7, 46.380), 73.0});
    EXPECT_NEAR(local.east_m, -189013.869, 0.001);
    EXPECT_NEAR(local.north_m, -128642.040, 0.001);
    EXPECT_NEAR(local.up_m, -4220.171, 0.001);
}

TEST(LocalFrame, ComesBackToWhereItStarted) {
    const LocalFrame frame{{-33.9 * degree_rad, 151.2 * degree_rad, 40.0}};
    const Geodetic point = to_geodetic(frame, {1234.5, -987.6, 3.2});
    const EastNorthUp local = to_local(frame, point);
    EXPECT_NEAR(local.east_m, 1234.5, 1e-8);
    EXPECT_NEAR(local.north_m, -987.6, 1e-8);
    EXPECT_NEAR(local.up_m, 3.2, 1e-8);
}

// Radii of curvature of WGS 84 at 52 degrees north, computed here from the ellipsoid's definition (a, 1/f).
TEST(LocalFrame, HasTheEllipsoidsScaleAt52North) {
    const double a = 6378137.0;
    const double f = 1.0 / 298.257223563;
    const double e2 = f * (2.0 - f);
    const double w = std::sqrt(1.0 - e2 * std::pow(std::sin(52.0 * degree_rad), 2));
    const double north_per_degree = a * (1.0 - e2) / std::pow(w, 3) * degree_rad;
    const double east_per_degree = a / w * std::cos(52.0 * degree_rad) * degree_rad;
    EXPECT_NEAR(north_per_degree, 111267.353, 0.001); // the rounded values of the collected facts
    EXPECT_NEAR(east_per_degree, 68678.016, 0.001);
    const LocalFrame frame{{52.0 * degree_rad, 0.0, 0.0}};
    const double small_deg = 1e-4;
    EXPECT_NEAR(to_local(frame, {(52.0 + small_deg) * degree_rad, 0.0, 0.0}).north_m / small_deg, north_per_degree,
                0.01);
    EXPECT_NEAR(to_local(frame, {52.0 * degree_rad, small_deg * degree_rad, 0.0}).east_m / small_deg, east_per_degree,
                0.01);
}

// Short line of GeographicLib's tests (Karney 2013): 0.072 m within 0.5 mm.
TEST(LocalFrame, MeasuresTheShortLineOfThePublishedTests) {
    const LocalFrame frame{{36.493349428792 * degree_rad, 0.0, 0.0}};
    const EastNorthUp local = to_local(frame, {36.49334942879201 * degree_rad, 0.0000008 * degree_rad, 0.0});
    EXPECT_NEAR(std::hypot(local.east_m, local.north_m), 0.072, 0.0005);
}

} // namespace
} // namespace lapwright::motion
