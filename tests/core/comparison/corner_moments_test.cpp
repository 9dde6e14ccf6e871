// SPDX-License-Identifier: GPL-3.0-or-later
// Laps whose lateral acceleration is a formula, so that the place where it passes a fifth of its largest is known.
#include "core/comparison/corner_moments.h"

#include "core/math/random.h"
#include "tests/support/laps.h"

#include <cmath>
#include <gtest/gtest.h>
#include <numbers>

namespace lapwright::comparison {
namespace {

struct Corner {
    double starts_m = 300.0; // the car begins to turn
    double half_m = 80.0;    // and is pushed hardest so much later
    double peak_mps2 = 12.0; // to the left
};

// A hump of a raised cosine.
lap::LapTrace driven(const Corner& corner) {
    lap::LapTrace trace = test::lap_from_speed(1000.0, [](double) { return 40.0; });
    for (std::size_t i = 0; i < trace.size(); ++i) {
        const double phase = (trace.distance_m[i] - corner.starts_m) / corner.half_m;
        if (phase > 0.0 && phase < 2.0)
            trace.lateral_mps2[i] = 0.5 * corner.peak_mps2 * (1.0 - std::cos(std::numbers::pi * phase));
    }
    return trace;
}

// Half of 1 − cos(π·phase) is a fifth at phase acos(0.6)/π.
double true_turn_in_m(const Corner& corner) {
    return corner.starts_m + corner.half_m * std::acos(0.6) / std::numbers::pi;
}

track::Segment segment(double start_m, double end_m) {
    track::Segment made;
    made.kind = track::SegmentKind::corner;
    made.start_m = start_m;
    made.end_m = end_m;
    return made;
}

TEST(CornerMoments, TurnedInWhereAFifthOfTheLargestIsPassed) {
    math::Random random(11);
    for (int i = 0; i < 200; ++i) {
        Corner corner;
        corner.starts_m = 100.0 + 500.0 * random.uniform();
        corner.half_m = 20.0 + 100.0 * random.uniform();
        corner.peak_mps2 = (random.uniform() < 0.5 ? -1.0 : 1.0) * (3.0 + 15.0 * random.uniform());
        // The segment begins behind the place where the car is turned in, as segments do.
        const auto moments = corner_moments(
            segment(corner.starts_m + 0.5 * corner.half_m, corner.starts_m + 1.6 * corner.half_m), {}, driven(corner));
        ASSERT_TRUE(moments.turn_in_m);
        EXPECT_NEAR(*moments.turn_in_m, true_turn_in_m(corner), 1.0); // of a grid of 1 m
    }
}

TEST(CornerMoments, TheOtherHandBeforeItIsAnotherCorner) {
    lap::LapTrace trace = driven({500.0, 80.0, 10.0});
    const lap::LapTrace before = driven({300.0, 100.0, -14.0}); // turns the other way up to 500 m
    for (std::size_t i = 0; i < trace.size(); ++i)
        trace.lateral_mps2[i] += before.lateral_mps2[i];
    const auto moments = corner_moments(segment(510.0, 640.0), {}, trace);
    ASSERT_TRUE(moments.turn_in_m);
    EXPECT_NEAR(*moments.turn_in_m, true_turn_in_m({500.0, 80.0, 10.0}), 1.0);
}

TEST(CornerMoments, SlowestAndThrottleAreThoseOfTheFigures) {
    SegmentFigures figures;
    figures.min_speed_at_m = Figure{380.0, 1.0};
    figures.full_throttle_m = Figure{430.0, {}};
    const auto moments = corner_moments(segment(310.0, 440.0), figures, driven({}));
    EXPECT_EQ(moments.slowest_m, 380.0);
    EXPECT_EQ(moments.full_throttle_m, 430.0);
}

TEST(CornerMoments, AbsentWhereTheLapDoesNotTell) {
    lap::LapTrace trace = driven({});
    const auto straight_on = corner_moments(segment(600.0, 700.0), {}, trace); // nothing pushes there
    EXPECT_FALSE(straight_on.turn_in_m);
    EXPECT_FALSE(straight_on.slowest_m);
    EXPECT_FALSE(straight_on.full_throttle_m);
    trace.lateral_mps2.assign(trace.size(), std::nan(""));
    EXPECT_FALSE(corner_moments(segment(310.0, 440.0), {}, trace).turn_in_m);
}

} // namespace
} // namespace lapwright::comparison
