// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/wording.h"

#include <gtest/gtest.h>
#include <limits>

using namespace lapwright::base;

TEST(Wording, AGainNamesWhoWonIt) {
    EXPECT_EQ(gain_text(0.184, std::nullopt), "A\u00a00.18");
    EXPECT_EQ(gain_text(-0.061, std::nullopt), "B\u00a00.06");
    EXPECT_EQ(gain_text(0.0049, std::nullopt), "0.00");
    EXPECT_EQ(gain_text(std::numeric_limits<double>::quiet_NaN(), 0.1), "—");
}

TEST(Wording, AGainIsRoundedToItsMargin) {
    // sd 0.03 s: the 95 % half-width is 0.0588 s.
    EXPECT_EQ(gain_with_margin(0.1842, 0.03), "A\u00a00.18 ±0.06");
    EXPECT_EQ(gain_with_margin(-0.1842, 0.002), "B\u00a00.184 ±0.004");
    EXPECT_EQ(gain_margin_text(std::nullopt), "");
}

TEST(Wording, AGainStandsOutWhenItsIntervalLeavesZeroOut) {
    EXPECT_TRUE(stands_out(0.06, 0.03)); // half-width 0.0588
    EXPECT_FALSE(stands_out(-0.058, 0.03));
    EXPECT_TRUE(stands_out(0.001, std::nullopt));
}

TEST(Wording, AGapSaysWhoIsAhead) {
    EXPECT_EQ(gap_text(0.18, std::nullopt), "A ahead 0.18\u00a0s");
    EXPECT_EQ(gap_text(-0.5, std::nullopt), "B ahead 0.50\u00a0s");
    EXPECT_EQ(gap_text(0.004, std::nullopt), "level");
    EXPECT_EQ(gap_text(0.18, 0.1), "level") << "within its error nobody is ahead";
    EXPECT_EQ(gap_text(0.2, 0.1), "A ahead 0.2\u00a0s");
}

TEST(Wording, ALapTimeIsNotMoreExactThanItsMargin) {
    EXPECT_EQ(lap_time_with_margin(89.9214, std::nullopt), "1:29.921");
    EXPECT_EQ(lap_time_with_margin(89.9214, 0.003), "1:29.921 ±0.006");
    EXPECT_EQ(lap_time_with_margin(89.9214, 0.02), "1:29.92 ±0.04");
}

TEST(Wording, FiguresAreRoundedInTheUnitThatIsShown) {
    // 0.05 m/s is 0.353 km/h at 95 %.
    EXPECT_EQ(known_figure(41.11, 0.05, Quantity::speed, UnitSystem::metric, 1, true), "148.0 ±0.4");
    EXPECT_EQ(known_figure(41.11, 0.05, Quantity::speed, UnitSystem::metric, 1, false), "148.0");
    EXPECT_EQ(known_figure(41.11, 1.0, Quantity::speed, UnitSystem::metric, 1, true), "148 ±7");
    EXPECT_EQ(known_figure(41.11, std::nullopt, Quantity::speed, UnitSystem::metric, 0, true), "148");
}

TEST(Wording, TheFastestIsNotBehind) {
    EXPECT_EQ(behind_text(90.4, 90.4), "");
    EXPECT_EQ(behind_text(90.573, 90.4), "+0.17");
}

TEST(Wording, PlacesAreSaidByWhoIsLater) {
    EXPECT_EQ(later_text(1042.0, {}, 1010.0, {}, UnitSystem::metric), "A 32\u00a0m later");
    EXPECT_EQ(later_text(1010.0, 1.0, 1042.0, {}, UnitSystem::us), "B 105\u00a0ft later");
    EXPECT_EQ(later_text(1010.0, {}, 1010.4, {}, UnitSystem::metric), "level");
    EXPECT_EQ(later_text(1013.0, 60.0, 1000.0, 30.0, UnitSystem::metric), "cannot be told");
    EXPECT_EQ(later_text(1000.5, 0.4, 1000.0, 0.4, UnitSystem::metric), "level");
}

TEST(Wording, DatesAndRates) {
    EXPECT_EQ(date_text(0.0), "1 Jan 1970, 0:00 UTC");
    EXPECT_EQ(date_text(1778926803.4), "16 May 2026, 10:20 UTC");
    EXPECT_EQ(duration_text(52.2), "52\u00a0s");
    EXPECT_EQ(duration_text(1080.0), "18\u00a0min");
    EXPECT_EQ(rate_text(25.0), "25\u00a0Hz");
    EXPECT_EQ(rate_text(0.5), "0.5\u00a0Hz");
    EXPECT_EQ(rate_text(0.0), "—");
}

TEST(Wording, AShareNeverLooksSurerThanItIs) {
    EXPECT_EQ(share_text(0.934), "93\u00a0%");
    EXPECT_EQ(share_text(0.002), "under 1\u00a0%");
    EXPECT_EQ(share_text(0.998), "over 99\u00a0%");
    EXPECT_EQ(share_text(1.0), "100\u00a0%");
}
