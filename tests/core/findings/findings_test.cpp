// SPDX-License-Identifier: GPL-3.0-or-later
// Claims in words that their intervals allow, in the order of what they are worth.
#include "core/findings/findings.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace lapwright;
using namespace lapwright::findings;
using causes::Cause;
using causes::Seconds;
using testing::HasSubstr;
using testing::Not;

namespace {

track::Segment segment(const std::string& name, bool corner, double start_m) {
    track::Segment s;
    s.name = name;
    s.kind = corner ? track::SegmentKind::corner : track::SegmentKind::straight;
    s.start_m = start_m;
    s.end_m = start_m + 500.0;
    return s;
}

Seconds with(double value, double half) {
    return {value, value - half, value + half};
}

// Two straights around one fast corner: downforce for A, power and drag for B, mass hardly known.
causes::Explanation example() {
    causes::Explanation e;
    const double downforce[3] = {0.2, 1.6, 0.3};
    const double drag[3] = {-0.4, 0.0, -0.4};
    const char* names[3] = {"Quay straight", "Sweep", "Back straight"};
    for (std::size_t k = 0; k < 3; ++k) {
        causes::SegmentRow row;
        row.segment = segment(names[k], k == 1, 500.0 * static_cast<double>(k));
        row.row.causes[1] = with(downforce[k], 0.1);
        row.row.causes[2] = with(drag[k], 0.1);
        row.row.causes[3] = with(k == 1 ? 0.0 : -0.6, 0.1);
        e.segments.push_back(row);
    }
    e.total.causes[0] = with(0.3, 1.8);
    e.total.causes[1] = with(2.1, 0.4);
    e.total.causes[2] = with(-0.8, 0.1);
    e.total.causes[3] = with(-1.2, 0.2);
    e.total.causes[4] = with(0.3, 0.4);
    e.total.aero = with(1.3, 0.5);
    e.total.cornering = with(2.4, 2.0); // no better known than its parts
    e.total.cornering_as_driven = e.total.cornering;
    e.total.straights = with(-2.0, 0.25);
    e.total.driver_and_rest = with(-0.1, 2.0);
    e.sensitivities_a.push_back({"10 % less drag", Cause::drag, {}, {with(-0.2, 0.02), {}}});
    e.sensitivities_b.push_back({"10 % more downforce", Cause::downforce, {}, {with(-0.15, 0.05), {}}});
    return e;
}

comparison::Comparison laps() {
    comparison::Comparison c;
    comparison::SegmentComparison straight;
    straight.segment = segment("Quay straight", false, 0.0);
    straight.gain_s = {0.004, 0.02, false};
    comparison::SegmentComparison corner;
    corner.segment = segment("Sweep", true, 500.0);
    corner.gain_s = {-0.18, 0.01, false};
    corner.a.min_speed_mps = comparison::Figure{30.0, 0.1, false};
    corner.b.min_speed_mps = comparison::Figure{32.0, 0.1, false};
    corner.a.braking_point_m = comparison::Figure{480.0, 2.0, false};
    corner.b.braking_point_m = comparison::Figure{495.0, 2.0, false};
    c.segments = {straight, corner};
    c.gap_at_end_s = {-0.176, 0.02, false};
    return c;
}

const Finding& about(const std::vector<Finding>& all, About what) {
    const auto found = std::ranges::find(all, what, &Finding::about);
    EXPECT_NE(found, all.end());
    return *found;
}

} // namespace

TEST(Certainty, FollowsTheInterval) {
    EXPECT_EQ(certainty_of(0.5, 0.1, 0.9), Certainty::is);
    EXPECT_EQ(certainty_of(-0.5, -0.9, -0.1), Certainty::is);
    EXPECT_EQ(certainty_of(0.5, -0.1, 1.1), Certainty::is_probably);
    EXPECT_EQ(certainty_of(0.1, -0.5, 0.7), Certainty::cannot_be_told);
    EXPECT_EQ(certainty_of(0.0, -0.5, 0.5), Certainty::cannot_be_told);
    EXPECT_NEAR(chance_of_sign(1.0, 0.0, 2.0), 0.975, 1e-4); // the interval just touches zero
    EXPECT_NEAR(chance_of_sign(0.0, -1.0, 1.0), 0.5, 1e-12);
}

