// SPDX-License-Identifier: GPL-3.0-or-later
// Downforce from suspension travel: cars, springs, geometry and the way that travel counts drawn from a seed; and what
// tells nothing is said to.
#include "core/car/suspension.h"

#include "core/car/drawn_recording.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <utility>

using namespace lapwright;
using namespace lapwright::car;
using test::between;
using test::Coverage;

namespace {

struct Drawn {
    truth::CarTruth car;
    CarData data;
};

Drawn drawn(std::uint64_t seed, bool with_springs = true) {
    truth::Random random(seed, 5);
    truth::CarTruth car = test::drawn_car(random);
    car.downforce_area_m2 = between(random, 0.3, 4.5);
    const truth::SuspensionTruth suspension = truth::draw_suspension(random);
    test::KnownNoise noise;
    noise.suspension = suspension;
    CarData data =
        test::known_data(truth::ternbank(), car, test::uneven_driver(seed, between(random, 0.9, 1.0)), noise, seed, 6);
    if (with_springs)
        data.springs = Springs{suspension.front_n_per_m * (1.0 + 0.05 * random.normal()),
                               suspension.rear_n_per_m * (1.0 + 0.05 * random.normal()), 0.05};
    return {car, std::move(data)};
}

constexpr std::uint64_t first_seed = 900;

} // namespace

TEST(SuspensionDownforce, IsFoundWhicheverWayTravelCounts) {
    int inside = 0;
    double squares = 0.0;
    constexpr int cars = 40;
    for (std::uint64_t seed = first_seed; seed < first_seed + cars; ++seed) {
        const Drawn one = drawn(seed);
        const auto seen = suspension_downforce(one.data);
        ASSERT_TRUE(seen && seen->told()) << seed << (seen ? seen->untold : "");
        const double truly = 0.5 * 1.2 * one.car.downforce_area_m2;
        inside += std::abs(seen->n_per_mps2 - truly) < 1.96 * seen->sd ? 1 : 0;
        squares += std::pow(seen->n_per_mps2 / truly - 1.0, 2) / cars;
    }
    std::printf("suspension: inside %d of %d, RMS %.1f %%\n", inside, cars, 100.0 * std::sqrt(squares));
    EXPECT_GE(inside, 36);
    EXPECT_LE(std::sqrt(squares), 0.15);
}

TEST(SuspensionDownforce, MakesTheSplitOfGripAndDownforceKnown) {
    Coverage downforce{"downforce area"};
    Coverage grip{"grip"};
    Coverage without{"without travel"};
    for (std::uint64_t seed = first_seed; seed < first_seed + 12; ++seed) {
        Drawn one = drawn(seed);
        const auto figures = car_figures(one.data);
        one.data.springs = {};
        const auto unknown = car_figures(one.data);
        ASSERT_TRUE(figures.ok() && unknown.ok());
        downforce.add(*figures->downforce_area_m2, one.car.downforce_area_m2);
        grip.add(figures->grip, one.car.mu);
        without.add(*unknown->downforce_area_m2, one.car.downforce_area_m2);
        EXPECT_EQ(figures->downforce_area_m2->decided_by, DecidedBy::data);
    }
    for (const Coverage* c : {&downforce, &grip, &without})
        c->print("with springs:");
    EXPECT_GE(downforce.inside, 11);
    EXPECT_GE(grip.inside, 11);
    EXPECT_LT(downforce.half_width, 0.5 * without.half_width);
}

TEST(SuspensionDownforce, SaysWhyItTellsNothing) {
    Drawn one = drawn(first_seed, false);
    EXPECT_NE(suspension_downforce(one.data)->untold.find("spring rates in the setup sheet"), std::string::npos);
    const auto mass = std::exchange(one.data.mass, std::nullopt);
    one.data.springs = Springs{70e3, 60e3, 0.05};
    EXPECT_NE(suspension_downforce(one.data)->untold.find("with mass and"), std::string::npos);
    one.data.mass = mass;
    one.data.springs = Springs{7.0, 6.0, 0.05}; // N/mm written for N/m
    EXPECT_NE(suspension_downforce(one.data)->untold.find("check their units"), std::string::npos);
    truth::Random random(1, 1);
    for (lap::LapTrace& lap : one.data.laps)
        for (lap::TraceChannel& channel : lap.channels)
            if (channel.name.size() == 2)
                for (double& value : channel.values)
                    value = 0.01 * random.normal();
    EXPECT_NE(suspension_downforce(one.data)->untold.find("cannot be told which way"), std::string::npos);
    for (lap::LapTrace& lap : one.data.laps)
        lap.channels.clear();
    EXPECT_FALSE(suspension_downforce(one.data));
}
