// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/tables/cell_form.h"

#include "core/import/text/angle_text.h"
#include "core/import/text/moment.h"
#include "core/import/vocabulary/measured_text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::import {
namespace {

constexpr double seconds_a_day = 86400.0;

constexpr std::array<std::pair<CellForm, std::string_view>, 21> form_names{{
    {CellForm::number, "number"},
    {CellForm::number_with_unit, "number_with_unit"},
    {CellForm::clock, "clock"},
    {CellForm::clock_tenths, "clock_tenths"},
    {CellForm::clock_24_frames, "clock_24_frames"},
    {CellForm::clock_25_frames, "clock_25_frames"},
    {CellForm::clock_30_frames, "clock_30_frames"},
    {CellForm::clock_50_frames, "clock_50_frames"},
    {CellForm::clock_60_frames, "clock_60_frames"},
    {CellForm::clock_hundredths, "clock_hundredths"},
    {CellForm::packed_clock, "packed_clock"},
    {CellForm::moment, "moment"},
    {CellForm::day_count, "day_count"},
    {CellForm::date, "date"},
    {CellForm::packed_date, "packed_date"},
    {CellForm::angle, "angle"},
    {CellForm::angle_o_west, "angle_o_west"},
    {CellForm::degrees_minutes, "degrees_minutes"},
    {CellForm::hemisphere, "hemisphere"},
    {CellForm::hemisphere_o_west, "hemisphere_o_west"},
    {CellForm::text, "text"},
}};

// Spreadsheets count days from 1899-12-30 (25569 is 1970-01-01), mathematics programs from the year 0 (719529).
std::optional<double> seconds_of_days(std::optional<double> days) {
    if (!days || *days < 20'000.0 || *days > 800'000.0) return std::nullopt;
    return (*days - (*days > 500'000.0 ? 719'529.0 : 25'569.0)) * seconds_a_day;
}

std::optional<double> seconds_of(std::optional<Date> date) {
    return date ? std::optional(static_cast<double>(date->days) * seconds_a_day) : std::nullopt;
}

} // namespace

std::optional<double> unpack_clock(double hhmmss) {
    if (!(hhmmss >= 0.0) || hhmmss >= 240000.0) return std::nullopt;
    const double hours = std::floor(hhmmss / 10000.0);
    const double minutes = std::floor((hhmmss - hours * 10000.0) / 100.0);
    const double seconds = hhmmss - hours * 10000.0 - minutes * 100.0;
    if (minutes >= 60.0 || seconds >= 61.0) return std::nullopt;
    return (hours * 60.0 + minutes) * 60.0 + seconds;
}

std::optional<double> unpack_degrees(double dddmm) {
    const double size = std::abs(dddmm);
    const double degrees = std::floor(size / 100.0);
    const double minutes = size - degrees * 100.0;
    if (degrees > 180.0 || minutes >= 60.0) return std::nullopt;
    return std::copysign(degrees + minutes / 60.0, dddmm);
}

std::string_view name(CellForm form) {
    return std::ranges::find(form_names, form, [](const auto& pair) { return pair.first; })->second;
}

std::optional<CellForm> parse_cell_form(std::string_view text) {
    const auto found = std::ranges::find(form_names, text, [](const auto& pair) { return pair.second; });
    return found == form_names.end() ? std::nullopt : std::optional(found->first);
}

std::optional<double> read_cell(std::string_view cell, CellForm form, NumberStyle style) {
    switch (form) {
    case CellForm::number:
        return read_number(cell, style);
    case CellForm::number_with_unit:
        if (const auto measured = read_measured(cell, style)) return base::to_si(measured->value, measured->unit);
        return std::nullopt;
    case CellForm::clock:
    case CellForm::clock_tenths:
    case CellForm::clock_24_frames:
    case CellForm::clock_25_frames:
    case CellForm::clock_30_frames:
    case CellForm::clock_50_frames:
    case CellForm::clock_60_frames:
    case CellForm::clock_hundredths:
        return read_clock(cell, parts_a_second(form));
    case CellForm::packed_clock:
        if (const auto packed = read_number(cell, style)) return unpack_clock(*packed);
        return std::nullopt;
    case CellForm::moment:
        if (const auto moment = read_moment(cell)) return moment->unix_s;
        return std::nullopt;
    case CellForm::day_count:
        return seconds_of_days(read_number(cell, style));
    case CellForm::date:
        return seconds_of(read_date(cell));
    case CellForm::packed_date:
        return seconds_of(read_ddmmyy(cell));
    case CellForm::angle:
        return read_angle(cell, style.decimal_mark, Letters::o_is_east);
    case CellForm::angle_o_west:
        return read_angle(cell, style.decimal_mark, Letters::o_is_west);
    case CellForm::degrees_minutes:
        if (const auto packed = read_number(cell, style)) return unpack_degrees(*packed);
        return std::nullopt;
    case CellForm::hemisphere:
        return read_hemisphere(cell, Letters::o_is_east);
    case CellForm::hemisphere_o_west:
        return read_hemisphere(cell, Letters::o_is_west);
    case CellForm::text:
        break;
    }
    return std::nullopt;
}

} // namespace lapwright::import