TEST(Findings, CausesInWordsByCertainty) {
    const causes::Explanation e = example();
    const auto all = findings::findings({}, {}, &e, base::UnitSystem::metric);
    const Finding& downforce = about(all, About::downforce);
    EXPECT_EQ(downforce.claim, "Downforce is worth 2.1 s a lap to A, most in Sweep.");
    EXPECT_EQ(downforce.favours, Favours::a);
    EXPECT_EQ(downforce.segment, 1u);
    EXPECT_THAT(downforce.try_next, HasSubstr("10 % more downforce would be worth 0.15 s a lap to B"));
    const Finding& drag = about(all, About::drag);
    EXPECT_THAT(drag.claim, HasSubstr("is worth 0.80 s a lap to B, most on the straights"));
    EXPECT_THAT(drag.try_next, HasSubstr("A: 10 % less drag"));
    EXPECT_THAT(about(all, About::mass).claim, HasSubstr("is probably worth"));
    const Finding& grip = about(all, About::tyre_grip);
    EXPECT_EQ(grip.favours, Favours::neither);
    EXPECT_THAT(grip.claim, HasSubstr("cannot be told"));
    EXPECT_THAT(about(all, About::aero).claim,
                HasSubstr("A's aero is worth 1.3 s a lap: downforce earns 2.1 s, most in Sweep; drag costs 0.80 s"));
}

TEST(Findings, RankedByWorthTimesCertainty) {
    const causes::Explanation e = example();
    const auto all = findings::findings(laps(), {}, &e, base::UnitSystem::metric);
    EXPECT_EQ(all.front().about, About::aero); // its parts, downforce and drag, come after it
    EXPECT_EQ(all[1].about, About::power);
    const auto untold = [](const Finding& f) { return f.certainty == Certainty::cannot_be_told; };
    for (std::size_t i = 1; i < all.size(); ++i) {
        EXPECT_FALSE(untold(all[i - 1]) && !untold(all[i])) << "what cannot be told comes last";
        if (untold(all[i]) == untold(all[i - 1])) {
            EXPECT_LE(all[i].rank, all[i - 1].rank);
        }
    }
}

TEST(Findings, SegmentsTellWhatTheOtherDriverMayTry) {
    causes::Explanation same = example();
    same.same_car = true;
    Advice advice;
    advice.reserve_a.resize(2);
    advice.reserve_a[1].min_speed_mps = 5.0;
    const auto all = findings::findings(laps(), {}, &same, base::UnitSystem::metric, advice);
    ASSERT_EQ(all.size(), 1u); // 4 ms on the straight are nothing
    const Finding& f = all.front();
    EXPECT_EQ(f.favours, Favours::b);
    EXPECT_THAT(f.claim, HasSubstr("B is quicker in Sweep, by 0.18 s"));
    EXPECT_THAT(f.evidence, HasSubstr("quicker at the slowest point by 7.2"));
    EXPECT_THAT(f.evidence, HasSubstr("later"));
    EXPECT_THAT(f.try_next, HasSubstr("A, where you judge it safe: carry up to 7.2"));
    EXPECT_DOUBLE_EQ(f.start_m, 500.0);
}

TEST(Findings, WhatTheLapsDoNotRepeatIsOnlyProbable) {
    comparison::Repeatability quiet;
    comparison::Repeatability shaky;
    shaky.mean_difference_s = -0.05;
    shaky.low_s = -0.3;
    shaky.high_s = 0.2;
    const auto all = findings::findings(laps(), {quiet, shaky}, nullptr, base::UnitSystem::metric);
    EXPECT_THAT(all.front().claim, HasSubstr("B is probably quicker in Sweep"));
}

TEST(CausesSentence, OneCarHasNoCauses) {
    causes::Explanation e = example();
    e.same_car = true;
    EXPECT_THAT(causes_sentence(e), HasSubstr("same car"));
    EXPECT_EQ(findings::findings(laps(), {}, &e, base::UnitSystem::metric).size(), 1u);
}

