// SPDX-License-Identifier: GPL-3.0-or-later
// Drag where the wind blows, and what the tyres put down out of corners: cars, winds and tracks' directions drawn.
#include "core/car/car_figures.h"

#include "core/car/recovery.h"
#include "core/math/statistics.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>

using namespace lapwright;
using namespace lapwright::car;
using test::Coverage;

namespace {

constexpr std::uint64_t first_seed = 400;

truth::Session driven(const truth::CarTruth& car, double wind_mps, double wind_to, std::uint64_t seed) {
    truth::SessionPlan plan;
    plan.flying_laps = 5;
    plan.air_density = 1.2;
    plan.wind_east_mps = wind_mps * std::cos(wind_to);
    plan.wind_north_mps = wind_mps * std::sin(wind_to);
    return truth::drive_session(truth::ternbank(), car, test::uneven_driver(seed, 0.97), plan, 1000 + seed);
}

} // namespace

TEST(DrivingForce, WindIsNotTakenForDrag) {
    for (const bool pedals : {true, false}) {
        Coverage drag{"drag area"};
        Coverage power{"power"};
        for (std::uint64_t seed = first_seed; seed < first_seed + 12; ++seed) {
            truth::Random random(seed, 1);
            const truth::CarTruth car = seed % 2 == 0 ? truth::light_aero_hatch() : truth::heavy_powerful_coupe();
            test::KnownNoise noise;
            noise.pedals = pedals;
            noise.engine_speed = true;
            const double wind_mps = 2.0 + 3.0 * random.uniform();
            const auto figures =
                car_figures(test::known_data(driven(car, wind_mps, 6.2832 * random.uniform(), seed), noise, seed));
            ASSERT_TRUE(figures.ok());
            drag.add(*figures->drag_area_m2, car.drag_area_m2);
            power.add(*figures->power_w, car.power_w);
        }
        for (const Coverage* c : {&drag, &power}) {
            c->print(pedals ? "windy, with pedals:" : "windy, without:");
            EXPECT_GE(c->inside, 11) << c->name;
        }
        EXPECT_NEAR(drag.bias, 0.0, 0.05);
        EXPECT_LE(drag.half_width, 0.25);
    }
}

TEST(Traction, IsFoundOrBounded) {
    int inside = 0;
    double width = 0.0;
    constexpr int cars = 16;
    for (std::uint64_t seed = first_seed; seed < first_seed + cars; ++seed) {
        truth::Random random(seed, 2);
        truth::CarTruth car = seed % 2 == 0 ? truth::light_aero_hatch() : truth::heavy_powerful_coupe();
        car.traction_share = 0.5 + 0.35 * random.uniform();
        car.power_w *= 0.6 + 0.5 * random.uniform(); // the weaker ones never reach their tyres' limit
        const auto figures = car_figures(test::known_data(driven(car, 0.0, 0.0, seed), {}, seed));
        ASSERT_TRUE(figures.ok());
        std::vector<double> shares;
        for (const CarDraw& draw : figures->draws)
            shares.push_back(draw.car.traction_share);
        const double low = math::quantile(shares, 0.025);
        const double high = math::quantile(shares, 0.975);
        const truth::DriverTruth driver;
        const double truly = car.traction_share * driver.exit_share / driver.grip_share;
        inside += low <= truly && truly <= high ? 1 : 0;
        width += 0.5 * (high - low) / cars;
    }
    std::printf("traction share inside %d of %d, half width %.2f\n", inside, cars, width);
    EXPECT_GE(inside, 14);
    EXPECT_LE(width, 0.2);
}
