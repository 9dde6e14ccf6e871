// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/assemble.h"

#include "core/import/channels/agreement.h"
#include "core/import/channels/channel_build.h"
#include "core/import/channels/column_warnings.h"
#include "core/import/channels/counted_laps.h"
#include "core/import/channels/mend_values.h"
#include "core/import/channels/time_axis.h"
#include "core/import/channels/trust.h"
#include "core/import/columns/time_choice.h"
#include "core/import/tables/facts.h"
#include "core/import/text/moment.h"
#include "core/import/text/words.h"
#include "core/import/vocabulary/column_names.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <span>

namespace lapwright::import {
namespace {

using base::ErrorCode;
using recording::Channel;
using recording::DoubtKind;
using recording::LineTally;
using recording::Meaning;
using recording::Recording;
using recording::Warning;
using recording::WarningKind;

// A reading beyond this is a moment since 1970, not the time since the session began.
constexpr double moment_from_s = 1e8;

constexpr std::string_view assembling = "putting channels together";

void tell_damage(Recording& recording, const Table& table, const Layout& layout,
                 const std::vector<ColumnGuess>& guesses) {
    const auto tell = [&](WarningKind kind, const LineTally& seen, const std::string& of = "") {
        if (seen.count > 0) recording.warnings.push_back({.kind = kind, .of = of, .seen = seen});
    };
    tell(WarningKind::rows_wrong_width, table.wrong_width);
    tell(WarningKind::rows_without_values, table.text_rows);
    LineTally headers;
    for (const std::uint32_t line : layout.headers_before)
        headers.add(line);
    headers.add(table.repeated_headers);
    tell(WarningKind::header_repeated, headers);
    LineTally between;
    for (const std::uint32_t line : layout.no_readings)
        between.add(line);
    tell(WarningKind::row_is_no_reading, between);
    tell(WarningKind::comments_skipped, table.comments);
    for (std::size_t i = 0; i < guesses.size(); ++i)
        tell(WarningKind::cells_not_readable, table.columns[i].unreadable, guesses[i].name);
}

// The first value of the column of dates, where there is one.
std::optional<double> first_date(const Table& table, const std::vector<ColumnGuess>& guesses, std::size_t row) {
    for (std::size_t i = 0; i < guesses.size(); ++i)
        if (guesses[i].role == Role::date && row < table.columns[i].values.size() &&
            std::isfinite(table.columns[i].values[row]))
            return table.columns[i].values[row];
    return std::nullopt;
}

// "Time of day (s)": seconds since midnight as a plain number.
bool is_named_clock(const ColumnGuess& time) {
    constexpr auto words = std::to_array<std::string_view>({"time of day", "utc", "utc time", "time utc", "clock",
                                                            "clock time", "uhrzeit", "tageszeit", "heure", "hora",
                                                            "ora", "kloktijd", "local time", "seconds of day"});
    return std::ranges::find(words, plain_words(time.name)) != words.end();
}

bool is_moment(const ColumnGuess& time) {
    return time.form == CellForm::moment || time.form == CellForm::day_count;
}

bool is_clock(const ColumnGuess* time) {
    return time && (is_clock(time->form) || time->unit == base::Unit::day || time->form == CellForm::packed_clock ||
                    is_named_clock(*time));
}

// The wall clock that another column tells beside the stamps: what it says in the first row, or nothing.
std::optional<double> moment_beside(const Table& table, const std::vector<ColumnGuess>& guesses, std::size_t row) {
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        const auto& values = table.columns[i].values;
        const bool told = guesses[i].role == Role::time && is_moment(guesses[i]);
        if (told && row < values.size() && std::isfinite(values[row])) return values[row];
    }
    return std::nullopt;
}

void set_start(Recording& recording, const SessionFacts& session, const ColumnGuess* time, double first_reading_s,
               std::optional<double> date, std::optional<double> moment) {
    const auto day = date ? date : session.date_unix_s;
    bool zone_unknown = false;
    bool date_unsure = session.day_and_month_unsure;
    if (time && (is_moment(*time) || first_reading_s > moment_from_s)) {
        recording.start_unix_s = first_reading_s;
        const auto written = time->first_values.empty() ? std::nullopt : read_moment(time->first_values.front());
        zone_unknown = time->form == CellForm::moment && written && !written->zone_known;
        date_unsure = date_unsure || (written && written->day_and_month_unsure);
    } else {
        recording.start_unix_s = session.start_unix_s ? session.start_unix_s : moment;
        if (is_clock(time) && day) recording.start_unix_s = *day + first_reading_s;
        zone_unknown = recording.start_unix_s && !session.zone_known;
    }
    if (zone_unknown) recording.warnings.push_back({.kind = WarningKind::zone_unknown});
    if (date_unsure) recording.warnings.push_back({.kind = WarningKind::date_unsure});
}

// "minute" and "second" in columns of their own, and perhaps "hour": seconds since midnight.
bool add_hours_and_minutes(const Table& table, const std::vector<ColumnGuess>& guesses, const ColumnGuess& time,
                           std::vector<double>& reading_s) {
    const auto column_of = [&](std::initializer_list<std::string_view> names) -> const std::vector<double>* {
        for (std::size_t i = 0; i < guesses.size(); ++i)
            if (guesses[i].form == CellForm::number && guesses[i].role == Role::channel &&
                std::ranges::find(names, plain_words(guesses[i].name)) != names.end())
                return &table.columns[i].values;
        return nullptr;
    };
    const std::string name = plain_words(time.name);
    const auto* const minutes = column_of({"minute", "minutes", "min"});
    const auto* const hours = column_of({"hour", "hours"});
    const bool seconds = name == "second" || name == "seconds" || name == "sec";
    if (!seconds || !minutes || time.form != CellForm::number) return false;
    if (std::ranges::any_of(reading_s, [](double reading) { return reading >= 61.0; })) return false;
    for (std::size_t i = 0; i < reading_s.size(); ++i)
        reading_s[i] += 60.0 * (*minutes)[i] + (hours ? 3600.0 * (*hours)[i] : 0.0);
    return true;
}

// A beacon that is written only where it is passed: blank is no passing.
void fill_beacon(TableColumn& column) {
    const auto quiet = [](double value) { return value == 0.0; };
    if (column.absent == 0 || std::ranges::any_of(column.values, quiet)) return;
    for (double& value : column.values)
        if (std::isnan(value)) value = 0.0;
    column.absent = 0;
}

base::Error without_time(const std::string& name, std::size_t line, const std::vector<ColumnGuess>& guesses) {
    for (const ColumnGuess& guess : guesses) {
        const bool contradicted = guess.doubt.kind == DoubtKind::name_contradicted;
        const auto named = contradicted ? meaning_of_name(guess.name) : std::nullopt;
        if (named && named->role == Role::time)
            return {ErrorCode::time_not_usable,
                    {name, line, guess.name},
                    "its name says time, but its cells cannot be read as a time (\"" +
                        (guess.first_values.empty() ? "" : guess.first_values.front()) + "\")",
                    "write it as 10:20:03.4 or in seconds"};
    }
    return {ErrorCode::time_not_usable,
            {name, line, ""},
            "no column of time is found and no rate of rows is stated",
            "name one column \"time\", or state the rate"};
}

// A table that stands upside down, the newest row first.
bool runs_backwards(const std::vector<double>& reading_s) {
    std::size_t down = 0;
    std::size_t up = 0;
    for (std::size_t i = 1; i < reading_s.size(); ++i) {
        if (reading_s[i] < reading_s[i - 1]) ++down;
        if (reading_s[i] > reading_s[i - 1]) ++up;
    }
    return down > 1 && 20 * up < down;
}

void turn_over(Table& table, std::vector<double>& reading_s) {
    for (TableColumn& column : table.columns)
        std::ranges::reverse(column.values);
    std::ranges::reverse(table.lines);
    std::ranges::reverse(reading_s);
}

} // namespace

