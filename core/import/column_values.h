// SPDX-License-Identifier: GPL-3.0-or-later
// What the sampled cells of a column say by themselves: how they are written, and their numbers.
#pragma once

#include "core/base/units.h"
#include "core/import/column_names.h"
#include "core/import/number_scan.h"
#include "core/import/samples.h"

#include <string>
#include <string_view>
#include <vector>

namespace lapwright::import {

// How the cells of a column are written, and in what read_cell answers.
enum class CellForm {
    number,
    number_with_unit, // "48 km/h", each cell with a unit: the SI value
    clock,            // "10:20:03.4", "1:23.456": seconds
    packed_clock,     // "102003.4", hours, minutes and seconds without marks: seconds
    moment,           // date and clock reading: seconds since 1970 UTC
    day_count,        // "45792.4306", days since 1899-12-30 or the year 0: the same
    date,             // the day's midnight as seconds since 1970 UTC
    packed_date,      // "160526", day, month, year: the same
    angle,            // degrees with marks or letters, O east: degrees
    angle_o_west,     // the same, O west
    degrees_minutes,  // "5207.404", degrees and minutes without marks: degrees
    hemisphere,       // a letter, O east: +1 or -1
    hemisphere_o_west,
    text, // none of these: not read
};

// Degrees with marks or letters; a letter alone; wherever O lies.
[[nodiscard]] constexpr bool is_angle(CellForm form) {
    return form == CellForm::angle || form == CellForm::angle_o_west;
}
[[nodiscard]] constexpr bool is_hemisphere(CellForm form) {
    return form == CellForm::hemisphere || form == CellForm::hemisphere_o_west;
}

// A number whose unit the column or the cell states.
[[nodiscard]] constexpr bool is_numeric(CellForm form) {
    return form == CellForm::number || form == CellForm::number_with_unit;
}

[[nodiscard]] std::string_view name(CellForm form);
[[nodiscard]] std::optional<CellForm> parse_cell_form(std::string_view text);

// The value of a trimmed cell; nothing where it is not of that form.
[[nodiscard]] std::optional<double> read_cell(std::string_view cell, CellForm form, NumberStyle style);

struct ColumnValues {
    CellForm form = CellForm::text;
    std::vector<double> numbers;        // a row, NaN where the cell is no value or a code for none
    base::Unit unit = base::Unit::none; // that the cells bear, in which the numbers are
    std::string unit_text;
    double largest = 0.0;     // by magnitude
    std::size_t filled = 0;   // cells that hold anything
    std::size_t decimals = 0; // the most behind a decimal mark
};

// `meaning` is what the name says, which tells a code for "no value" from a value.
[[nodiscard]] ColumnValues judge_column(const Samples& samples, std::size_t column, NumberStyle style, Role role,
                                        recording::Meaning meaning = recording::Meaning::other);

// Whether most readings are of the form hhmmss and none can be anything else.
[[nodiscard]] bool looks_like_packed_clock(const std::vector<double>& numbers);

// Days with the time of day as a fraction, that advance by no more than minutes.
[[nodiscard]] bool looks_like_day_count(const ColumnValues& values);

// Whether all readings can be degrees and minutes without a mark between them, and not degrees.
[[nodiscard]] bool looks_like_degrees_minutes(const std::vector<double>& numbers);

// Median of the advances between rows that stand one below the other; 0 where there is none.
[[nodiscard]] double median_advance(const Samples& samples, const std::vector<double>& numbers);

} // namespace lapwright::import
