// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing a track wants: what is predicted against cars that are driven again with more wing, and the ends of
// what drag may cost.  Cars and drivers are drawn from a seed, and invented.
#include "core/causes/aero_balance.h"
#include "core/causes/what_if.h"

#include "core/causes/known_car.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright;
using namespace lapwright::causes;
using namespace lapwright::test;

TEST(AeroBalance, WhatMoreWingIsWorthIsWhatItIsWhenItIsDriven) {
    constexpr int worlds = 14;
    constexpr double cost = 0.16;
    Tally tally;
    for (std::uint64_t seed = 1000; seed < 1000 + worlds; ++seed) {
        truth::Random random(seed, 3);
        truth::CarTruth car = test::drawn_car(random);
        car.downforce_area_m2 = std::max(0.5, car.downforce_area_m2);
        const truth::Session now = driven(car, seed);
        const Known one = known(now, seed);
        const AeroBalance balance = aero_balance(*one.model, one.figures, {cost, 0.0});
        ASSERT_EQ(balance.untold, "") << seed;
        const AeroStep& more = step_at(balance, 0.75);
        const double truly = mean_lap_s(driven(with_wing(car, 0.75, cost), seed)) - mean_lap_s(now);
        tally.add(more.lap, truly);
    }
    tally.print("0.75 m² more");
    EXPECT_GE(tally.inside, 12);
    EXPECT_LT(tally.half_width(), 3.0 * tally.rms());
}

TEST(AeroBalance, WhatDragCostsSaysHowMuchWing) {
    truth::Random random(920, 3);
    truth::CarTruth car = test::drawn_car(random);
    car.downforce_area_m2 = 1.6;
    const Known one = known(driven(car, 920), 920);
    const AeroBalance free = aero_balance(*one.model, one.figures, {0.02, 0.0});
    EXPECT_TRUE(free.at_the_end);
    EXPECT_GT(free.best_m2.value, 1.7) << "wing that costs nothing is good everywhere";
    const AeroBalance dear = aero_balance(*one.model, one.figures, {2.5, 0.0});
    EXPECT_LT(dear.best_m2.value, free.best_m2.value);
    EXPECT_LT(dear.best_m2.value, 0.0);
    for (const AeroBalance* balance : {&free, &dear}) {
        EXPECT_EQ(step_at(*balance, 0.0).lap.value, 0.0);
        EXPECT_LE(balance->flat_from_m2, balance->flat_to_m2);
        EXPECT_LE(balance->gain.value, 0.0);
    }
    const AeroBalance unsure = aero_balance(*one.model, one.figures, {0.15, 0.1});
    const AeroBalance sure = aero_balance(*one.model, one.figures, {0.15, 0.0});
    EXPECT_GT(step_at(unsure, 1.5).lap.half_width(), step_at(sure, 1.5).lap.half_width());
}

// The same as a what-if with both figures moved by as much.
TEST(AeroBalance, AStepIsAWhatIf) {
    truth::Random random(921, 3);
    const Known one = known(driven(test::drawn_car(random), 921), 921);
    CarModel single = *one.model;
    single.draws.resize(1);
    const double per_area = 0.5 * one.figures.typical.density_kg_m3;
    const car::SimulatedCar& car = single.draws[0];
    const Prediction predicted = what_if(single, {.downforce_share = per_area * 0.5 / car.downforce_n_per_mps2,
                                                  .drag_share = per_area * 0.5 * 0.2 / car.drag_n_per_mps2});
    EXPECT_NEAR(step_at(aero_balance(single, one.figures, {0.2, 0.0}), 0.5).lap.value, predicted.lap.value, 1e-9);
}

TEST(AeroBalance, WithoutAMassAreasAreOnATonne) {
    truth::Random random(922, 3);
    const truth::CarTruth car = test::drawn_car(random);
    const truth::Session session = driven(car, 922);
    const Known with = known(session, 922);
    const Known without = known(session, 922, false);
    const double lap = step_at(aero_balance(*with.model, with.figures, {0.15, 0.0}), 0.5).lap.value;
    const double tonne = step_at(aero_balance(*without.model, without.figures, {0.15, 0.0}), 0.5).lap.value;
    EXPECT_NEAR(tonne, lap * car.mass_kg / 1000.0, 0.1 * std::abs(lap) + 0.01);
}

TEST(AeroBalance, WhatIsNotKnownIsNotSwept) {
    CarModel none;
    none.untold[static_cast<std::size_t>(Cause::drag)] = "the laps do not tell the drag";
    const AeroBalance balance = aero_balance(none, {});
    EXPECT_TRUE(balance.steps.empty());
    EXPECT_EQ(balance.untold, "the laps do not tell the drag");
}
