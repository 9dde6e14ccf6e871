// SPDX-License-Identifier: GPL-3.0-or-later
// The Shapley split of the stadium lap against the closed form in checks.md B2: (1200 kg, 200 kW, mu 1.00) to
// (1150 kg, 220 kW, mu 1.05) is worth mass -0.183414, power -0.410742, grip -0.602391 s; and its sums.
#include "tests/truth/true_causes.h"

#include "tests/truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace truth {
namespace {

CarTruth bare_car(const double mass_kg, const double power_w, const double mu) {
    CarTruth car;
    car.mass_kg = mass_kg;
    car.mu = mu;
    car.power_w = power_w;
    car.downforce_area_m2 = 0.0;
    car.drag_area_m2 = 0.0;
    car.rolling_resistance = 0.0;
    car.rotating_share = 0.0;
    car.brake_efficiency = 1.0;
    car.traction_share = 1.0;
    car.gear_top_mps = {500.0};
    return car;
}

DriverTruth perfect_driver() {
    DriverTruth driver;
    driver.grip_share = 0.995;
    driver.brake_share = 0.99;
    driver.grip_share_habit_sd = 0.0;
    driver.brake_share_habit_sd = 0.0;
    driver.exit_share = 1.0;
    driver.line_half_width_m = 0.0;
    driver.line_habit_sd_m = 0.0;
    driver.coast_s = 0.0;
    driver.throttle_ramp_s = 0.0;
    driver.response_s = 0.0;
    return driver;
}

TEST(TrueCauses, StadiumSplitIsThePublishedOne) {
    CarTruth a = bare_car(1200.0, 200e3, 1.00 / 0.995); // the driver's shares give the published mu
    CarTruth b = bare_car(1150.0, 220e3, 1.05 / 0.995);
    a.brake_efficiency = 0.995 / 0.99;
    b.brake_efficiency = 0.995 / 0.99;
    const TrueCauses causes = true_causes(stadium(500.0, 50.0), a, b, perfect_driver(), 1.2, 0.25);
    EXPECT_NEAR(causes.gain_s, -1.196547, 2e-3);
    EXPECT_NEAR(causes.total[0], -0.602391, 2e-3);
    EXPECT_NEAR(causes.total[1], 0.0, 1e-12);
    EXPECT_NEAR(causes.total[2], 0.0, 1e-12);
    EXPECT_NEAR(causes.total[3], -0.410742, 2e-3);
    EXPECT_NEAR(causes.total[4], -0.183414, 2e-3);
}

TEST(TrueCauses, AddUpPerSegmentAndHaveTheRightSigns) {
    const TrueCauses causes = true_causes(ternbank(), light_aero_hatch(), heavy_powerful_coupe(), {}, 1.2);
    for (std::size_t i = 0; i < causes.segments.size(); ++i) {
        const double sum = std::accumulate(causes.segments[i].begin(), causes.segments[i].end(), 0.0);
        EXPECT_NEAR(sum, causes.segment_gain_s[i], 1e-9);
    }
    EXPECT_LT(causes.total[0], 0.0); // the coupe's tyres are better
    EXPECT_GT(causes.total[1], 1.0); // the hatch's downforce
    EXPECT_LT(causes.total[2], 0.0); // and its drag
    EXPECT_LT(causes.total[3], 0.0); // the coupe's power
    EXPECT_GT(causes.total[4], 0.0); // and its mass
}

} // namespace
} // namespace truth
