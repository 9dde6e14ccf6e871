// SPDX-License-Identifier: GPL-3.0-or-later
// What a test is promised to tell, held against what it tells: cars and laps drawn from a seed, the reading really made
// with its stated error, the car learnt again.  LAPWRIGHT_DRAWN_WORLDS=40 draws that many.
#include "core/causes/next_test.h"

#include "core/base/wording.h"
#include "core/car/drawn_recording.h"
#include "core/comparison/trial.h"
#include "core/math/random.h"
#include "core/math/statistics.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <map>

using namespace lapwright;
using namespace lapwright::causes;

namespace {

struct World {
    truth::CarTruth car;
    truth::SuspensionTruth suspension;
    car::CarData data;
};

World drawn_world(std::uint64_t seed) {
    truth::Random random(seed, 6);
    World w;
    w.car = test::drawn_car(random);
    w.suspension = truth::draw_suspension(random);
    test::KnownNoise noise;
    noise.suspension = w.suspension;
    noise.engine_speed = seed % 2 == 0;
    w.data = test::known_data(truth::ternbank(), w.car, test::uneven_driver(seed, test::between(random, 0.9, 1.0)),
                              noise, seed, 6);
    w.data.mass = car::Mass{w.car.mass_kg + 15.0 * random.normal(), 15.0};
    return w;
}

// Clutch down on a straight with a wind and a slope of its own, worked out as the words say.
double coasted_area_m2(const World& w, const NextTest& t, truth::Random& random) {
    const double wind = 1.8 * random.normal();
    const double slope = 0.001 * random.normal();
    const double from = t.from_mps + 0.1 * random.normal();
    const double to = t.to_mps + 0.1 * random.normal();
    constexpr double step_s = 0.001;
    double time = 0.0;
    for (double v = t.from_mps; v > t.to_mps; time += step_s)
        v -= step_s * (0.5 * 1.2 * w.car.drag_area_m2 * (v + wind) * (v + wind) / w.car.mass_kg +
                       (w.car.rolling_resistance + slope) * 9.81);
    const double mean = 0.5 * (from + to);
    return 2.0 * w.data.mass->value_kg * ((from - to) / time - 0.14) / (1.2 * mean * mean);
}

// The figure's half-width after the reading was made; NaN where this test makes none.
double got(const World& before, const NextTest& t, std::uint64_t seed) {
    truth::Random random(seed, 7);
    World w = before;
    switch (t.test) {
    case causes::Test::enter_springs:
        w.data.springs = car::Springs{w.suspension.front_n_per_m * (1.0 + 0.05 * random.normal()),
                                      w.suspension.rear_n_per_m * (1.0 + 0.05 * random.normal()), 0.05};
        break;
    case causes::Test::weigh:
        w.data.mass = car::Mass{w.car.mass_kg + 3.0 * random.normal(), 3.0};
        break;
    case causes::Test::coast_down:
        w.data.known.drag_area_m2 = car::KnownFigure{coasted_area_m2(w, t, random), t.reading_sd};
        break;
    case causes::Test::dynamometer:
        w.data.known.power_w = car::KnownFigure{w.car.power_w * (1.0 + 0.03 * random.normal()), t.reading_sd};
        break;
    case causes::Test::wing_trial:
        return std::nan("");
    }
    const auto figures = car::car_figures(w.data);
    if (!figures) return std::nan("");
    switch (t.figure) {
    case Term::mass:
        return figures->mass_kg->half_width();
    case Term::drag:
        return figures->drag_area_m2->half_width();
    case Term::power:
        return figures->power_w->half_width();
    default:
        return figures->downforce_area_m2->half_width();
    }
}

int worlds_to_draw() {
    const char* wished = std::getenv("LAPWRIGHT_DRAWN_WORLDS");
    return wished != nullptr ? std::atoi(wished) : 6;
}

} // namespace

// The width that springs will leave hangs on how much downforce there is, which is what nobody knows before.
TEST(NextTest, KeepsWhatItPromises) {
    std::map<causes::Test, int> kept;
    const int count = worlds_to_draw();
    for (int i = 0; i < count; ++i) {
        const std::uint64_t seed = 4400 + static_cast<std::uint64_t>(i);
        const World w = drawn_world(seed);
        const auto figures = car::car_figures(w.data);
        ASSERT_TRUE(figures) << seed;
        const std::vector<std::array<double, cause_count>> totals(figures->draws.size());
        for (const NextTest& t : tests_of({*figures, w.data.laps, {}}, Side::a, totals, Term::downforce)) {
            const double width = got(w, t, seed);
            if (!std::isfinite(width)) continue;
            kept[t.test] += std::abs(width / t.of_figure.after - 1.0) <= 0.3 ? 1 : 0;
            std::printf("%d %s: before %.3f, promised %.3f, got %.3f\n", static_cast<int>(seed),
                        std::string(key(t.test)).c_str(), t.of_figure.before, t.of_figure.after, width);
        }
    }
    int all = 0;
    for (const auto& [test, times] : kept) {
        all += times;
        EXPECT_GE(times, (test == causes::Test::enter_springs ? 0.6 : 0.8) * count) << key(test);
    }
    EXPECT_EQ(kept.size(), 4u);
    EXPECT_GE(all, 0.8 * 4.0 * count);
}

