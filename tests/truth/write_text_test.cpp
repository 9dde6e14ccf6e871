// SPDX-License-Identifier: GPL-3.0-or-later
// Dialects, held against text written by hand.
#include "tests/truth/write_text.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <string>

namespace truth {
namespace {

LoggedSession two_samples() {
    return {{{Quantity::speed_mps, {0.0, 0.5}, {10.0, 20.25}}, {Quantity::throttle, {0.0}, {0.5}}}};
}

Dialect two_columns() {
    Dialect dialect;
    dialect.columns = {{Quantity::speed_mps, "Speed", "km/h", 3.6, 1}, {Quantity::throttle, "Pedal", "%", 100.0, 0}};
    return dialect;
}

TEST(WriteText, UnitsInHeaderAndBlankWhereThereIsNoSample) {
    EXPECT_EQ(write_text(two_samples(), two_columns()),
              "Time [s],Speed [km/h],Pedal [%]\n0.000,36.0,50\n0.500,72.9,\n");
}

TEST(WriteText, HoldsTheLastValueWhenAsked) {
    Dialect dialect = two_columns();
    dialect.missing = Missing::hold;
    dialect.units = UnitPlace::none;
    EXPECT_EQ(write_text(two_samples(), dialect), "Time,Speed,Pedal\n0.000,36.0,50\n0.500,72.9,50\n");
}

TEST(WriteText, PreambleUnitRowDecimalCommaAndTimeOfDay) {
    Dialect dialect = two_columns();
    dialect.delimiter = ';';
    dialect.decimal_mark = ',';
    dialect.preamble = {{"Who", "me"}};
    dialect.blank_line_after_preamble = true;
    dialect.units = UnitPlace::own_row;
    dialect.time_style = TimeStyle::time_of_day;
    dialect.time_unit = "hh:mm:ss";
    dialect.start_of_day_s = 86399.75;
    dialect.line_end = "\r\n";
    EXPECT_EQ(write_text(two_samples(), dialect),
              "Who;me\r\n\r\nTime;Speed;Pedal\r\nhh:mm:ss;km/h;%\r\n23:59:59,750;36,0;50\r\n00:00:00,250;72,9;\r\n");
}

TEST(WriteText, Milliseconds) {
    Dialect dialect = two_columns();
    dialect.time_style = TimeStyle::milliseconds;
    dialect.time_decimals = 0;
    dialect.time_unit = "ms";
    dialect.columns.pop_back();
    EXPECT_EQ(write_text(two_samples(), dialect), "Time [ms],Speed [km/h]\n0,36.0\n500,72.9\n");
}

TEST(WriteText, BenchmarkHasItsRowsAndColumns) {
    const std::string text = benchmark_text(0.05, 100.0, 1);
    EXPECT_EQ(std::count(text.begin(), text.end(), '\n'), 18001);
    const std::string first_line = text.substr(0, text.find('\n'));
    EXPECT_EQ(std::count(first_line.begin(), first_line.end(), ','), 23);
}

} // namespace
} // namespace truth
