// SPDX-License-Identifier: GPL-3.0-or-later
// How the cells of a column are written, and the value of one cell so written.
#pragma once

#include "core/import/text/number_scan.h"

#include <optional>
#include <string_view>

namespace lapwright::import {

// How the cells of a column are written, and in what read_cell answers.
enum class CellForm {
    number,
    number_with_unit, // "48 km/h", each cell with a unit: the SI value
    clock,            // "10:20:03.4", "1:23.456": seconds
    clock_tenths,     // "10:20:03:4": seconds
    clock_24_frames,  // "10:20:03:12", the last part in frames of so many a second: seconds
    clock_25_frames,
    clock_30_frames,
    clock_50_frames,
    clock_60_frames,
    clock_hundredths, // the same, in hundredths of a second
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

// In how many parts a clock reading's last part divides the second; 0 where it has none.
[[nodiscard]] constexpr int parts_a_second(CellForm form) {
    switch (form) {
    case CellForm::clock_tenths:
        return 10;
    case CellForm::clock_24_frames:
        return 24;
    case CellForm::clock_25_frames:
        return 25;
    case CellForm::clock_30_frames:
        return 30;
    case CellForm::clock_50_frames:
        return 50;
    case CellForm::clock_60_frames:
        return 60;
    case CellForm::clock_hundredths:
        return 100;
    default:
        return 0;
    }
}

// Hours, minutes and seconds with marks.
[[nodiscard]] constexpr bool is_clock(CellForm form) {
    return form == CellForm::clock || parts_a_second(form) > 0;
}

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

// Hours, minutes and seconds, degrees and minutes that a number
// holds without marks between them; nothing where it cannot.
[[nodiscard]] std::optional<double> unpack_clock(double hhmmss);
[[nodiscard]] std::optional<double> unpack_degrees(double dddmm);

} // namespace lapwright::import
