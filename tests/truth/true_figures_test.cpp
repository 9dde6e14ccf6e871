// SPDX-License-Identifier: GPL-3.0-or-later
// True corner figures against a slow search, and the gap's ends.
#include "tests/truth/true_figures.h"

#include "tests/truth/drive.h"
#include "tests/truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>

namespace truth {
namespace {

TEST(TrueFigures, SlowestPointIsTheSlowestPoint) {
    const Session session = drive_session(ternbank(), heavy_powerful_coupe(), {}, {}, 2);
    for (const TrackSegment& corner : session.track().corners()) {
        const CornerTruth figures = corner_truth(session, 3, corner);
        double slowest = 1e9;
        double at_m = 0.0;
        for (double s = corner.start_m; s < corner.end_m; s += 0.01) {
            if (session.speed_mps(3, s) >= slowest) continue;
            slowest = session.speed_mps(3, s);
            at_m = s;
        }
        EXPECT_NEAR(figures.min_mps, slowest, 1e-4) << corner.name;
        EXPECT_NEAR(figures.min_at_m, at_m, 0.1) << corner.name;
        ASSERT_TRUE(figures.brake_at_m.has_value()) << corner.name;
        EXPECT_LT(*figures.brake_at_m, figures.min_at_m);
        ASSERT_TRUE(figures.full_throttle_at_m.has_value()) << corner.name;
        EXPECT_GT(*figures.full_throttle_at_m, figures.min_at_m);
    }
}

TEST(TrueFigures, CarThatIsFlatDoesNotBrake) {
    const Session session = drive_session(ternbank(), light_aero_hatch(), {}, {}, 2);
    EXPECT_FALSE(corner_truth(session, 3, session.track().corners()[1]).brake_at_m.has_value());
}

TEST(TrueFigures, GapStartsAtNothingAndEndsAtTheLapTimes) {
    const Session a = drive_session(ternbank(), light_aero_hatch(), {}, {}, 2);
    const Session b = drive_session(ternbank(), heavy_powerful_coupe(), {}, {}, 3);
    EXPECT_NEAR(true_gap_s(a, 2, b, 3, 0.0), 0.0, 1e-10);
    EXPECT_NEAR(true_gap_s(a, 2, b, 3, a.track().length_m()), b.lap(3).time_s() - a.lap(2).time_s(), 1e-10);
}

} // namespace
} // namespace truth
