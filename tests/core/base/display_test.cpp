// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/display.h"

#include "core/base/error.h"
#include "core/base/number_text.h"

#include <gtest/gtest.h>
#include <limits>

using namespace lapwright::base;

TEST(Display, LapTimesRoundBeforeTheySplitIntoMinutes) {
    EXPECT_EQ(lap_time_text(89.9214), "1:29.921");
    EXPECT_EQ(lap_time_text(59.9996), "1:00.000");
    EXPECT_EQ(lap_time_text(9.5), "9.500");
    EXPECT_EQ(lap_time_text(61.0), "1:01.000");
    EXPECT_EQ(lap_time_text(-61.25, 2), "−1:01.25");
    EXPECT_EQ(lap_time_text(std::numeric_limits<double>::quiet_NaN()), "—");
}

TEST(Display, DecimalsFollowTheUncertainty) {
    EXPECT_EQ(decimals_for(0.03, 3), 2);
    EXPECT_EQ(decimals_for(0.012, 3), 3);
    EXPECT_EQ(decimals_for(0.0031, 3), 3);
    EXPECT_EQ(decimals_for(4.0, 2), 0);
    // Two digits up to a leading 1.9, one from there.
    EXPECT_EQ(decimals_for(0.0194, 4), 3);
    EXPECT_EQ(decimals_for(0.0196, 4), 2);
    EXPECT_EQ(decimals_for(0.025, 4), 2);
    EXPECT_EQ(decimals_for(0.0294, 4), 2);
    EXPECT_EQ(decimals_for(1.2, 2), 1);
    EXPECT_EQ(decimals_for(std::nullopt, 2), 2);
    EXPECT_EQ(plus_minus_text(0.0312, 3), "±0.03");
}

TEST(Display, FiguresComeInTheAskedUnits) {
    EXPECT_EQ(figure_with_unit(44.704, Quantity::speed, UnitSystem::us, 1), "100.0\u00a0mph");
    EXPECT_EQ(figure_with_unit(44.704, Quantity::speed, UnitSystem::metric, 0), "161\u00a0km/h");
    EXPECT_EQ(figure_with_unit(1.0, Quantity::angle, UnitSystem::metric, 0), "57°");
    EXPECT_EQ(figure_with_unit(304.8, Quantity::length, UnitSystem::us, 0), "1000\u00a0ft");
}

TEST(NumberText, ReadsAndWritesWithoutALocale) {
    EXPECT_EQ(parse_number("+2.5"), 2.5);
    EXPECT_EQ(parse_number("-1e3"), -1000.0);
    EXPECT_FALSE(parse_number("1,5"));
    EXPECT_FALSE(parse_number(""));
    EXPECT_FALSE(parse_number("nan"));
    EXPECT_FALSE(parse_number("1e999"));
    EXPECT_FALSE(parse_number("+-1"));
    EXPECT_EQ(fixed_text(-0.0004, 2), "0.00");
    EXPECT_EQ(fixed_text(1234.5678, 2), "1234.57");
    EXPECT_EQ(exact_text(0.1), "0.1");
}

TEST(Error, IsOneLine) {
    const Error error{ErrorCode::value_not_readable, {"a.csv", 12, "Speed"}, "\"x\ny\" is no number", "correct it"};
    EXPECT_EQ(one_line(error), "a.csv:12: column \"Speed\": \"x y\" is no number — correct it");
}