// Of baseline, change and baseline again, three laps each, simulated with the scatter that laps show.
TEST(NextTest, AWingTrialTellsOnAverageWhatItPromises) {
    math::Random random(21, 2);
    double promised = 0.0;
    double told = 0.0;
    for (int world = 0; world < 300; ++world) {
        KnownSide side;
        side.figures.draws.resize(2);
        for (int i = 0; i < 8; ++i) {
            lap::LapTrace lap;
            lap.time_s = {0.0, 90.0 + 0.2 * random.normal()};
            side.clean_laps.push_back(lap);
        }
        const std::vector<std::array<double, cause_count>> totals(2);
        const auto tests = tests_of(side, Side::a, totals, Term::downforce);
        ASSERT_EQ(tests.back().test, causes::Test::wing_trial);
        promised += tests.back().of_figure.after;
        std::vector<comparison::TrialLap> laps;
        for (int i = 0; i < 9; ++i) {
            const bool changed = i / 3 == 1;
            laps.push_back(
                {static_cast<double>(i), changed, {90.0 + 0.03 * i - (changed ? 0.3 : 0.0) + 0.2 * random.normal()}});
        }
        const auto trial = comparison::setup_trial(laps);
        ASSERT_TRUE(trial);
        told += 0.5 * (trial->lap.high_s - trial->lap.low_s);
    }
    EXPECT_NEAR(told / promised, 1.0, 0.08);
}

// The update against its closed form: a target and a reading of known correlation.
TEST(NextTest, AReadingNarrowsWhatGoesWithIt) {
    math::Random random(5, 5);
    std::vector<double> target;
    std::vector<double> reading;
    std::vector<double> other;
    for (int i = 0; i < 20'000; ++i) {
        const double u = random.normal();
        target.push_back(2.0 * u);
        reading.push_back(0.6 * u + 0.8 * random.normal());
        other.push_back(random.normal());
    }
    EXPECT_NEAR(expected_variance(target, reading, 0.0), 4.0 * (1.0 - 0.36), 0.1);
    EXPECT_NEAR(expected_variance(target, reading, 1.0), 4.0 * (1.0 - 0.18), 0.1);
    EXPECT_NEAR(expected_variance(target, other, 0.0), 4.0, 0.1);
    EXPECT_NEAR(expected_variance(target, target, 1e-6), 0.0, 1e-6);
    EXPECT_NEAR(expected_variance(target, target, 1e-6, 0.75), 1.0, 0.05) << "what a reading does not see stays";
}

TEST(NextTest, WithoutAMassTheMassIsAskedForFirst) {
    KnownSide a;
    a.figures.per_kilogram = true;
    a.figures.draws.resize(40);
    KnownSide b = a;
    const std::vector<std::array<double, cause_count>> totals(40);
    const NextTests next = next_tests(a, b, totals);
    ASSERT_EQ(next.tests.size(), 2u);
    EXPECT_EQ(next.tests[0].test, causes::Test::weigh);
    EXPECT_EQ(next.tests[0].side, Side::a);
    EXPECT_TRUE(std::isnan(next.tests[0].of_figure.before));
}

TEST(NextTest, TheQuestionIsTheCauseThatIsKnownWorst) {
    math::Random random(9, 1);
    std::vector<std::array<double, cause_count>> totals(100);
    KnownSide a;
    a.figures.draws.resize(100);
    a.figures.mass_kg = car::CarFigure{{1200.0, 1170.0, 1230.0}, car::DecidedBy::setup};
    for (std::size_t i = 0; i < totals.size(); ++i) {
        const double off = random.normal();
        a.figures.draws[i].car.mass_kg = 1200.0 + 15.0 * off;
        totals[i] = {0.01 * random.normal(), 0.0, 0.02 * random.normal(), 0.01, 0.3 * off};
    }
    KnownSide b;
    b.figures.draws.resize(100);
    const NextTests next = next_tests(a, b, totals);
    EXPECT_EQ(next.question, Term::mass);
    ASSERT_FALSE(next.tests.empty());
    EXPECT_EQ(next.tests[0].test, causes::Test::weigh);
    EXPECT_NEAR(next.tests[0].of_question.after / next.tests[0].of_question.before, 3.0 / 15.3, 0.02);
    EXPECT_NEAR(next.tests[0].of_figure.after, base::half_width_95(3.0), 0.7);
}
