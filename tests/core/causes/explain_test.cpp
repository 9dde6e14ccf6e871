// SPDX-License-Identifier: GPL-3.0-or-later
// Causes against the simulator's true exchange of figures: totals inside their intervals, rows that add up exactly,
// equal cars without causes, what-if, time.
#include "core/causes/explain.h"
#include "core/causes/what_if.h"

#include "core/car/known_car.h"
#include "truth/true_causes.h"

#include <gtest/gtest.h>

#include <cmath>
#include <cstdio>
#include <map>

using namespace lapwright;
using namespace lapwright::causes;

namespace {

struct Known {
    KnownSide side;
    lap::LapTrace lap;
};

truth::DriverTruth driver_of(std::uint64_t style, double fast_corner) {
    truth::DriverTruth driver;
    driver.style_seed = style;
    driver.corner_factor = {1.0, fast_corner, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0, 1.0};
    return driver;
}

std::vector<double> segment_times(const lap::LapTrace& lap, const std::vector<track::Segment>& segments) {
    const auto time_at = [&](double s) {
        std::size_t i = 0;
        while (i + 2 < lap.size() && lap.distance_m[i + 1] <= s)
            ++i;
        const double part = (s - lap.distance_m[i]) / (lap.distance_m[i + 1] - lap.distance_m[i]);
        return lap.time_s[i] + part * (lap.time_s[i + 1] - lap.time_s[i]);
    };
    std::vector<double> times;
    for (const track::Segment& s : segments)
        times.push_back(time_at(s.end_m) - time_at(s.start_m));
    return times;
}

Known know(const truth::TrackShape& shape, const truth::CarTruth& car, const truth::DriverTruth& driver, double rate_hz,
           std::uint64_t seed, bool with_mass = true, std::size_t draws = 200, bool engine_speed = false) {
    truth::SessionPlan plan;
    plan.flying_laps = 8;
    plan.air_density = 1.2;
    const truth::Session session = truth::drive_session(shape, car, driver, plan, seed);
    test::KnownNoise noise;
    noise.rate_hz = rate_hz;
    noise.engine_speed = engine_speed;
    car::CarData data;
    data.laps = test::known_traces(session, noise, seed + 5000);
    data.segments = test::true_segments(shape);
    data.air = {1.2, 0.006, "known"};
    if (with_mass) data.mass = car::Mass{car.mass_kg, 5.0};
    auto figures = car::car_figures(data, {draws, seed});
    EXPECT_TRUE(figures.ok());
    Known known;
    known.lap = data.laps.front();
    for (const lap::LapTrace& lap : data.laps)
        if (lap.time_s.back() < known.lap.time_s.back()) known.lap = lap;
    known.side = {std::move(figures).value(), data.laps, segment_times(known.lap, data.segments)};
    return known;
}

comparison::Comparison compared(const Known& a, const Known& b, const std::vector<track::Segment>& segments) {
    comparison::Comparison c;
    double sum = 0.0;
    for (std::size_t k = 0; k < segments.size(); ++k) {
        comparison::SegmentComparison s;
        s.segment = segments[k];
        s.gain_s = {b.side.segment_s[k] - a.side.segment_s[k], 0.004, false};
        sum += s.gain_s.value;
        c.segments.push_back(s);
    }
    c.gap_at_end_s = {sum, 0.005, false};
    return c;
}

Explanation explained(const Known& a, const Known& b, const truth::TrackShape& shape,
                      const ExplainOptions& options = {}) {
    auto result = explain(a.side, b.side, compared(a, b, test::true_segments(shape)), options);
    EXPECT_TRUE(result.ok());
    return std::move(result).value();
}

const Known& aero_car() {
    static const Known known = know(truth::ternbank(), truth::light_aero_hatch(), driver_of(1, 0.95), 25.0, 1);
    return known;
}

const Known& power_car() {
    static const Known known = know(truth::ternbank(), truth::heavy_powerful_coupe(), driver_of(2, 1.0), 10.0, 2);
    return known;
}

} // namespace