std::vector<ColumnPlan> plan_columns(const std::vector<ColumnGuess>& guesses) {
    std::vector<ColumnPlan> plans;
    for (const auto& guess : guesses) {
        if (guess.role == Role::skip) {
            plans.push_back({});
            continue;
        }
        if (guess.form == CellForm::number_with_unit) {
            plans.push_back({guess.form, 1.0, 0.0});
            continue;
        }
        const auto& unit = base::definition(guess.unit);
        plans.push_back({guess.form, guess.scale * unit.factor, unit.offset});
    }
    return plans;
}

base::Result<Recording> assemble(Table table, const Layout& layout, const std::vector<ColumnGuess>& guesses,
                                 const Options& options, const std::string& name, const base::Progress& progress) {
    const SessionFacts session = understand(layout.facts, layout.vocabulary());
    Recording recording;
    recording.source_file = name;
    recording.driver = session.driver;
    recording.car = session.car;
    recording.track = session.track;
    recording.facts = layout.facts;
    tell_damage(recording, table, layout, guesses);
    if (table.lines.size() < 2)
        return base::Error{ErrorCode::not_a_table,
                           {name, layout.data_line, ""},
                           "fewer than two rows of data are readable",
                           "export the session again as delimited text"};

    const auto time_index = time_column(guesses);
    const ColumnGuess* const time = time_index ? &guesses[*time_index] : nullptr;
    auto rate = options.row_rate_hz ? options.row_rate_hz : session.row_rate_hz;
    if (!options.row_rate_hz && options.recipe && options.recipe->row_rate_hz) rate = options.recipe->row_rate_hz;
    std::vector<double> reading_s;
    if (time) {
        reading_s = std::move(table.columns[*time_index].values);
    } else if (rate) {
        for (std::size_t i = 0; i < table.lines.size(); ++i)
            reading_s.push_back(static_cast<double>(i) / *rate);
    } else {
        return without_time(name, layout.data_line, guesses);
    }
    const bool in_columns = time && add_hours_and_minutes(table, guesses, *time, reading_s);
    if (runs_backwards(reading_s)) {
        turn_over(table, reading_s);
        recording.warnings.push_back({.kind = WarningKind::rows_turned_over});
    }
    const ClockKind kind = in_columns || is_clock(time) ? ClockKind::time_of_day : ClockKind::elapsed;
    if (!base::go_on(progress, assembling, 0.95)) return base::cancelled();
    const TableColumn* const laps = find_column(table, guesses, Role::channel, Meaning::lap_number);
    TimeAxis axis = make_time_axis(reading_s, table.lines, kind,
                                   laps ? std::span<const double>(laps->values) : std::span<const double>());
    reading_s = {};
    if (axis.time_s.size() < 2)
        return base::Error{ErrorCode::time_not_usable,
                           {name, layout.data_line, time ? time->name : ""},
                           "its readings never advance",
                           "choose another column as time"};
    recording.warnings.insert(recording.warnings.end(), axis.warnings.begin(), axis.warnings.end());
    recording.splits_s = axis.splits_s;
    recording.duration_s = axis.time_s.back();
    const std::size_t first_row = axis.rows.empty() ? 0 : axis.rows.front();
    set_start(recording, session, time, axis.first_reading_s, first_date(table, guesses, first_row),
              moment_beside(table, guesses, first_row));
    if (!base::go_on(progress, assembling, 0.96)) return base::cancelled();
    const auto codes = blank_codes(table, guesses);
    recording.warnings.insert(recording.warnings.end(), codes.begin(), codes.end());
    const auto zeros = blank_zeros_in_motion(table, guesses, axis);
    recording.warnings.insert(recording.warnings.end(), zeros.begin(), zeros.end());
    const auto positions = mend_positions(table, guesses);
    recording.warnings.insert(recording.warnings.end(), positions.begin(), positions.end());

    keep_rows(table.lines, axis.rows);
    std::vector<std::size_t> columns; // of each channel
    SharedRows rows(std::move(axis.time_s), std::move(table.lines));
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        if (guesses[i].role != Role::channel || guesses[i].form == CellForm::text) continue;
        if (!base::go_on(progress, assembling,
                         0.97 + 0.02 * static_cast<double>(i) / static_cast<double>(guesses.size())))
            return base::cancelled();
        TableColumn& column = table.columns[i];
        if (guesses[i].meaning == Meaning::beacon) fill_beacon(column);
        keep_rows(column.values, axis.rows);
        Channel channel;
        channel.name = guesses[i].name;
        channel.meaning = guesses[i].meaning;
        channel.source_unit = guesses[i].unit;
        channel.source_unit_text = guesses[i].unit_text;
        rows.attach(channel, std::move(column.values), column.absent > 0);
        if (channel.size() == 0) continue;
        recording.channels.push_back(std::move(channel));
        columns.push_back(i);
    }
    if (!base::go_on(progress, assembling, 0.99)) return base::cancelled();
    std::vector<ColumnGuess> settled = guesses;
    const auto contradictions = hold_together(recording, settled, columns);
    recording.warnings.insert(recording.warnings.begin(), contradictions.begin(), contradictions.end());
    if (auto counted = counted_laps(recording)) recording.channels.push_back(std::move(*counted));
    if (layout.decimal_mark_unsure) recording.warnings.push_back({.kind = WarningKind::decimal_mark_unsure});
    if (!layout.has_names) recording.warnings.push_back({.kind = WarningKind::no_header});
    tell_doubts(recording, settled);
    const auto trust = tell_trust(recording);
    recording.warnings.insert(recording.warnings.end(), trust.begin(), trust.end());
    if (!base::go_on(progress, assembling, 1.0)) return base::cancelled();
    return recording;
}

} // namespace lapwright::import
