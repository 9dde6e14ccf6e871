// SPDX-License-Identifier: GPL-3.0-or-later
// Known changes found again: cars and drivers drawn from a seed drive there and back with another wing.
#include "core/car/figure_changes.h"

#include "core/car/drawn_recording.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>

using namespace lapwright;
using namespace lapwright::car;

namespace {

struct Trial {
    CarData data;
    std::vector<DrivenLap> driven;
};

struct Wing {
    double downforce_m2 = 0.0;
    double drag_m2 = 0.0;
};

// Baseline, change, baseline; each run of its own day-to-day noise, and tyres that go off by a little each lap.
Trial there_and_back(const truth::CarTruth& car, Wing wing, std::uint64_t seed, const test::KnownNoise& noise,
                     int laps = 4) {
    Trial trial;
    for (int run = 0; run < 3; ++run) {
        truth::CarTruth driven = car;
        const bool changed = run == 1;
        if (changed) {
            driven.downforce_area_m2 += wing.downforce_m2;
            driven.drag_area_m2 += wing.drag_m2;
        }
        driven.mu *= 1.0 - 0.002 * run;
        const auto session = test::known_session(truth::ternbank(), driven, test::uneven_driver(seed, 0.96),
                                                 10 * seed + static_cast<unsigned>(run), laps);
        CarData data = test::known_data(session, noise, 10 * seed + static_cast<unsigned>(run));
        for (lap::LapTrace& lap : data.laps) {
            trial.driven.push_back({static_cast<double>(trial.driven.size()), changed});
            trial.data.laps.push_back(std::move(lap));
        }
        data.laps = std::move(trial.data.laps);
        trial.data = std::move(data);
    }
    return trial;
}

struct Tally {
    int inside = 0;
    int count = 0;
    double square = 0.0;
    double half = 0.0;

    void add(const base::Estimate& e, double truly) {
        ++count;
        inside += e.low <= truly && truly <= e.high ? 1 : 0;
        square += (e.value - truly) * (e.value - truly);
        half += e.half_width();
    }
    [[nodiscard]] double rms() const { return std::sqrt(square / count); }
    void expect_sound(const char* what) const {
        std::printf("%s: %d of %d inside, RMS %.4f, half-width %.4f\n", what, inside, count, rms(), half / count);
        EXPECT_GE(inside, 0.85 * count) << what;
        EXPECT_LE(half / count, 4.0 * rms()) << what;
    }
};

} // namespace

TEST(FigureChanges, AKnownWingIsFoundAgain) {
    Tally downforce, drag, grip, power;
    constexpr int worlds = 24;
    for (std::uint64_t seed = 700; seed < 700 + worlds; ++seed) {
        truth::Random random(seed, 3);
        const truth::CarTruth car = test::drawn_car(random);
        const Wing wing{test::between(random, -0.6, 0.8), test::between(random, -0.08, 0.12)};
        test::KnownNoise noise;
        noise.pedals = random.uniform() < 0.7;
        const Trial trial = there_and_back(car, wing, seed, noise);
        const auto changes = figure_changes(trial.data, trial.driven);
        ASSERT_TRUE(changes.ok()) << seed;
        ASSERT_TRUE(changes->downforce_area_m2.told() && changes->drag_area_m2.told()) << seed;
        downforce.add(changes->downforce_area_m2, wing.downforce_m2);
        drag.add(changes->drag_area_m2, wing.drag_m2);
        grip.add(changes->grip, 0.0);
        power.add(changes->power, 0.0);
    }
    downforce.expect_sound("downforce area, m²");
    drag.expect_sound("drag area, m²");
    grip.expect_sound("grip, relative");
    power.expect_sound("power, relative");
    EXPECT_LT(downforce.rms(), 0.25) << "of one that the laps of one setup know to about one";
    EXPECT_LT(drag.rms(), 0.02);
}

// A and B of one setup: what may have changed is bounded, and nothing is claimed.
TEST(FigureChanges, NoChangeClaimsNone) {
    int claimed = 0;
    for (std::uint64_t seed = 760; seed < 768; ++seed) {
        truth::Random random(seed, 3);
        const truth::CarTruth car = test::drawn_car(random);
        const Trial trial = there_and_back(car, {}, seed, {});
        const auto changes = figure_changes(trial.data, trial.driven);
        ASSERT_TRUE(changes.ok()) << seed;
        for (const base::Estimate* e :
             {&changes->grip, &changes->downforce_area_m2, &changes->drag_area_m2, &changes->power})
            claimed += e->told_apart_from_zero() ? 1 : 0;
    }
    EXPECT_LE(claimed, 4) << "of 32";
}

TEST(FigureChanges, WithTheChangeTurnedRoundTheSignTurns) {
    truth::Random random(5, 3);
    const truth::CarTruth car = test::drawn_car(random);
    Trial trial = there_and_back(car, {0.5, 0.06}, 5, {});
    const auto there = figure_changes(trial.data, trial.driven);
    for (DrivenLap& lap : trial.driven)
        lap.changed = !lap.changed;
    const auto back = figure_changes(trial.data, trial.driven);
    ASSERT_TRUE(there.ok() && back.ok());
    EXPECT_NEAR(there->downforce_area_m2.value, -back->downforce_area_m2.value, 1e-9);
    EXPECT_NEAR(there->drag_area_m2.value, -back->drag_area_m2.value, 1e-9);
    EXPECT_NEAR(there->grip.half_width(), back->grip.half_width(), 1e-9);
}

TEST(FigureChanges, WithoutAMassItIsOnATonne) {
    truth::Random random(6, 3);
    const truth::CarTruth car = test::drawn_car(random);
    Trial trial = there_and_back(car, {0.5, 0.06}, 6, {});
    const auto with_mass = figure_changes(trial.data, trial.driven);
    trial.data.mass.reset();
    const auto without = figure_changes(trial.data, trial.driven);
    ASSERT_TRUE(with_mass.ok() && without.ok());
    EXPECT_TRUE(without->on_a_tonne);
    EXPECT_NEAR(without->drag_area_m2.value / with_mass->drag_area_m2.value, 1000.0 / car.mass_kg, 0.15);
}

TEST(FigureChanges, WhatNoPlaceTellsIsSaid) {
    truth::Random random(7, 3);
    const truth::CarTruth car = test::drawn_car(random);
    Trial trial = there_and_back(car, {0.5, 0.06}, 7, {}, 2);
    for (DrivenLap& lap : trial.driven)
        lap.changed = false;
    const auto changes = figure_changes(trial.data, trial.driven);
    ASSERT_TRUE(changes.ok());
    EXPECT_FALSE(changes->downforce_area_m2.told());
    EXPECT_FALSE(changes->drag_area_m2.told());
}
