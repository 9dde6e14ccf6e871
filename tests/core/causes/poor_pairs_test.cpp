// SPDX-License-Identifier: GPL-3.0-or-later
// Pairs of drawn cars, drivers and recordings, from good to poor: every figure that is shown lies inside its interval
// and within what physics allows, what is not shown says why, and what cannot be had is nowhere 0.
#include "core/causes/explain.h"
#include "core/causes/spread.h"
#include "core/causes/withhold.h"

#include "core/car/drawn_recording.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

using namespace lapwright;
using namespace lapwright::causes;

namespace {

// One track and air for both, as a pair of sessions has it.
struct DrawnPair {
    car::CarData a;
    car::CarData b;
};

car::CarData drawn_data(std::uint64_t seed, double poor) {
    truth::Random random(seed, 78);
    const truth::CarTruth car = test::drawn_car(random);
    const auto laps = 1 + static_cast<int>(7.0 * random.uniform());
    truth::SessionPlan plan;
    plan.flying_laps = laps;
    plan.air_density = 1.2;
    const truth::Session session =
        truth::drive_session(truth::ternbank(), car, test::uneven_driver(seed, 0.95), plan, seed);
    return test::known_data(session, test::drawn_noise(random, poor), seed);
}

std::vector<double> segment_times(const lap::LapTrace& lap, const std::vector<track::Segment>& segments) {
    std::vector<double> times;
    for (const track::Segment& s : segments)
        times.push_back(lap.time_at(s.end_m) - lap.time_at(s.start_m));
    return times;
}

void expect_shown_soundly(const Seconds& s, const std::string& what) {
    if (!s.told()) {
        EXPECT_TRUE(std::isnan(s.value) && std::isnan(s.low) && std::isnan(s.high)) << what;
        return;
    }
    EXPECT_TRUE(std::isfinite(s.value)) << what;
    EXPECT_LE(s.low, s.value) << what;
    EXPECT_LE(s.value, s.high) << what;
}

void expect_row(const Row& row, const std::string& what) {
    expect_shown_soundly(row.gain, what + " gain");
    for (const Cause cause : all_causes)
        expect_shown_soundly(row.of(cause), what + " " + std::string(name(cause)));
    expect_shown_soundly(row.cornering, what + " cornering");
    expect_shown_soundly(row.aero, what + " aero");
    expect_shown_soundly(row.straights, what + " straights");
    expect_shown_soundly(row.driver_and_rest, what + " rest");
}

// Seconds of a lap that no club car is quicker by for one figure alone.
constexpr double max_share_of_lap = 0.35;

std::optional<Explanation> explained(std::uint64_t seed, double poor) {
    const DrawnPair pair{drawn_data(2 * seed, poor), drawn_data(2 * seed + 1, poor)};
    auto a = car::car_figures(pair.a, {60, seed});
    auto b = car::car_figures(pair.b, {60, seed + 1});
    if (!a || !b) return std::nullopt;
    KnownSide side_a{std::move(a).value(), pair.a.laps, segment_times(pair.a.laps.front(), pair.a.segments)};
    KnownSide side_b{std::move(b).value(), pair.b.laps, segment_times(pair.b.laps.front(), pair.b.segments)};
    comparison::Comparison compared;
    double gap = 0.0;
    for (std::size_t k = 0; k < pair.a.segments.size(); ++k) {
        comparison::SegmentComparison s;
        s.segment = pair.a.segments[k];
        s.gain_s = {side_b.segment_s[k] - side_a.segment_s[k], 0.01, false};
        gap += s.gain_s.value;
        compared.segments.push_back(s);
    }
    compared.gap_at_end_s = {gap, 0.02, false};
    auto result = explain(side_a, side_b, compared);
    EXPECT_TRUE(result.ok());
    return std::move(result).value();
}

} // namespace

