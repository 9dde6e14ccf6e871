// SPDX-License-Identifier: GPL-3.0-or-later
// Gap, gains and corner figures against speeds given by formulas.
#include "core/base/wording.h"
#include "core/comparison/compare_laps.h"
#include "core/comparison/segment_figures.h"
#include "support/laps.h"

#include <gtest/gtest.h>
#include <numeric>
#include <random>

using namespace lapwright;
using namespace lapwright::comparison;
using track::Segment;
using track::SegmentKind;

namespace {

constexpr double length_m = 1000.0;

std::vector<Segment> segments() {
    return {{"Start", SegmentKind::straight, 0.0, 400.0, 0.0, {}},
            {"Mire", SegmentKind::corner, 400.0, 600.0, 1.5, 80.0},
            {"Home", SegmentKind::straight, 600.0, length_m, 0.0, {}}};
}

// Constant speed, constant braking to a bottom at 500 m, constant acceleration back: v² is piecewise linear in s.
std::function<double(double)> braked(double top_mps, double braking_m, double bottom_mps, double bottom_at_m) {
    return [=](double s) {
        const double a = (top_mps * top_mps - bottom_mps * bottom_mps) / (bottom_at_m - braking_m);
        const double square = s < bottom_at_m ? top_mps * top_mps - a * std::max(0.0, s - braking_m)
                                              : bottom_mps * bottom_mps + 0.4 * a * (s - bottom_at_m);
        return std::sqrt(std::min(square, top_mps * top_mps));
    };
}

} // namespace

TEST(CompareLaps, GapIsTheDifferenceOfTimesAndGainsTelescope) {
    const lap::LapEnsemble a{test::lap_from_speed(length_m, [](double) { return 40.0; }), {}};
    const lap::LapEnsemble b{test::lap_from_speed(length_m, [](double s) { return s < 500.0 ? 41.0 : 38.0; }), {}};
    const Comparison c = compare_laps(a, b, segments());
    EXPECT_NEAR(c.gap.gap_s[400], 400.0 / 41.0 - 400.0 / 40.0, 1e-9);
    EXPECT_LT(c.gap.gap_s[400], 0.0) << "B is faster there: A is behind";
    EXPECT_LT(c.segments[0].gain_s.value, 0.0);
    EXPECT_GT(c.segments[2].gain_s.value, 0.0);
    double sum = 0.0;
    for (const auto& s : c.segments)
        sum += s.gain_s.value;
    EXPECT_NEAR(sum, b.best.lap_time_s() - a.best.lap_time_s(), 1e-9);
    EXPECT_NEAR(sum, c.gap_at_end_s.value, 1e-9);
    EXPECT_FALSE(c.gap_at_end_s.sd);
    EXPECT_TRUE(c.gap.low_s.empty());
}

TEST(CompareLaps, SwappingTheLapsTurnsEverySign) {
    const lap::LapEnsemble a{test::lap_from_speed(length_m, [](double s) { return 40.0 + 5.0 * std::sin(s / 90.0); }),
                             {}};
    const lap::LapEnsemble b{test::lap_from_speed(length_m, [](double s) { return 41.0 + 4.0 * std::sin(s / 80.0); }),
                             {}};
    const Comparison one = compare_laps(a, b, segments());
    const Comparison other = compare_laps(b, a, segments());
    for (std::size_t i = 0; i < one.gap.gap_s.size(); i += 50)
        EXPECT_DOUBLE_EQ(one.gap.gap_s[i], -other.gap.gap_s[i]);
    for (std::size_t i = 0; i < 3; ++i)
        EXPECT_DOUBLE_EQ(one.segments[i].gain_s.value, -other.segments[i].gain_s.value);
}

TEST(CompareLaps, TheBandIsTheSpreadOfTheDraws) {
    std::mt19937_64 random(3);
    std::normal_distribution<double> noise(0.0, 0.1);
    const auto ensemble = [&](double speed) {
        lap::LapEnsemble e{test::lap_from_speed(length_m, [=](double) { return speed; }), {}};
        for (int k = 0; k < 64; ++k) {
            const double drawn = speed + noise(random);
            e.draws.push_back(test::lap_from_speed(length_m, [=](double) { return drawn; }));
        }
        return e;
    };
    const Comparison c = compare_laps(ensemble(40.0), ensemble(41.0), segments());
    ASSERT_TRUE(c.gap_at_end_s.sd);
    // t = L/v: sd of each lap time is L/v² · 0.1.
    const double expected = std::hypot(length_m / 1600.0, length_m / 1681.0) * 0.1;
    EXPECT_NEAR(*c.gap_at_end_s.sd, expected, 0.25 * expected);
    EXPECT_NEAR(c.gap.high_s.back() - c.gap.gap_s.back(), base::half_width_95(*c.gap_at_end_s.sd), 1e-12);
    EXPECT_DOUBLE_EQ(c.gap.sd_s.front(), 0.0);
    ASSERT_TRUE(c.segments[1].a.min_speed_mps->sd);
    EXPECT_NEAR(*c.segments[1].a.min_speed_mps->sd, 0.1, 0.03);
}

