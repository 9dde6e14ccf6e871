// SPDX-License-Identifier: GPL-3.0-or-later
// Seasons drawn from a seed: one car, five outings of six laps on one track, with and without a wing, on days that
// differ.  All are invented.
#include "core/season/car_over_outings.h"

#include "core/season/setup_levels.h"

#include "core/car/drawn_recording.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>

using namespace lapwright;
using namespace lapwright::season;

namespace {

struct Wing {
    double downforce_m2 = 0.0;
    double drag_m2 = 0.0;
};

struct Season {
    truth::CarTruth car;
    Wing wing;
    std::vector<Outing> outings;
    std::vector<bool> winged;
    std::vector<double> mu; // of each day
};

car::SetupSheet sheet(const truth::CarTruth& car, bool winged) {
    car::SetupSheet setup;
    setup.mass = car::Mass{car.mass_kg, 5.0};
    setup.tyre = "club slick";
    setup.items = {{"wing angle", winged ? "9 deg" : "off"}};
    return setup;
}

// What no lap tells differs from car to car, wind and grip from day to day.
Season drawn_season(std::uint64_t seed, const std::vector<bool>& winged, int laps = 6) {
    truth::Random random(seed, 3);
    Season season;
    season.car = test::drawn_car(random);
    season.car.rolling_resistance = std::max(0.006, 0.014 + 0.003 * random.normal());
    season.car.rotating_share = std::max(0.0, 0.03 + 0.01 * random.normal());
    season.wing = {test::between(random, 0.3, 1.2), test::between(random, 0.02, 0.14)};
    season.winged = winged;
    test::KnownNoise noise;
    noise.pedals = random.uniform() < 0.7;
    for (std::size_t s = 0; s < winged.size(); ++s) {
        truth::CarTruth driven = season.car;
        driven.mu *= 1.0 + 0.015 * random.normal();
        driven.power_w *= 1.0 + 0.006 * random.normal();
        if (winged[s]) {
            driven.downforce_area_m2 += season.wing.downforce_m2;
            driven.drag_area_m2 += season.wing.drag_m2;
        }
        truth::SessionPlan plan;
        plan.flying_laps = laps;
        plan.wind_east_mps = 1.5 * random.normal();
        plan.wind_north_mps = 1.5 * random.normal();
        const auto session =
            truth::drive_session(truth::ternbank(), driven, test::uneven_driver(seed, 0.96), plan, 20 * seed + s);
        const auto one =
            outing(test::known_data(session, noise, 20 * seed + s), sheet(season.car, winged[s]), "Wren", "Ternbank");
        if (!one.ok()) continue;
        season.outings.push_back(one.value());
        season.mu.push_back(driven.mu);
    }
    return season;
}

struct Tally {
    int inside = 0;
    int count = 0;
    int untold = 0;
    double square = 0.0;
    double half = 0.0;
    double sum = 0.0;

    void add(const base::Estimate& e, double truly) {
        if (!e.told()) {
            ++untold;
            return;
        }
        ++count;
        inside += e.low <= truly && truly <= e.high ? 1 : 0;
        square += (e.value - truly) * (e.value - truly);
        sum += e.value - truly;
        half += e.half_width();
    }
    [[nodiscard]] double rms() const { return std::sqrt(square / count); }
    void print(const char* what) const {
        std::printf("%s: %d of %d inside (%d untold), RMS %.4f, mean %+.4f, half-width %.4f\n", what, inside, count,
                    untold, rms(), sum / count, half / count);
    }
    void expect_sound(const char* what) const {
        print(what);
        EXPECT_GE(inside, 0.85 * count) << what;
        EXPECT_LE(half / count, 4.0 * rms()) << what;
    }
};

} // namespace

TEST(CarOverOutings, SeasonsTellWhatOneSessionCannot) {
    Tally grip, downforce, drag, power, alone_downforce, alone_drag, wing_downforce, wing_drag;
    for (std::uint64_t seed = 800; seed < 812; ++seed) {
        const Season season = drawn_season(seed, {false, true, false, true, true});
        ASSERT_EQ(season.outings.size(), 5U) << seed;
        const CarOverOutings together = car_over_outings(season.outings);
        const CarOverOutings alone = car_over_outings({season.outings.front()});
        for (std::size_t s = 0; s < season.outings.size(); s += 3) {
            const Wing wing = season.winged[s] ? season.wing : Wing{};
            grip.add(together.figures[s].grip, season.mu[s]);
            downforce.add(together.figures[s].downforce_area_m2, season.car.downforce_area_m2 + wing.downforce_m2);
            drag.add(together.figures[s].drag_area_m2, season.car.drag_area_m2 + wing.drag_m2);
        }
        alone_downforce.add(alone.figures[0].downforce_area_m2, season.car.downforce_area_m2);
        alone_drag.add(alone.figures[0].drag_area_m2, season.car.drag_area_m2);
        power.add(together.figures[0].power_w, season.car.power_w);
        ASSERT_EQ(together.effects.size(), 1U);
        wing_downforce.add(together.effects[0].change.downforce_area_m2, season.wing.downforce_m2);
        wing_drag.add(together.effects[0].change.drag_area_m2, season.wing.drag_m2);
    }
    grip.expect_sound("grip");
    downforce.expect_sound("downforce area, m²");
    drag.expect_sound("drag area, m²");
    power.expect_sound("power, W");
    alone_downforce.print("downforce area of the first session alone, m²");
    alone_drag.print("drag area of the first session alone, m²");
    wing_downforce.expect_sound("the wing's downforce area, m²");
    wing_drag.expect_sound("the wing's drag area, m²");
    EXPECT_LT(wing_downforce.rms(), 0.25);
    EXPECT_LE(downforce.half / downforce.count, 1.02 * alone_downforce.half / alone_downforce.count);
}

