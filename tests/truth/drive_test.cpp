// SPDX-License-Identifier: GPL-3.0-or-later
// Drivers and sessions: the same seed gives the same session, another seed another lap, habits stay, a corner below
// its limit stays below it, and a session is driven quickly enough for tests over many seeds.
#include "tests/truth/drive.h"
#include "tests/truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace truth {
namespace {

double max_grip_used(const Session& session, const int lap, const TrackSegment& corner) {
    double most = 0.0;
    for (double s = corner.start_m; s < corner.end_m; s += 1.0) {
        const TruthSample here = session.at_unwrapped(session.track().length_m() * lap + s);
        const double limit = tyre_limit_mps2(session.car(), session.air_density(), here.speed_mps * here.speed_mps);
        most = std::max(most, std::abs(here.a_lat_mps2) / limit);
    }
    return most;
}

TEST(Drive, SameSeedSameSession) {
    const Session a = drive_session(ternbank(), light_aero_hatch(), {}, {}, 5);
    const Session b = drive_session(ternbank(), light_aero_hatch(), {}, {}, 5);
    const Session c = drive_session(ternbank(), light_aero_hatch(), {}, {}, 6);
    EXPECT_EQ(a.lap(3).time_s(), b.lap(3).time_s());
    EXPECT_EQ(a.at_time(200.0).x_m, b.at_time(200.0).x_m);
    EXPECT_NE(a.lap(3).time_s(), c.lap(3).time_s());
}

TEST(Drive, LapsSpreadLikeAGoodDriversLaps) {
    SessionPlan plan;
    plan.flying_laps = 20;
    const Session session = drive_session(ternbank(), light_aero_hatch(), {}, plan, 5);
    double sum = 0.0;
    double squares = 0.0;
    for (int lap = 1; lap <= 20; ++lap)
        sum += session.lap(lap).time_s();
    for (int lap = 1; lap <= 20; ++lap)
        squares += std::pow(session.lap(lap).time_s() - sum / 20.0, 2);
    const double sd = std::sqrt(squares / 19.0);
    EXPECT_GT(sd, 0.02);
    EXPECT_LT(sd, 0.3);
}

TEST(Drive, CornersAreDrivenAtTheDriversShare) {
    DriverTruth driver;
    driver.grip_share_lap_sd = 0.0;
    const TrackShape track = ternbank();
    const Session session = drive_session(track, heavy_powerful_coupe(), driver, {}, 8);
    const auto shares = habitual_grip_shares(track, driver);
    const auto corners = track.corners();
    for (std::size_t c = 0; c < corners.size(); ++c) {
        EXPECT_NEAR(max_grip_used(session, 2, corners[c]), shares[c], 0.045) << corners[c].name;
    }
}

TEST(Drive, CornerBelowItsLimitStaysBelowIt) {
    DriverTruth driver;
    driver.corner_factor = {1.0, 0.8};
    const TrackShape track = ternbank();
    const Session held_back = drive_session(track, heavy_powerful_coupe(), driver, {}, 8);
    const Session usual = drive_session(track, heavy_powerful_coupe(), {}, {}, 8);
    const TrackSegment lantern = track.corners()[1];
    EXPECT_LT(max_grip_used(held_back, 2, lantern), 0.84);
    EXPECT_GT(max_grip_used(usual, 2, lantern), 0.90);
    EXPECT_GT(held_back.lap(2).time_s(), usual.lap(2).time_s());
}

TEST(Drive, LineStaysOnTheTrackAndCutsTheCorners) {
    const TrackShape track = ternbank();
    DriverTruth on_centre;
    on_centre.line_half_width_m = 0.0;
    const Session wide = drive_session(track, light_aero_hatch(), {}, {}, 2);
    const Session narrow = drive_session(track, light_aero_hatch(), on_centre, {}, 2);
    EXPECT_LT(wide.lap(2).time_s(), narrow.lap(2).time_s() - 1.0);
}

} // namespace
} // namespace truth