TEST(Explain, TrueTotalsLieInsideTheirIntervals) {
    const truth::TrackShape shape = truth::ternbank();
    constexpr int seeds = 20;
    constexpr int first_seed = 200;
    int inside[cause_count] = {};
    double error[cause_count] = {};
    double half_width[cause_count] = {};
    int aero_inside = 0;
    double gap = 0.0;
    // Three drivers of A, over and over: the true exchange belongs to the driver.  Smaller seeds and other drivers
    // were looked at while the method was made.
    std::map<std::uint64_t, truth::TrueCauses> truths;
    for (int i = first_seed; i < first_seed + seeds; ++i) {
        const auto seed = static_cast<std::uint64_t>(10 * i + 1);
        const auto style = 3000 + static_cast<std::uint64_t>(i % 3);
        const truth::DriverTruth driver_a = driver_of(style, 0.92);
        const Known a = know(shape, truth::light_aero_hatch(), driver_a, i % 2 == 0 ? 25.0 : 10.0, seed, true, 100);
        const Known b = know(shape, truth::heavy_powerful_coupe(), driver_of(700 + seed, 1.0), i % 2 == 0 ? 10.0 : 25.0,
                             seed + 1, true, 100);
        const Explanation e = explained(a, b, shape);
        if (!truths.contains(style))
            truths[style] =
                truth::true_causes(shape, truth::light_aero_hatch(), truth::heavy_powerful_coupe(), driver_a, 1.2);
        const truth::TrueCauses& truth = truths[style];
        for (std::size_t c = 0; c < cause_count; ++c) {
            const Seconds& s = e.total.causes[c];
            inside[c] += s.low <= truth.total[c] && truth.total[c] <= s.high ? 1 : 0;
            error[c] += std::pow(s.value - truth.total[c], 2) / seeds;
            half_width[c] += s.half_width() / seeds;
        }
        const double aero = truth.total[1] + truth.total[2];
        aero_inside += e.total.aero.low <= aero && aero <= e.total.aero.high ? 1 : 0;
        gap += std::abs(e.total.gain.value) / seeds;
    }
    for (std::size_t c = 0; c < cause_count; ++c) {
        std::printf("%-10s inside %d of %d, RMS error %.3f s, half width %.3f s\n",
                    std::string(name(all_causes[c])).c_str(), inside[c], seeds, std::sqrt(error[c]), half_width[c]);
        EXPECT_GE(inside[c], 18) << name(all_causes[c]);
    }
    std::printf("aero inside %d of %d; mean gap %.2f s\n", aero_inside, seeds, gap);
    EXPECT_GE(aero_inside, 18);
    const double allowed = std::max(0.15, 0.1 * gap);
    for (const Cause cause : {Cause::drag, Cause::power, Cause::mass})
        EXPECT_LE(std::sqrt(error[static_cast<std::size_t>(cause)]), allowed) << name(cause);
}

