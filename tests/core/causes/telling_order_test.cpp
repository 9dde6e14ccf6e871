// SPDX-License-Identifier: GPL-3.0-or-later
// The order follows the widths of intervals, over drawn posteriors.
#include "core/causes/telling_order.h"

#include "core/causes/spread.h"
#include "core/math/random.h"

#include <gtest/gtest.h>

#include <cmath>

using namespace lapwright;
using namespace lapwright::causes;

namespace {

Seconds with(double half) {
    return {0.5, 0.5 - half, 0.5 + half};
}

// grip, downforce, together; drag and power as independent as can be.
Row row(double grip, double downforce, double together) {
    Row r;
    r.causes = {with(grip), with(downforce), with(0.1), with(0.2), with(0.1)};
    r.cornering = with(together);
    r.cornering_as_driven = with(2.0 * together);
    r.straights = with(std::hypot(0.1, 0.2));
    r.aero = with(std::hypot(0.1, downforce));
    return r;
}

} // namespace

TEST(TellingOrder, ASplitStandsWhereItIsNarrowerThanItsSum) {
    const Row split = row(0.3, 0.4, 0.5);
    for (const Cause cause : all_causes)
        EXPECT_FALSE(comes_behind(split, term(cause))) << name(cause);
    EXPECT_FALSE(comes_behind(split, Term::aero));
    EXPECT_EQ(columns(split).size(), cause_count);
}

TEST(TellingOrder, WhatIsWiderThanItsSumComesBehindIt) {
    const Row together = row(1.5, 1.7, 0.4);
    EXPECT_EQ(comes_behind(together, Term::tyre_grip), Term::cornering);
    EXPECT_EQ(comes_behind(together, Term::downforce), Term::cornering);
    EXPECT_EQ(comes_behind(together, Term::aero), Term::cornering) << "it leans on that split";
    EXPECT_FALSE(comes_behind(together, Term::drag));
    const std::vector<Column> all = columns(together);
    ASSERT_EQ(all.size(), cause_count + 1);
    EXPECT_EQ(all[0].term, Term::cornering);
    EXPECT_EQ(all[1].part_of, Term::cornering);
    EXPECT_TRUE(all[2].behind);
}

TEST(TellingOrder, WhatCornersShowGoesBeforeTheCarsPartOfIt) {
    Row r = row(1.5, 1.7, 1.2);
    EXPECT_FALSE(comes_behind(r, Term::cornering));
    r.cornering_as_driven = with(0.5);
    EXPECT_EQ(comes_behind(r, Term::cornering), Term::cornering_as_driven);
    EXPECT_EQ(comes_behind(r, Term::downforce), Term::cornering) << "it is a part of what the cars do";
    EXPECT_EQ(columns(r).size(), cause_count + 1) << "the drivers' share belongs to no column";
    r.cornering = base::untold("the laps do not tell the downforce of A");
    EXPECT_EQ(comes_behind(r, Term::cornering), Term::cornering_as_driven);
}

TEST(TellingOrder, OnePartMayStandAlone) {
    const Row grip = row(0.2, 1.0, 0.8);
    EXPECT_FALSE(comes_behind(grip, Term::tyre_grip));
    EXPECT_EQ(comes_behind(grip, Term::downforce), Term::cornering);
}

TEST(TellingOrder, WhatCannotBeToldComesBehindASumThatCan) {
    Row untold = row(0.3, 0.4, 0.5);
    untold.causes[1] = base::untold("the laps do not tell the downforce of A");
    untold.aero = with(0.8);
    EXPECT_EQ(comes_behind(untold, Term::downforce), Term::cornering);
    untold.cornering = untold.aero = base::untold("nor that");
    EXPECT_FALSE(comes_behind(untold, Term::downforce));
    EXPECT_EQ(columns(untold).size(), cause_count);
}

TEST(TellingOrder, ColumnsThatAreNoPartsAddUp) {
    math::Random random(11, 3);
    for (int world = 0; world < 60; ++world) {
        const double shared[2] = {2.0 * random.normal(), 2.0 * random.normal()};
        std::vector<std::array<double, cause_count>> draws(200);
        for (auto& d : draws) {
            for (double& x : d)
                x = random.normal();
            const double one = shared[0] * random.normal();
            const double other = shared[1] * random.normal();
            d[0] += one;
            d[1] -= one;
            d[2] += other;
            d[3] -= other;
        }
        const auto spread = [&](auto get) {
            std::vector<double> values;
            for (const auto& d : draws)
                values.push_back(get(d));
            return spread_of(values);
        };
        Row r;
        double explained = 0.0;
        for (std::size_t c = 0; c < cause_count; ++c) {
            r.causes[c] = spread([c](const auto& d) { return d[c]; });
            explained += r.causes[c].value;
        }
        r.cornering = spread([](const auto& d) { return d[0] + d[1]; });
        r.aero = spread([](const auto& d) { return d[1] + d[2]; });
        r.straights = spread([](const auto& d) { return d[2] + d[3]; });
        double told = 0.0;
        for (const Column& column : columns(r)) {
            if (!column.part_of) told += of(r, column.term).value;
        }
        EXPECT_NEAR(told, explained, 1e-9);
        if (std::abs(shared[0]) > 2.0) {
            EXPECT_EQ(comes_behind(r, Term::tyre_grip), Term::cornering);
        }
    }
}
