// SPDX-License-Identifier: GPL-3.0-or-later
// From two recordings without noise to the causes: both cars
// found, rows exact, one car has no causes, cancelled when asked.
#include "core/analysis/explain.h"
#include "core/analysis/run.h"

#include "core/math/statistics.h"
#include "support/recording_of.h"
#include "truth/drive.h"
#include "truth/logger.h"
#include "truth/track_catalogue.h"

#include <gtest/gtest.h>

#include <cmath>
#include <tuple>

using namespace lapwright;

namespace {

truth::DriverTruth driver_of(std::uint64_t seed) {
    truth::DriverTruth driver;
    driver.style_seed = seed;
    return driver;
}

std::shared_ptr<const analysis::Session> session(const truth::CarTruth& car, std::uint64_t seed) {
    truth::SessionPlan plan;
    plan.flying_laps = 5;
    plan.air_density = 1.2;
    const truth::Session driven = truth::drive_session(truth::ternbank(), car, driver_of(seed), plan, seed);
    analysis::SessionOptions options;
    options.motion.draws = 2;
    auto understood = analysis::understand(
        test::recording_of(truth::log_session(driven, truth::perfect_logger(25.0), seed), "session"), options);
    EXPECT_TRUE(understood.ok());
    return std::move(understood).value();
}

std::shared_ptr<const analysis::Pairing> pairing(const std::shared_ptr<const analysis::Session>& a,
                                                 const std::shared_ptr<const analysis::Session>& b,
                                                 const analysis::PairingOptions& options = {}) {
    auto compared = analysis::compare(a, b, options);
    EXPECT_TRUE(compared.ok());
    return std::move(compared).value();
}

analysis::CausesOptions options_of(const truth::CarTruth& a, const truth::CarTruth& b) {
    analysis::CausesOptions options;
    options.setup_a.mass = car::Mass{a.mass_kg, 5.0};
    options.setup_b.mass = car::Mass{b.mass_kg, 5.0};
    options.setup_a.conditions = {293.15, 101325.0, 0.5, std::nullopt}; // 1.1993 kg/m³
    options.setup_b.conditions = options.setup_a.conditions;
    options.draws = 100;
    return options;
}

} // namespace

TEST(ExplainPairing, FindsBothCars) {
    const truth::CarTruth hatch = truth::light_aero_hatch();
    const truth::CarTruth coupe = truth::heavy_powerful_coupe();
    const auto both = pairing(session(hatch, 11), session(coupe, 12));
    const auto result = analysis::explain(*both, options_of(hatch, coupe));
    ASSERT_TRUE(result.ok()) << base::one_line(result.error());
    const causes::Explanation& e = **result;
    for (const auto& [figures, car, seed] : {std::tuple(&e.car_a, &hatch, 11U), std::tuple(&e.car_b, &coupe, 12U)}) {
        EXPECT_NEAR(figures->power_w->value, car->power_w, 0.03 * car->power_w);
        EXPECT_NEAR(figures->drag_area_m2->value, car->drag_area_m2, 0.1 * car->drag_area_m2);
        // What the laps show; how much of the tyres a driver uses they cannot (intervals: tests/core/car).
        const double used = car->mu * math::mean(truth::habitual_grip_shares(truth::ternbank(), driver_of(seed)));
        EXPECT_NEAR(figures->grip_as_used.value, used, 0.04 * used);
    }
    double gap = 0.0;
    for (const causes::SegmentRow& s : e.segments) {
        double sum = s.row.driver_and_rest.value;
        for (const causes::Seconds& cause : s.row.causes)
            sum += cause.value;
        EXPECT_NEAR(sum, s.row.gain.value, 1e-9);
        gap += s.row.gain.value;
    }
    EXPECT_NEAR(gap, both->comparison.gap_at_end_s.value, 1e-9);
    EXPECT_GT(e.total.of(causes::Cause::downforce).low, 0.0);
    EXPECT_LT(e.total.of(causes::Cause::power).high, 0.0);
}

TEST(ExplainPairing, TwoLapsOfOneSessionAreOfOneCar) {
    const truth::CarTruth hatch = truth::light_aero_hatch();
    const auto one = session(hatch, 11);
    analysis::PairingOptions two_laps;
    two_laps.lap_a = 2;
    two_laps.lap_b = 3;
    const auto result = analysis::explain(*pairing(one, one, two_laps), options_of(hatch, hatch));
    ASSERT_TRUE(result.ok());
    EXPECT_TRUE((*result)->same_car);
    for (const causes::Cause cause : causes::all_causes) {
        EXPECT_NEAR((*result)->total.of(cause).value, 0.0, 1e-9);
        EXPECT_NEAR((*result)->total.of(cause).half_width(), 0.0, 1e-9);
    }
    EXPECT_NEAR((*result)->total.driver_and_rest.value, (*result)->total.gain.value, 1e-9);
    const auto cancelled =
        analysis::explain(*pairing(one, one, two_laps), {}, [](std::string_view, double) { return false; });
    ASSERT_FALSE(cancelled.ok());
    EXPECT_EQ(cancelled.error().code, base::ErrorCode::cancelled);
}
