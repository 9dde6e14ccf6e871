// SPDX-License-Identifier: GPL-3.0-or-later
// What a stage found, mended, guessed or left out, as a kind with its parameters.  The words of each kind stand in
// warning_words.cpp alone.
#pragma once

#include "core/recording/column_doubt.h"

#include <cstddef>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::recording {

// How often something was seen in a file, and on which lines first.
struct LineTally {
    std::size_t count = 0;
    std::vector<std::uint32_t> first_lines; // at most max_told_lines

    static constexpr std::size_t max_told_lines = 5;

    void add(std::uint32_t line);
    void add(const LineTally& later);
};

enum class WarningKind {
    other, // kept by a later program under a name that this one does not know

    // The file and its text.
    recipe_used,      // of: the recipe
    recipe_unfit,     // of: the recipe
    encoding_damaged, // seen: characters
    tail_empty,       // seen: bytes
    put_side_by_side, // one reading a row became one time a row
    xml_broken,       // texts: what the parser says
    checksum_wrong,
    checksum_absent,
    not_a_sentence,
    without_fix,

    // Rows and cells.
    rows_wrong_width,
    rows_without_values,
    header_repeated,
    row_is_no_reading, // a number a column between the names and the readings
    comments_skipped,
    cells_not_readable, // of: the column
    no_value_code,      // of: the column; figures: the code

    // What the columns are; of: the column.
    no_header,
    decimal_mark_unsure,
    column_unsure,   // doubt
    column_left_out, // doubt
    unit_unknown,    // texts: the unit as written, the unit taken or ""
    units_guessed,   // texts: name and unit of each column in turn
    // Texts: the unit as written and the one that fits the positions; without them figures: so many times their speed;
    // without either it does not follow them.
    speed_contradicts,
    speed_said, // the same where a person has said what the column is
    lap_numbers_backwards,

    // Time.
    zone_unknown,
    date_unsure,
    date_unknown,
    rows_without_time,
    stamps_duplicated,
    stamps_backwards,
    stamps_coarse,
    rows_turned_over,
    midnight_passed,
    clock_jumped,
    clock_set_by_an_hour,
    time_per_lap, // figures: step between two laps, s
    recording_paused,

    // Values.
    positions_off_the_globe,
    positions_zero,
    positions_half,
    positions_repeated, // figures: rate of the rows, of the positions, Hz
    speeds_without_fix,
    speed_derived,
    gaps,              // of: the channel; figures: length of the longest, its time, s
    wheel_speed_scale, // figures: wheel speed over the speed on the ground
    axis_turned,       // of: the column
    channel_damaged,   // of: the channel

    // Motion.
    fixes_frozen,
    speed_contradicts_positions, // figures: recorded speed over that of the positions; none: it does not follow them
    speed_scale_off,             // the same

    // Laps and pairings; of: the recording where there are two.
    no_positions,
    no_motion,            // texts: why, what to do
    no_laps,              // texts: why, what to do
    cannot_be_computed,   // texts: why, what to do
    laps_contradict_file, // texts: how
    fastest_not_sure,     // figures: behind by, its standard deviation, s
    lap_not_clean,        // figures: the lap's number; texts: why not, or ""
    few_clean_laps,       // seen: how many
    no_uncertainty,

    // Fits that did not settle.
    noise_not_settled, // texts: the sensors
    laps_not_placed,   // of: the recording or ""; seen: how many
    map_not_settled,   // of: the recording
};

// Stable, for tools: "stamps_duplicated".
[[nodiscard]] std::string_view name(WarningKind kind);
[[nodiscard]] WarningKind parse_warning_kind(std::string_view name); // `other` where it is not known

// Under which heading a person reads it.
enum class Remark { recipe, guessed, left_out, mended, seen };
[[nodiscard]] Remark remark_of(WarningKind kind);

struct Warning {
    WarningKind kind{};
    std::string of{};
    LineTally seen{};
    std::vector<double> figures{};
    std::vector<std::string> texts{};
    ColumnDoubt doubt{}; // of a column
    std::string told{};  // its words where a book kept them, which keeps no parameters

    // The first line that it is about.
    [[nodiscard]] std::optional<std::uint64_t> line() const;
};

} // namespace lapwright::recording