// The same laps by the model of one session: another sampler, and corners left out where that one mixes.
TEST(CarOverOutings, OneOutingSaysWhatItsOwnFitSays) {
    double sum = 0.0;
    int count = 0;
    for (std::uint64_t seed = 830; seed < 842; ++seed) {
        const test::DrawnRecording recording = test::drawn_recording(seed, 0.0);
        const auto own = car::car_figures(recording.data);
        const auto one = outing(recording.data, sheet(recording.car, false), "Wren", "Ternbank");
        ASSERT_TRUE(own.ok() && one.ok()) << seed;
        const CarOverOutings together = car_over_outings({one.value()});
        const auto near = [&](const base::Estimate& e, const base::Estimate& of_session, const char* what) {
            if (!e.told() || !of_session.told()) return;
            EXPECT_NEAR(e.value, of_session.value, 0.5 * of_session.half_width()) << what << " of " << seed;
            EXPECT_NEAR(e.half_width(), of_session.half_width(), 0.4 * of_session.half_width())
                << what << " of " << seed;
            sum += std::log(e.half_width() / of_session.half_width());
            ++count;
        };
        near(together.figures[0].grip, own->grip, "grip");
        near(together.figures[0].downforce_area_m2, *own->downforce_area_m2, "downforce area");
        near(together.figures[0].drag_area_m2, *own->drag_area_m2, "drag area");
        near(together.figures[0].power_w, *own->power_w, "power");
    }
    EXPECT_NEAR(std::exp(sum / count), 1.0, 0.15); // one by one they differ by a skew that a normal form has not
}

TEST(CarOverOutings, WithoutAMassAllIsOnATonne) {
    Season season = drawn_season(840, {false, true, false}, 4);
    const CarOverOutings with_mass = car_over_outings(season.outings);
    season.outings[1].mass_known = false;
    const CarOverOutings without = car_over_outings(season.outings);
    EXPECT_FALSE(with_mass.on_a_tonne);
    EXPECT_TRUE(without.on_a_tonne);
    EXPECT_NEAR(without.figures[0].drag_area_m2.value / with_mass.figures[0].drag_area_m2.value,
                1000.0 / season.car.mass_kg, 0.1);
    EXPECT_NEAR(without.figures[0].power_w.value / with_mass.figures[0].power_w.value, 1000.0 / season.car.mass_kg,
                0.1);
}

// Corners of different tracks share no habit: what the wing did is told less well, not wrongly.
TEST(CarOverOutings, WithoutTracksIntervalsGrow) {
    Season season = drawn_season(841, {false, true, false, true});
    const CarOverOutings known = car_over_outings(season.outings);
    for (Outing& one : season.outings)
        one.track.clear();
    const CarOverOutings unknown = car_over_outings(season.outings);
    ASSERT_TRUE(known.effects[0].change.downforce_area_m2.told());
    const base::Estimate& wing = unknown.effects[0].change.downforce_area_m2;
    if (wing.told()) {
        EXPECT_GT(wing.half_width(), 1.3 * known.effects[0].change.downforce_area_m2.half_width());
    }
}

TEST(CarOverOutings, NoStraightThatTellsLeavesDragUntold) {
    Season season = drawn_season(842, {false, true}, 4);
    for (Outing& one : season.outings)
        one.push.reset();
    const CarOverOutings together = car_over_outings(season.outings);
    EXPECT_FALSE(together.figures[0].drag_area_m2.told());
    EXPECT_FALSE(together.effects[0].change.drag_area_m2.told());
    EXPECT_TRUE(together.figures[0].downforce_area_m2.told());
}

TEST(SetupLevels, ItemsThatChangeAndWhatTheyAre) {
    car::SetupSheet first;
    first.tyre = "soft";
    first.items = {{"Wing angle", "3"}, {"camber", "-3.0"}};
    car::SetupSheet silent; // as the one before it
    car::SetupSheet last = first;
    last.items[0].value = "7";
    const auto levels = setup_levels({first, silent, last, first});
    ASSERT_EQ(levels.size(), 1U);
    EXPECT_EQ(levels[0].item, "Wing angle");
    EXPECT_EQ(levels[0].kind, ItemKind::aero);
    EXPECT_EQ(levels[0].of_session, (std::vector<std::size_t>{0, 0, 1, 0}));
    EXPECT_EQ(kind_of("Reifendruck"), ItemKind::tyre);
    EXPECT_EQ(kind_of("boost"), ItemKind::drive);
    EXPECT_EQ(kind_of("front roll bar"), ItemKind::other);
}