TEST(CausesSentence, SaysNoMoreThanIsKnown) {
    causes::Explanation e = example();
    EXPECT_THAT(causes_sentence(e), HasSubstr("A's aero is worth 1.3 s a lap"));
    // Aero not told: the largest cause that is, and what is not.
    e.total.aero = with(0.2, 1.5);
    e.total.causes[1] = with(0.3, 1.5);
    const std::string power = causes_sentence(e);
    EXPECT_THAT(power, HasSubstr("Power is worth 1.2 s a lap to B"));
    EXPECT_THAT(power, HasSubstr("tyre grip and downforce are worth cannot be told"));
    // Nothing told.
    for (auto& cause : e.total.causes)
        cause = with(0.1, 1.0);
    e.total.straights = with(0.2, 1.4);
    EXPECT_THAT(causes_sentence(e), HasSubstr("cannot be told"));
    EXPECT_THAT(causes_sentence(e), Not(HasSubstr("worth")));
}

TEST(Findings, ASumThatIsKnownBetterComesBeforeItsParts) {
    causes::Explanation e = example();
    e.total.causes[0] = with(0.9, 1.8);
    e.total.causes[1] = with(1.5, 1.7);
    e.total.cornering = with(2.4, 0.6);
    e.total.cornering_as_driven = with(2.4, 0.6);
    e.total.aero = with(0.7, 1.7);
    const auto all = findings::findings(laps(), {}, &e, base::UnitSystem::metric);
    EXPECT_EQ(all.front().about, About::cornering);
    EXPECT_THAT(all.front().claim, HasSubstr("Tyre grip and downforce together are worth A 2.4 ±0.6 s a lap"));
    EXPECT_THAT(all.front().claim, HasSubstr("how much of it is downforce cannot be told"));
    EXPECT_THAT(causes_sentence(e), HasSubstr("together"));
    const double half = 0.5 * about(all, About::cornering).rank;
    for (const About part : {About::tyre_grip, About::downforce, About::aero})
        EXPECT_LE(about(all, part).rank, half);
}

TEST(Findings, WhatCornersShowComesBeforeTheCarsPartOfIt) {
    causes::Explanation e = example();
    e.total.causes[0] = with(0.9, 2.8);
    e.total.causes[1] = with(1.5, 2.7);
    e.total.cornering = with(2.4, 1.9);
    e.total.cornering_as_driven = with(2.6, 0.6);
    e.total.aero = with(0.7, 1.7);
    const auto all = findings::findings(laps(), {}, &e, base::UnitSystem::metric);
    EXPECT_EQ(all.front().about, About::cornering_as_driven);
    EXPECT_THAT(all.front().claim, HasSubstr("is worth 2.6 s a lap to A"));
    EXPECT_THAT(all.front().claim, HasSubstr("grip and downforce alone A 2.4 ±1.9"));
    EXPECT_EQ(about(all, About::cornering).behind, About::cornering_as_driven);
    EXPECT_THAT(causes_sentence(e), HasSubstr("Cornering as driven"));
}

// Causes drawn with any correlation: what a sum is known better than is never said first, nor before the sum.
TEST(Findings, WhatIsKnownLessWellThanASumIsNeverSaidFirst) {
    std::mt19937_64 random(7);
    std::normal_distribution<double> normal;
    int behind = 0;
    for (int i = 0; i < 400; ++i) {
        causes::Explanation e = example();
        const auto drawn = [&] { return with(normal(random), std::exp(normal(random) - 0.5)); };
        for (Seconds& cause : e.total.causes)
            cause = drawn();
        for (Seconds* sum : {&e.total.cornering_as_driven, &e.total.cornering, &e.total.aero, &e.total.straights})
            *sum = drawn();
        const auto all =
            findings::findings(i % 2 == 0 ? laps() : comparison::Comparison{}, {}, &e, base::UnitSystem::metric);
        for (std::size_t k = 0; k < all.size(); ++k) {
            if (!all[k].behind) continue;
            ++behind;
            EXPECT_NE(k, 0u) << i;
            const auto sum = std::ranges::find(all, *all[k].behind, &Finding::about);
            ASSERT_NE(sum, all.end()) << i;
            EXPECT_LT(sum - all.begin(), static_cast<std::ptrdiff_t>(k)) << i;
        }
    }
    EXPECT_GT(behind, 100);
}