TEST(Explain, OnePowerStandsForOneThatFollowsEngineSpeed) {
    // Invented curves: one rises to the upshift, one falls by 15 % before it.
    truth::CarTruth rising = truth::light_aero_hatch();
    rising.power_curve = {{2500, 0.42}, {3500, 0.60}, {4500, 0.78},  {5300, 0.90},
                          {6000, 0.98}, {6500, 1.0},  {6900, 0.985}, {7200, 0.94}};
    truth::CarTruth falling = truth::heavy_powerful_coupe();
    falling.power_curve = {{2500, 0.45}, {3300, 0.66}, {4200, 0.86}, {5000, 0.97}, {5500, 1.0},
                           {6000, 0.98}, {6400, 0.94}, {6800, 0.90}, {7200, 0.85}};
    const truth::TrackShape shape = truth::ternbank();
    const truth::DriverTruth driver_a = driver_of(3001, 0.92);
    const truth::TrueCauses truth = truth::true_causes(shape, rising, falling, driver_a, 1.2);
    constexpr int seeds = 4;
    double error[cause_count] = {};
    for (int i = 0; i < seeds; ++i) {
        const auto seed = static_cast<std::uint64_t>(10 * (270 + i) + 1);
        const double rate_hz = i % 2 == 0 ? 25.0 : 10.0;
        const Known a = know(shape, rising, driver_a, rate_hz, seed, true, 60, true);
        const Known b = know(shape, falling, driver_of(700 + seed, 1.0), rate_hz, seed + 1, true, 60, true);
        const Explanation e = explained(a, b, shape);
        for (const Cause cause : {Cause::drag, Cause::power}) {
            const auto c = static_cast<std::size_t>(cause);
            EXPECT_LE(e.total.causes[c].low, truth.total[c]) << name(cause) << ", seed " << seed;
            EXPECT_GE(e.total.causes[c].high, truth.total[c]) << name(cause) << ", seed " << seed;
            error[c] += std::pow(e.total.causes[c].value - truth.total[c], 2) / seeds;
        }
    }
    for (const Cause cause : {Cause::drag, Cause::power}) {
        const double rms = std::sqrt(error[static_cast<std::size_t>(cause)]);
        std::printf("%s: RMS error %.3f s\n", std::string(name(cause)).c_str(), rms);
        EXPECT_LE(rms, 0.15);
    }
}

namespace {

// The true car as the only draw that the laps allow; its power by speed as its gears make it.
void tell_the_truth(KnownSide& side, const truth::CarTruth& car, const truth::DriverTruth& driver) {
    car::CarDraw draw;
    draw.density_kg_m3 = 1.2;
    draw.car.grip = car.mu;
    draw.car.load_exponent = car.load_exponent;
    draw.car.downforce_n_per_mps2 = 0.6 * car.downforce_area_m2;
    draw.car.drag_n_per_mps2 = 0.6 * car.drag_area_m2;
    draw.car.rolling_resistance = car.rolling_resistance;
    draw.car.rotating_share = car.rotating_share;
    draw.car.mass_kg = car.mass_kg;
    draw.car.power_w = car.power_w;
    draw.car.braking_share = car.brake_efficiency * driver.brake_share / driver.grip_share;
    draw.car.traction_share = car.traction_share * driver.exit_share / driver.grip_share;
    for (double v = 0.0; v < 100.0; v += car::PowerShares::step_mps) {
        int gear = 1;
        while (gear < 6 && v > car.gear_top_mps[static_cast<std::size_t>(gear - 1)])
            ++gear;
        draw.car.power_shares.of_power.push_back(truth::power_at(car, gear, std::max(15.0, v)) / car.power_w);
    }
    side.figures.typical = draw;
    side.figures.draws.assign(100, draw);
    const auto known = [](double truth) { return car::CarFigure{{truth, 0.99 * truth, 1.01 * truth}, {}}; };
    side.figures.grip = known(car.mu);
    side.figures.downforce_area_m2_per_kg = known(car.downforce_area_m2 / car.mass_kg);
    side.figures.drag_area_m2_per_kg = known(car.drag_area_m2 / car.mass_kg);
    side.figures.power_w_per_kg = known(car.power_w / car.mass_kg);
}

} // namespace

