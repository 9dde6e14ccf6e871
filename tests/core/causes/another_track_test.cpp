// SPDX-License-Identifier: GPL-3.0-or-later
// What more wing is worth on a track where the car has never been: predicted from its own session elsewhere and from
// the line that another car took there, against the same driver who drives it there with and without.  Cars, drivers
// and tracks are drawn from a seed, and invented.
#include "core/causes/another_track.h"

#include "core/causes/course.h"
#include "core/causes/known_car.h"
#include "truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <numeric>

using namespace lapwright;
using namespace lapwright::causes;
using namespace lapwright::test;

namespace {

// Eight corners both ways round; the last closes the lap.
truth::TrackShape drawn_circuit(std::uint64_t seed) {
    truth::Random random(seed, 9);
    truth::CircuitPlan plan;
    plan.name = "drawn";
    plan.first_straight_name = "first";
    plan.length_m = 2600.0 + 1200.0 * random.uniform();
    double left_deg = 360.0;
    for (int i = 0; i < 8; ++i) {
        truth::CornerPlan corner;
        corner.name = "corner " + std::to_string(i + 1);
        corner.turn_deg = i == 7 ? left_deg : (i == 3 ? -40.0 : 35.0 + 40.0 * random.uniform());
        left_deg -= corner.turn_deg;
        corner.radius_m = 35.0 + 120.0 * random.uniform();
        corner.straight_after_m = 80.0 + 250.0 * random.uniform();
        corner.straight_name = "straight " + std::to_string(i + 1);
        plan.corners.push_back(corner);
    }
    return truth::build_circuit(plan);
}

TrackCourse driven_course(const truth::Session& session, std::uint64_t seed) {
    const car::CarData data = known_data(session, {}, seed);
    return {course_of(data.laps, data.segments), data.segments};
}

truth::CarTruth drawn_winged_car(std::uint64_t seed) {
    truth::Random random(seed, 3);
    truth::CarTruth car = drawn_car(random);
    car.downforce_area_m2 = std::max(0.5, car.downforce_area_m2);
    return car;
}

} // namespace

TEST(AnotherTrack, WhatWingIsWorthThereIsWhatItIsWhenItIsDriven) {
    constexpr int worlds = 14;
    constexpr double cost = 0.16;
    Tally tally;
    for (std::uint64_t seed = 1200; seed < 1200 + worlds; ++seed) {
        const truth::TrackShape there = drawn_circuit(seed);
        const truth::CarTruth car = drawn_winged_car(seed);
        const Known here = known(driven(car, seed), seed);
        const TrackCourse course = driven_course(driven(drawn_winged_car(seed + 500), seed + 500, there), seed);
        const CarModel moved = on_another_track(*here.model, here.segments, course);
        const AeroBalance balance = aero_balance(moved, here.figures, {cost, 0.0});
        ASSERT_EQ(balance.untold, "") << seed;
        const AeroStep& more = step_at(balance, 0.75);
        const double truly =
            mean_lap_s(driven(with_wing(car, 0.75, cost), seed, there)) - mean_lap_s(driven(car, seed, there));
        tally.add(more.lap, truly);
    }
    tally.print("0.75 m² more");
    EXPECT_GE(tally.inside, 12);
    EXPECT_LT(tally.half_width(), 3.0 * tally.rms());
}

// On its own line it is the car as it was, but that corners take their use from each other.
TEST(AnotherTrack, ItsOwnTrackIsNoOther) {
    const Known here = known(driven(drawn_winged_car(1300), 1300), 1300);
    const CarModel moved = on_another_track(*here.model, here.segments, {here.model->course, here.segments});
    ASSERT_EQ(moved.draws.size(), here.model->draws.size());
    double mean_ratio = 0.0;
    for (std::size_t i = 0; i < moved.draws.size(); ++i) {
        const auto lap = [](const std::vector<double>& segments) {
            return std::accumulate(segments.begin(), segments.end(), 0.0);
        };
        mean_ratio += lap(moved.segment_s[i]) / lap(here.model->segment_s[i]) / static_cast<double>(moved.draws.size());
    }
    EXPECT_NEAR(mean_ratio, 1.0, 0.02);
    EXPECT_NE(moved.segment_s[0], moved.segment_s[1]);
}

TEST(AnotherTrack, WhatIsUntoldStaysUntold) {
    const Known here = known(driven(drawn_winged_car(1301), 1301), 1301);
    CarModel unknown = *here.model;
    unknown.untold[static_cast<std::size_t>(Cause::downforce)] = "corners are too alike";
    const CarModel moved = on_another_track(unknown, here.segments, {here.model->course, here.segments});
    EXPECT_EQ(aero_balance(moved, here.figures).untold, "corners are too alike");
}
