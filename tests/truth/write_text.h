// SPDX-License-Identifier: GPL-3.0-or-later
// Writes a logged session as delimited text in a described dialect. Numbers are written with a fixed count of decimals,
// without the locale. The rows follow the stamps of one channel; other channels appear where they have a sample.
#pragma once

#include <cstdint>
#include <string>
#include <utility>
#include <vector>

#include "tests/truth/logger.h"

namespace truth {

enum class UnitPlace { none, header_brackets, own_row };
enum class TimeStyle { seconds, milliseconds, time_of_day };
enum class Missing { blank, hold };

/// Shown value = SI value * factor.
struct TextColumn {
    Quantity quantity = Quantity::speed_mps;
    std::string header;
    std::string unit;
    double factor = 1.0;
    int decimals = 2;
};

struct Dialect {
    char delimiter = ',';
    char decimal_mark = '.';
    std::vector<std::pair<std::string, std::string>> preamble; // key, value: written as key<delimiter>value
    bool blank_line_after_preamble = false;
    UnitPlace units = UnitPlace::header_brackets;
    std::string time_header = "Time";
    std::string time_unit = "s";
    TimeStyle time_style = TimeStyle::seconds;
    int time_decimals = 3;
    double start_of_day_s = 0.0; // for time_of_day
    std::vector<TextColumn> columns;
    Quantity row_clock = Quantity::speed_mps;
    Missing missing = Missing::blank;
    std::string line_end = "\n";
};

[[nodiscard]] std::string write_text(const LoggedSession& session, const Dialect& dialect);

/// Fixed-point text of a value with a decimal mark.
[[nodiscard]] std::string fixed_text(double value, int decimals, char decimal_mark = '.');

/// Twelve metric columns with units in header brackets: seconds, degrees, km/h, g, %, a lap column.
[[nodiscard]] Dialect plain_dialect();

/// A large file for timing an import: `hours` of laps at `rate_hz` in 24 columns (an hour at 100 Hz is some 57 MB).
[[nodiscard]] std::string benchmark_text(double hours, double rate_hz, std::uint64_t seed);

} // namespace truth