TEST(Explain, WithTrueFiguresTheCausesAreAsTrueAsTheModelErrorSays) {
    const truth::TrackShape shape = truth::ternbank();
    for (const std::uint64_t seed : {500U, 501U, 502U}) {
        truth::Random random(seed, 1);
        truth::CarTruth car_a = truth::light_aero_hatch();
        truth::CarTruth car_b = truth::heavy_powerful_coupe();
        for (truth::CarTruth* car : {&car_a, &car_b}) {
            const double low = 0.6 + 0.3 * random.uniform();
            car->power_curve = {{0.3 * car->redline_rpm, 0.7 * low},
                                {0.6 * car->redline_rpm, low},
                                {0.85 * car->redline_rpm, 1.0},
                                {car->redline_rpm, 0.96}};
            car->rolling_resistance = 0.010 + 0.006 * random.uniform();
        }
        const truth::DriverTruth driver_a = driver_of(seed, 0.95);
        const truth::DriverTruth driver_b = driver_of(seed + 10, 1.0);
        Known a = know(shape, car_a, driver_a, 25.0, seed, true, 2, true);
        Known b = know(shape, car_b, driver_b, 25.0, seed + 1, true, 2, true);
        tell_the_truth(a.side, car_a, driver_a);
        tell_the_truth(b.side, car_b, driver_b);
        const Explanation e = explained(a, b, shape);
        const auto one = truth::true_causes(shape, car_a, car_b, driver_a, 1.2);
        const auto other = truth::true_causes(shape, car_b, car_a, driver_b, 1.2);
        for (const Cause cause : all_causes) {
            const auto c = static_cast<std::size_t>(cause);
            const double truly = 0.5 * (one.total[c] - other.total[c]);
            const Seconds& s = e.total.of(cause);
            std::printf("seed %d, %s: %.3f ±%.3f s, truly %.3f\n", static_cast<int>(seed),
                        std::string(name(cause)).c_str(), s.value, s.half_width(), truly);
            EXPECT_NEAR(s.value, truly, s.half_width() + 0.02) << name(cause) << s.untold;
        }
    }
}

TEST(Explain, RowsAddUpExactly) {
    const truth::TrackShape shape = truth::ternbank();
    const Known& a = aero_car();
    const Known& b = power_car();
    const Explanation e = explained(a, b, shape);
    std::array<double, cause_count> sums{};
    double rest = 0.0;
    for (const SegmentRow& s : e.segments) {
        double sum = s.row.driver_and_rest.value;
        for (std::size_t c = 0; c < cause_count; ++c) {
            sum += s.row.causes[c].value;
            sums[c] += s.row.causes[c].value;
        }
        rest += s.row.driver_and_rest.value;
        EXPECT_NEAR(sum, s.row.gain.value, 1e-9) << s.segment.name;
        EXPECT_NEAR(s.row.aero.value, s.row.of(Cause::downforce).value + s.row.of(Cause::drag).value, 1e-12);
        EXPECT_TRUE(s.does_not_fit.empty()) << s.segment.name << ": " << s.does_not_fit;
        EXPECT_LE(s.row.driver_and_rest.low, s.row.driver_and_rest.high);
    }
    for (std::size_t c = 0; c < cause_count; ++c)
        EXPECT_NEAR(sums[c], e.total.causes[c].value, 1e-9);
    EXPECT_NEAR(rest, e.total.driver_and_rest.value, 1e-9);
    // Downforce earns in the fast corner, power on the straights; signs favour the right car.
    EXPECT_GT(e.total.of(Cause::downforce).value, 0.0);
    EXPECT_LT(e.total.of(Cause::power).value, 0.0);
    EXPECT_GT(e.total.of(Cause::mass).value, 0.0);
    EXPECT_LT(e.total.of(Cause::drag).value, 0.0);
    EXPECT_FALSE(e.per_kilogram);
    ASSERT_TRUE(e.forces_a.downforce_n && e.forces_b.downforce_n);
    EXPECT_GT(e.forces_a.downforce_n->value, e.forces_b.downforce_n->value);
}

TEST(Explain, EqualCarsHaveNoCauses) {
    const truth::TrackShape shape = truth::ternbank();
    const Known a = know(shape, truth::light_aero_hatch(), driver_of(11, 0.97), 25.0, 21);
    const Known b = know(shape, truth::light_aero_hatch(), driver_of(12, 0.97), 10.0, 22);
    const Explanation e = explained(a, b, shape);
    for (const Cause cause : all_causes)
        EXPECT_FALSE(e.total.of(cause).told_apart_from_zero()) << name(cause);
    EXPECT_NEAR(e.total.of(Cause::mass).value, 0.0, 0.05);
    EXPECT_NEAR(e.total.of(Cause::power).value, 0.0, 0.1);
}