// Eight pairs of draws with differences of time 0, 1 … 7 hundredths: their standard deviation, and what so few leave
// open of it, √(7/5) (JCGM 101:2008, 6.4.9.4).
TEST(CompareLaps, FewDrawsLeaveTheirSpreadOpen) {
    const auto ensemble = [](double step_s) {
        const auto lap = [](double time_s) {
            return test::lap_from_speed(length_m, [=](double) { return length_m / time_s; });
        };
        lap::LapEnsemble e{lap(60.0), {}};
        for (int k = 0; k < 8; ++k)
            e.draws.push_back(lap(60.0 + step_s * k));
        return e;
    };
    const Comparison c = compare_laps(ensemble(0.0), ensemble(0.01), segments());
    ASSERT_TRUE(c.gap_at_end_s.sd);
    EXPECT_NEAR(*c.gap_at_end_s.sd, 0.01 * std::sqrt(6.0 * 7.0 / 5.0), 1e-6);
    EXPECT_NEAR(c.gap.high_s.back() - c.gap.gap_s.back(), base::half_width_95(*c.gap_at_end_s.sd), 1e-9);
}

TEST(SegmentFigures, MinimumIsTheBottomOfTheCurveNotTheSmallestSample) {
    // v = 20 + (s − 501.4)² / 4000 with noise: the smallest sample lies low, the fitted bottom does not.
    std::mt19937_64 random(5);
    std::normal_distribution<double> noise(0.0, 0.05);
    double fitted = 0.0;
    double smallest = 0.0;
    constexpr int seeds = 200;
    for (int k = 0; k < seeds; ++k) {
        auto trace = test::lap_from_speed(length_m, [](double s) { return 20.0 + std::pow(s - 501.4, 2) / 4000.0; });
        for (double& v : trace.speed_mps)
            v += noise(random);
        const Extreme bottom = lowest_speed(trace, 400.0, 600.0);
        fitted += bottom.speed_mps / seeds;
        smallest += *std::min_element(trace.speed_mps.begin() + 400, trace.speed_mps.begin() + 600) / seeds;
        EXPECT_NEAR(bottom.distance_m, 501.4, 6.0);
    }
    EXPECT_NEAR(fitted, 20.0, 0.02);
    EXPECT_LT(smallest, 19.95);
}

TEST(SegmentFigures, ASpeedThatStillFallsHasItsMinimumAtTheBoundary) {
    const auto trace = test::lap_from_speed(length_m, [](double s) { return 60.0 - s / 50.0; });
    const Extreme bottom = lowest_speed(trace, 400.0, 600.0);
    EXPECT_DOUBLE_EQ(bottom.distance_m, 600.0);
    EXPECT_NEAR(bottom.speed_mps, 48.0, 1e-9);
    EXPECT_DOUBLE_EQ(highest_speed(trace, 400.0, 600.0).distance_m, 400.0);
}

