// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/recording/warning.h"

#include <algorithm>
#include <array>

namespace lapwright::recording {
namespace {

struct KindRow {
    WarningKind kind;
    std::string_view name;
    Remark remark = Remark::seen;
};

constexpr std::array kinds{
    KindRow{WarningKind::other, "other"},
    KindRow{WarningKind::recipe_used, "recipe_used", Remark::recipe},
    KindRow{WarningKind::recipe_unfit, "recipe_unfit"},
    KindRow{WarningKind::encoding_damaged, "encoding_damaged", Remark::left_out},
    KindRow{WarningKind::tail_empty, "tail_empty", Remark::left_out},
    KindRow{WarningKind::put_side_by_side, "put_side_by_side"},
    KindRow{WarningKind::xml_broken, "xml_broken", Remark::left_out},
    KindRow{WarningKind::checksum_wrong, "checksum_wrong", Remark::left_out},
    KindRow{WarningKind::checksum_absent, "checksum_absent"},
    KindRow{WarningKind::not_a_sentence, "not_a_sentence", Remark::left_out},
    KindRow{WarningKind::without_fix, "without_fix", Remark::left_out},
    KindRow{WarningKind::rows_wrong_width, "rows_wrong_width", Remark::left_out},
    KindRow{WarningKind::rows_without_values, "rows_without_values", Remark::left_out},
    KindRow{WarningKind::header_repeated, "header_repeated", Remark::left_out},
    KindRow{WarningKind::row_is_no_reading, "row_is_no_reading", Remark::left_out},
    KindRow{WarningKind::comments_skipped, "comments_skipped", Remark::left_out},
    KindRow{WarningKind::cells_not_readable, "cells_not_readable", Remark::left_out},
    KindRow{WarningKind::no_value_code, "no_value_code", Remark::left_out},
    KindRow{WarningKind::no_header, "no_header", Remark::guessed},
    KindRow{WarningKind::decimal_mark_unsure, "decimal_mark_unsure", Remark::guessed},
    KindRow{WarningKind::column_unsure, "column_unsure", Remark::guessed},
    KindRow{WarningKind::column_left_out, "column_left_out", Remark::left_out},
    KindRow{WarningKind::unit_unknown, "unit_unknown", Remark::guessed},
    KindRow{WarningKind::units_guessed, "units_guessed", Remark::guessed},
    KindRow{WarningKind::speed_contradicts, "speed_contradicts", Remark::left_out},
    KindRow{WarningKind::speed_said, "speed_said"},
    KindRow{WarningKind::lap_numbers_backwards, "lap_numbers_backwards"},
    KindRow{WarningKind::zone_unknown, "zone_unknown", Remark::guessed},
    KindRow{WarningKind::date_unsure, "date_unsure", Remark::guessed},
    KindRow{WarningKind::date_unknown, "date_unknown", Remark::guessed},
    KindRow{WarningKind::rows_without_time, "rows_without_time", Remark::left_out},
    KindRow{WarningKind::stamps_duplicated, "stamps_duplicated", Remark::left_out},
    KindRow{WarningKind::stamps_backwards, "stamps_backwards", Remark::left_out},
    KindRow{WarningKind::stamps_coarse, "stamps_coarse", Remark::mended},
    KindRow{WarningKind::rows_turned_over, "rows_turned_over", Remark::mended},
    KindRow{WarningKind::midnight_passed, "midnight_passed", Remark::mended},
    KindRow{WarningKind::clock_set_by_an_hour, "clock_set_by_an_hour", Remark::mended},
    KindRow{WarningKind::clock_jumped, "clock_jumped", Remark::mended},
    KindRow{WarningKind::time_per_lap, "time_per_lap", Remark::mended},
    KindRow{WarningKind::recording_paused, "recording_paused", Remark::mended},
    KindRow{WarningKind::positions_off_the_globe, "positions_off_the_globe", Remark::left_out},
    KindRow{WarningKind::positions_zero, "positions_zero", Remark::left_out},
    KindRow{WarningKind::positions_half, "positions_half", Remark::left_out},
    KindRow{WarningKind::positions_repeated, "positions_repeated"},
    KindRow{WarningKind::speeds_without_fix, "speeds_without_fix", Remark::left_out},
    KindRow{WarningKind::speed_derived, "speed_derived", Remark::mended},
    KindRow{WarningKind::gaps, "gaps"},
    KindRow{WarningKind::wheel_speed_scale, "wheel_speed_scale"},
    KindRow{WarningKind::axis_turned, "axis_turned", Remark::mended},
    KindRow{WarningKind::channel_damaged, "channel_damaged", Remark::left_out},
    KindRow{WarningKind::fixes_frozen, "fixes_frozen", Remark::left_out},
    KindRow{WarningKind::speed_contradicts_positions, "speed_contradicts_positions", Remark::left_out},
    KindRow{WarningKind::speed_scale_off, "speed_scale_off", Remark::mended},
    KindRow{WarningKind::no_positions, "no_positions"},
    KindRow{WarningKind::no_motion, "no_motion"},
    KindRow{WarningKind::no_laps, "no_laps"},
    KindRow{WarningKind::cannot_be_computed, "cannot_be_computed"},
    KindRow{WarningKind::laps_contradict_file, "laps_contradict_file"},
    KindRow{WarningKind::fastest_not_sure, "fastest_not_sure"},
    KindRow{WarningKind::lap_not_clean, "lap_not_clean"},
    KindRow{WarningKind::few_clean_laps, "few_clean_laps"},
    KindRow{WarningKind::no_uncertainty, "no_uncertainty"},
    KindRow{WarningKind::noise_not_settled, "noise_not_settled"},
    KindRow{WarningKind::laps_not_placed, "laps_not_placed"},
    KindRow{WarningKind::map_not_settled, "map_not_settled"},
};
static_assert(kinds.size() == static_cast<std::size_t>(WarningKind::map_not_settled) + 1);

const KindRow& kind_row(WarningKind kind) {
    return *std::ranges::find(kinds, kind, &KindRow::kind);
}

} // namespace

void LineTally::add(std::uint32_t line) {
    if (first_lines.size() < max_told_lines) first_lines.push_back(line);
    ++count;
}

void LineTally::add(const LineTally& later) {
    for (const std::uint32_t line : later.first_lines)
        if (first_lines.size() < max_told_lines) first_lines.push_back(line);
    count += later.count;
}

std::string_view name(WarningKind kind) {
    return kind_row(kind).name;
}

WarningKind parse_warning_kind(std::string_view name) {
    const auto found = std::ranges::find(kinds, name, &KindRow::name);
    return found == kinds.end() ? WarningKind::other : found->kind;
}

Remark remark_of(WarningKind kind) {
    return kind_row(kind).remark;
}

std::optional<std::uint64_t> Warning::line() const {
    return seen.first_lines.empty() ? std::nullopt : std::optional<std::uint64_t>(seen.first_lines.front());
}

} // namespace lapwright::recording
