// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing in words: no stronger than the interval, and nothing said twice.
#include "core/findings/wing_words.h"

#include <gmock/gmock.h>

using namespace lapwright;
using namespace lapwright::findings;
using testing::HasSubstr;
using testing::Not;

namespace {

causes::AeroBalance balance(double best, base::Estimate gain) {
    causes::AeroBalance b;
    for (int k = -4; k <= 8; ++k)
        b.steps.push_back({0.25 * k, {}});
    b.best_m2 = {best, best - 0.6, best + 0.7};
    b.gain = gain;
    b.flat_from_m2 = best - 0.5;
    b.flat_to_m2 = best + 0.5;
    return b;
}

} // namespace

TEST(WingWords, TheBestIsSaidWithItsIntervalAndHowFlatItIs) {
    const std::string said = wing_sentence(balance(0.75, {-0.121, -0.22, -0.02}), "A", false);
    EXPECT_THAT(said, HasSubstr("A is quickest with downforce 0.8 m² more (+0.2 to +1.4), worth 0.12 ±0.10 s a lap."));
    EXPECT_THAT(said, HasSubstr("from +0.2 to +1.2 m²"));
    EXPECT_THAT(wing_sentence(balance(-0.5, {-0.3, -0.4, -0.2}), "B", true), HasSubstr("0.5 m² on a tonne less"));
}

TEST(WingWords, WhatMayBeChanceIsNotSaid) {
    const std::string said = wing_sentence(balance(0.75, {-0.05, -0.15, 0.05}), "A", false);
    EXPECT_THAT(said, HasSubstr("cannot be told"));
    EXPECT_THAT(said, Not(HasSubstr("is quickest with")));
}

TEST(WingWords, AtTheEndOfTheSweepNothingIsSaidOfFlatness) {
    causes::AeroBalance end = balance(2.0, {-1.0, -1.5, -0.5});
    end.at_the_end = true;
    const std::string said = wing_sentence(end, "A", false);
    EXPECT_THAT(said, HasSubstr("gets quicker all the way to 2.0 m² more"));
    EXPECT_THAT(said, Not(HasSubstr("Within")));
}

TEST(WingWords, WhyItIsNotToldIsSaid) {
    causes::AeroBalance none;
    none.untold = "the laps do not tell the drag of B";
    EXPECT_EQ(wing_sentence(none, "B", false),
              "B: how much downforce is best cannot be told: the laps do not tell the drag of B.");
}