TEST(Findings, NothingRestsOnWhatWasWithheld) {
    causes::Explanation e = example();
    const double nothing = std::nan("");
    const Seconds withheld{nothing, nothing, nothing, "the laps do not tell the drag of A"};
    e.total.causes[2] = withheld;
    e.total.aero = e.total.straights = withheld;
    for (causes::SegmentRow& row : e.segments)
        row.row.causes[2] = withheld;
    e.sensitivities_a.front().prediction.lap = withheld;
    const auto all = findings::findings(laps(), {}, &e, base::UnitSystem::metric);
    for (const Finding& f : all) {
        EXPECT_NE(f.about, About::drag);
        EXPECT_NE(f.about, About::aero);
        EXPECT_TRUE(std::isfinite(f.seconds));
        EXPECT_EQ(f.claim.find("—"), std::string::npos) << f.claim;
        EXPECT_THAT(f.try_next, Not(HasSubstr("less drag")));
    }
    EXPECT_THAT(causes_sentence(e), HasSubstr("tyre grip and drag are worth cannot be told"));
}

// A's car is worth 0.14 of the 0.18 s that B wins in the corner.
TEST(TryNext, RestsOnTheDriversOwnShareAlone) {
    causes::Explanation e = example();
    e.segments[1].row.driver_and_rest = with(-0.04, 0.03);
    Advice advice;
    advice.reserve_a.resize(2);
    advice.reserve_a[1].min_speed_mps = 5.0;
    const auto all = findings::findings(laps(), {}, &e, base::UnitSystem::metric, advice);
    // Two m/s are 7.2 km/h, a share of 0.04 / 0.18 of it 1.6.
    EXPECT_THAT(about(all, About::segment).try_next, HasSubstr("carry up to 1.6"));
    // The cars alone: nothing is asked.
    e.segments[1].row.driver_and_rest = with(0.04, 0.03);
    EXPECT_EQ(about(findings::findings(laps(), {}, &e, base::UnitSystem::metric, advice), About::segment).try_next, "");
    e.segments[1].row.driver_and_rest = with(-0.04, 0.4);
    EXPECT_EQ(about(findings::findings(laps(), {}, &e, base::UnitSystem::metric, advice), About::segment).try_next, "");
}

TEST(TryNext, StaysInsideWhatTheDriverHasDoneOrASmallStepBeyond) {
    causes::Explanation e = example();
    e.same_car = true;
    Advice advice;
    const auto told = [&] {
        return findings::findings(laps(), {}, &e, base::UnitSystem::metric, advice).front().try_next;
    };
    EXPECT_THAT(told(), HasSubstr("carry up to 1.8")); // 0.5 m/s
    EXPECT_THAT(told(), HasSubstr("as a first step"));
    advice.reserve_a.resize(2);
    advice.reserve_a[1].min_speed_mps = 1.0;
    EXPECT_THAT(told(), HasSubstr("carry up to 3.6"));
    EXPECT_THAT(told(), HasSubstr("as on another of your clean laps"));
}

TEST(TryNext, SpeaksToTheDriverOfOnesOwnCar) {
    causes::Explanation e = example();
    const auto tries = [&](std::optional<causes::Side> mine) {
        std::string all;
        for (const Finding& f : findings::findings(laps(), {}, &e, base::UnitSystem::metric, {mine, {}, {}}))
            all += f.try_next + "\n";
        return all;
    };
    EXPECT_THAT(tries({}), HasSubstr("A: 10 % less drag"));
    EXPECT_THAT(tries({}), HasSubstr("to B"));
    EXPECT_THAT(tries(causes::Side::a), HasSubstr("A: 10 % less drag"));
    EXPECT_THAT(tries(causes::Side::a), Not(HasSubstr("B: ")));
    EXPECT_THAT(tries(causes::Side::b), HasSubstr("B: 10 % more downforce"));
    EXPECT_THAT(tries(causes::Side::b), Not(HasSubstr("A: ")));
}