TEST(PoorPairs, WhatIsShownIsSoundWhateverTheRecordings) {
    int withheld = 0;
    int shown = 0;
    int refused = 0;
    for (const double poor : {0.0, 0.5, 1.0})
        for (std::uint64_t seed = 500; seed < 507; ++seed) {
            const auto e = explained(seed, poor);
            if (!e) {
                ++refused;
                continue;
            }
            const std::string what = "poor " + std::to_string(poor) + ", seed " + std::to_string(seed);
            expect_row(e->total, what);
            double lap_s = 0.0;
            for (const SegmentRow& s : e->segments) {
                expect_row(s.row, what + " " + s.segment.name);
                lap_s += s.longer_s();
                for (const double use : {s.use_a, s.use_b})
                    if (std::isfinite(use)) {
                        EXPECT_GT(use, 0.4) << what;
                        EXPECT_LE(use, 1.2) << what;
                    }
            }
            for (const Cause cause : all_causes) {
                const Seconds& s = e->total.of(cause);
                (s.told() ? shown : withheld) += 1;
                if (s.told()) {
                    EXPECT_LT(std::abs(s.value), max_share_of_lap * lap_s) << what << " " << name(cause);
                    continue;
                }
                EXPECT_TRUE(std::ranges::any_of(e->warnings, [&](const std::string& words) {
                    return words.find(s.untold) != std::string::npos;
                })) << what;
            }
            // A grip that leans on a downforce which nobody knows is not told beside the sum.
            const Row& total = e->total;
            if (total.cornering.told() && !total.of(Cause::downforce).told() && total.of(Cause::tyre_grip).told()) {
                EXPECT_GE(total.cornering.half_width(), 0.8 * total.of(Cause::tyre_grip).half_width()) << what;
            }
            if (total.of(Cause::tyre_grip).untold.starts_with("only grip and downforce together")) {
                EXPECT_TRUE(total.cornering.told()) << what;
            }
            for (const auto* all : {&e->sensitivities_a, &e->sensitivities_b})
                for (const Sensitivity& s : *all)
                    expect_shown_soundly(s.prediction.lap, what + " " + s.what);
        }
    std::printf("causes shown %d, withheld %d; pairs refused %d of 21\n", shown, withheld, refused);
    EXPECT_GT(shown, 2 * withheld);
}

// The rule by itself, since drawn pairs seldom meet it: downforce that the laps do not tell, and a sum that is known
// better than the grip, or hardly better.
TEST(PoorPairs, GripThatLeansOnAnUntoldDownforceIsNotTold) {
    int tried = 0;
    for (std::uint64_t seed = 500; seed < 507; ++seed) {
        const auto known = explained(seed, 0.0);
        if (!known || !known->total.cornering.told() || !known->total.of(Cause::tyre_grip).told()) continue;
        ++tried;
        for (const bool leans : {true, false}) {
            Explanation e = *known;
            e.car_b.downforce_area_m2_per_kg.decided_by = car::DecidedBy::prior;
            Seconds& grip = e.total.causes[static_cast<std::size_t>(Cause::tyre_grip)];
            const double half = e.total.cornering.half_width() * (leans ? 1.5 : 1.1);
            grip = {grip.value, grip.value - half, grip.value + half};
            Seconds& downforce = e.total.causes[static_cast<std::size_t>(Cause::downforce)];
            downforce = {0.0, -half, half};
            withhold_what_cannot_be_told(e);
            EXPECT_FALSE(e.total.of(Cause::downforce).told()) << seed;
            EXPECT_EQ(e.total.of(Cause::tyre_grip).told(), !leans) << seed;
            EXPECT_EQ(e.total.cornering.told(), leans) << seed;
        }
    }
    EXPECT_GT(tried, 3);
}

TEST(Spread, ARunawayDrawWithholdsTheFigure) {
    std::vector<double> draws(200, 1.0);
    for (std::size_t i = 0; i < draws.size(); ++i)
        draws[i] += 0.001 * static_cast<double>(i);
    EXPECT_TRUE(spread_of(draws).told());
    draws[7] = 4000.0;
    EXPECT_FALSE(spread_of(draws).told());
    EXPECT_TRUE(std::isnan(spread_of(draws).value));
    draws[7] = std::numeric_limits<double>::infinity();
    EXPECT_FALSE(spread_of(draws).told());
}

TEST(MostPossible, FollowsTheRatiosOfTheFigures) {
    car::CarFigures a;
    car::CarFigures b;
    a.power_w_per_kg = {{200.0, 190.0, 210.0}, car::DecidedBy::data};
    b.power_w_per_kg = {{200.0, 190.0, 210.0}, car::DecidedBy::data};
    EXPECT_NEAR(max_possible_s(a, b, Cause::power, 90.0), 30.0 * std::log(210.0 / 190.0), 1e-9);
    b.power_w_per_kg = {{100.0, 95.0, 105.0}, car::DecidedBy::data};
    EXPECT_NEAR(max_possible_s(a, b, Cause::power, 90.0), 30.0 * std::log(210.0 / 95.0), 1e-9);
    b.power_w_per_kg.low = 0.0;
    EXPECT_TRUE(std::isinf(max_possible_s(a, b, Cause::power, 90.0)));
}
