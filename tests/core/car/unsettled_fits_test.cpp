// SPDX-License-Identifier: GPL-3.0-or-later
// Fits that were stopped before they settled: they say so, and none of their figures is told.
#include "core/car/grip_model.h"
#include "core/car/withhold_figures.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lapwright::car {
namespace {

LimitEvidence few_corners() {
    LimitEvidence evidence;
    for (const double speed : {20.0, 30.0, 40.0}) {
        LimitCorner corner;
        corner.speed_squared = speed * speed;
        corner.log_lateral = std::log(12.0 + 0.004 * speed * speed);
        corner.error = 0.01;
        evidence.corners.push_back(corner);
    }
    return evidence;
}

TEST(GripModel, ChainsThatAreStoppedEarlyHaveNotConverged) {
    const GripPrior prior{0.0013, 0.0017};
    const GripPosterior hasty = fit_grip(few_corners(), prior, 100, 1, 250);
    EXPECT_EQ(hasty.outcome.status, base::FitStatus::not_converged);
    EXPECT_EQ(hasty.outcome.rounds, 250);
    EXPECT_EQ(hasty.outcome.rests_on, 3U);
    EXPECT_FALSE(hasty.convergence.settled());
    EXPECT_TRUE(fit_grip(few_corners(), prior, 100, 1).outcome.converged());
}

// Every figure told, from fits that end as given.
CarFigures figures_of(base::FitStatus corners, base::FitStatus straights) {
    const CarFigure told{{1.0, 0.9, 1.1}};
    CarFigures f;
    f.grip = f.grip_as_used = f.load_exponent = told;
    f.downforce_area_m2_per_kg = f.apparent_downforce_area_m2_per_kg = told;
    f.drag_area_m2_per_kg = f.power_w_per_kg = told;
    f.downforce_area_m2 = f.drag_area_m2 = f.power_w = told;
    f.corner_fit.outcome.status = corners;
    f.straight_fit.status = straights;
    withhold_what_cannot_be_told(f);
    return f;
}

TEST(WithholdFigures, OfFitsThatHaveNotConverged) {
    using enum base::FitStatus;
    const CarFigures all = figures_of(converged, converged);
    EXPECT_TRUE(all.grip.told() && all.downforce_area_m2->told() && all.drag_area_m2->told() && all.power_w->told());
    for (const base::FitStatus unsettled : {not_run, failed, not_converged}) {
        const CarFigures corners = figures_of(unsettled, converged);
        EXPECT_EQ(corners.grip.untold, "the fit of the corners has not settled");
        EXPECT_FALSE(corners.downforce_area_m2->told());
        EXPECT_TRUE(std::isnan(corners.downforce_area_m2->value));
        EXPECT_TRUE(corners.drag_area_m2->told() && corners.power_w_per_kg.told());
        const CarFigures straights = figures_of(converged, unsettled);
        EXPECT_EQ(straights.power_w->untold, "the fit of the straights has not settled");
        EXPECT_FALSE(straights.drag_area_m2->told());
        EXPECT_FALSE(straights.drag_area_m2_per_kg.told() || straights.power_w_per_kg.told());
        EXPECT_TRUE(straights.grip.told() && straights.downforce_area_m2->told());
    }
}

} // namespace
} // namespace lapwright::car