TEST(SegmentFigures, BrakingPointFromAccelerationAndFromThePedal) {
    auto trace = test::lap_from_speed(length_m, braked(60.0, 320.0, 20.0, 500.0));
    const SegmentFigures derived = segment_figures(trace, segments(), 1);
    ASSERT_TRUE(derived.braking_point_m);
    EXPECT_TRUE(derived.braking_point_m->derived);
    EXPECT_NEAR(derived.braking_point_m->value, 320.0, 1.0);
    EXPECT_NEAR(derived.braking_mps2->value, (3600.0 - 400.0) / (2.0 * 180.0), 0.2);
    EXPECT_NEAR(derived.min_speed_mps->value, 20.0, 0.3);
    EXPECT_FALSE(derived.coasting_s) << "motion does not tell it";
    ASSERT_TRUE(derived.lift_to_brakes_s);
    EXPECT_TRUE(derived.lift_to_brakes_s->derived);
    EXPECT_LT(derived.lift_to_brakes_s->value, 0.05) << "it brakes at once";
    EXPECT_FALSE(derived.top_speed_mps);

    lap::TraceChannel brake{"brake", recording::Meaning::brake, base::Unit::percent, std::vector<double>(1001, 0.0)};
    for (std::size_t i = 310; i < 490; ++i)
        brake.values[i] = 0.8;
    lap::TraceChannel throttle{"throttle", recording::Meaning::throttle, base::Unit::percent,
                               std::vector<double>(1001, 1.0)};
    for (std::size_t i = 290; i < 520; ++i)
        throttle.values[i] = 0.0;
    for (std::size_t i = 520; i < 560; ++i)
        throttle.values[i] = 0.025 * static_cast<double>(i - 520);
    trace.channels = {brake, throttle};
    const SegmentFigures measured = segment_figures(trace, segments(), 1);
    EXPECT_FALSE(measured.braking_point_m->derived);
    EXPECT_NEAR(measured.braking_point_m->value, 309.1, 0.2);
    EXPECT_NEAR(measured.lift_at_m->value, 289.2, 0.2);
    EXPECT_NEAR(measured.throttle_opens_m->value, 524.0, 0.5);
    EXPECT_NEAR(measured.full_throttle_m->value, 558.0, 0.5);
    // 290…309 m and 490…521 m with neither pedal pressed.
    const double coasted = trace.time_at(310.0) - trace.time_at(290.0) + trace.time_at(522.0) - trace.time_at(490.0);
    EXPECT_NEAR(measured.coasting_s->value, coasted, 0.1);
    EXPECT_NEAR(measured.lift_to_brakes_s->value, trace.time_at(310.0) - trace.time_at(290.0), 0.05);
}

// Pressures of any unit and sensor: what counts is the share of the lap's own greatest.
TEST(SegmentFigures, BrakingPointFromPressureIsThatOfTheMainBraking) {
    std::mt19937_64 random(11);
    std::uniform_real_distribution<double> draw(0.0, 1.0);
    for (int k = 0; k < 40; ++k) {
        const double braking_m = 250.0 + std::floor(100.0 * draw(random));
        auto trace = test::lap_from_speed(length_m, braked(60.0, braking_m, 20.0, 500.0));
        const double full = 1e5 * (20.0 + 80.0 * draw(random));
        lap::TraceChannel pressure{"p", recording::Meaning::brake_pressure, base::Unit::bar,
                                   std::vector<double>(1001, 0.0)};
        for (double& value : pressure.values)
            value = 0.02 * full * draw(random); // rest pressure
        for (auto i = static_cast<std::size_t>(braking_m); i < 470; ++i)
            pressure.values[i] = full * (1.0 - 0.6 * (static_cast<double>(i) - braking_m) / 250.0);
        for (const std::size_t dab : {std::size_t{140}, std::size_t{490}}) // on the straight, and at the apex
            for (std::size_t i = dab; i < dab + 8; ++i)
                pressure.values[i] = 0.15 * full;
        trace.channels = {pressure};
        const SegmentFigures f = segment_figures(trace, segments(), 1);
        ASSERT_TRUE(f.braking_point_m);
        EXPECT_FALSE(f.braking_point_m->derived);
        EXPECT_NEAR(f.braking_point_m->value, braking_m, 1.0);
    }
}

TEST(SegmentFigures, ACornerTakenFlatHasNoBrakingPoint) {
    const auto trace = test::lap_from_speed(length_m, [](double s) { return 50.0 + s / 200.0; });
    const SegmentFigures f = segment_figures(trace, segments(), 1);
    EXPECT_FALSE(f.braking_point_m);
    EXPECT_FALSE(f.braking_mps2);
    EXPECT_FALSE(f.lift_at_m);
}

TEST(SegmentFigures, ShiftsCountNeutralOnce) {
    auto trace = test::lap_from_speed(length_m, [](double) { return 50.0; });
    lap::TraceChannel gear{"gear", recording::Meaning::gear, base::Unit::none, std::vector<double>(1001, 3.0)};
    for (std::size_t i = 100; i < 105; ++i)
        gear.values[i] = 0.0;
    for (std::size_t i = 105; i < 1001; ++i)
        gear.values[i] = 4.0;
    for (std::size_t i = 300; i < 1001; ++i)
        gear.values[i] = 5.0;
    trace.channels = {gear};
    EXPECT_DOUBLE_EQ(segment_figures(trace, segments(), 0).shifts->value, 2.0);
    EXPECT_DOUBLE_EQ(segment_figures(trace, segments(), 2).shifts->value, 0.0);
}

TEST(WinningRate, IsTheSlopeOfTheGap) {
    GapTrace gap;
    for (int i = 0; i <= 200; ++i) {
        gap.distance_m.push_back(i);
        gap.gap_s.push_back(0.002 * i);
    }
    for (const double rate : winning_rate(gap))
        EXPECT_NEAR(rate, 0.002, 1e-12);
}