// Of one car with two drivers, one of whom keeps more in hand: corners show that, and not that it is the driver.
TEST(Explain, CorneringAsDrivenTellsWhatTheDriversUse) {
    const truth::TrackShape shape = truth::ternbank();
    truth::DriverTruth brave = driver_of(11, 0.97);
    brave.grip_share = 0.98;
    truth::DriverTruth careful = driver_of(12, 0.97);
    careful.grip_share = 0.92;
    const Known a = know(shape, truth::light_aero_hatch(), brave, 25.0, 21);
    const Known b = know(shape, truth::light_aero_hatch(), careful, 25.0, 22);
    const Explanation e = explained(a, b, shape);
    EXPECT_LT(e.total.cornering_as_driven.half_width(), 0.8 * e.total.cornering.half_width());
    EXPECT_GT(e.total.cornering_as_driven.low, 0.0);
    EXPECT_LT(e.total.cornering.low, 0.0) << "it may be the tyres";
}

TEST(Explain, WithoutAMassItWorksPerKilogram) {
    const truth::TrackShape shape = truth::ternbank();
    const Known& a = aero_car();
    const Known b = know(shape, truth::heavy_powerful_coupe(), driver_of(2, 1.0), 10.0, 2, false);
    const Explanation e = explained(a, b, shape);
    EXPECT_TRUE(e.per_kilogram);
    EXPECT_DOUBLE_EQ(e.total.of(Cause::mass).value, 0.0);
    EXPECT_FALSE(e.warnings.empty());
    EXPECT_EQ(e.sensitivities_a.size(), 3u);
    for (const SegmentRow& s : e.segments) {
        double sum = s.row.driver_and_rest.value;
        for (const Seconds& c : s.row.causes)
            sum += c.value;
        EXPECT_NEAR(sum, s.row.gain.value, 1e-9);
    }
}

TEST(Explain, ThreadsDoNotChangeTheAnswer) {
    const truth::TrackShape shape = truth::ternbank();
    const Known& a = aero_car();
    const Known& b = power_car();
    ExplainOptions one;
    one.threads = 1;
    EXPECT_EQ(explained(a, b, shape, one).total.of(Cause::drag).high,
              explained(a, b, shape).total.of(Cause::drag).high);
    int told = 0;
    const auto cancelled = explain(a.side, b.side, compared(a, b, test::true_segments(shape)), {},
                                   [&](std::string_view, double) { return ++told < 3; });
    ASSERT_FALSE(cancelled.ok());
    EXPECT_EQ(cancelled.error().code, base::ErrorCode::cancelled);
}

TEST(WhatIf, FollowsTheSimulator) {
    const truth::TrackShape shape = truth::ternbank();
    const truth::DriverTruth driver = driver_of(1, 0.95);
    const Known& a = aero_car();
    const Known& b = power_car();
    const Explanation e = explained(a, b, shape);
    const Prediction lighter = what_if(*e.model_a, {.mass_kg = -50.0});
    double sum = 0.0;
    for (const Seconds& s : lighter.segments)
        sum += s.value;
    EXPECT_NEAR(sum, lighter.lap.value, 1e-9);
    // The truth of the same change: exchange of mass alone.
    truth::CarTruth light = truth::light_aero_hatch();
    light.mass_kg -= 50.0;
    const auto truth = truth::true_causes(shape, truth::light_aero_hatch(), light, driver, 1.2);
    EXPECT_NEAR(lighter.lap.value, truth.gain_s, 0.1 * std::abs(truth.gain_s) + 0.02);
    EXPECT_DOUBLE_EQ(what_if(*e.model_a, {}).lap.value, 0.0);
    for (const Sensitivity& s : e.sensitivities_a)
        EXPECT_LT(s.prediction.lap.value, 0.0) << s.what;
}
