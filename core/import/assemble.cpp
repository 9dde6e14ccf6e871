// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/assemble.h"

#include "core/base/number_text.h"
#include "core/import/facts.h"
#include "core/import/time_axis.h"

#include <algorithm>
#include <cmath>
#include <map>

namespace lapwright::import {
namespace {

using base::ErrorCode;
using recording::Channel;
using recording::Meaning;
using recording::Recording;
using recording::Warning;

constexpr double day_s = 86400.0;
// A reading beyond this is a moment since 1970, not the time since the session began.
constexpr double moment_from_s = 1e8;

std::string lines_text(const LineTally& tally) {
    std::string text = tally.count == 1 ? "line " : "lines ";
    for (std::size_t i = 0; i < tally.first_lines.size(); ++i)
        text += (i > 0 ? ", " : "") + base::integer_text(tally.first_lines[i]);
    if (tally.count > tally.first_lines.size()) text += " …";
    return text;
}

std::string count_text(std::size_t count, const std::string& one, const std::string& many) {
    return base::integer_text(static_cast<std::int64_t>(count)) + " " + (count == 1 ? one : many);
}

void warn(Recording& recording, const std::string& code, const std::string& message, const LineTally& tally) {
    if (tally.count > 0)
        recording.warnings.push_back({code, message + " (" + lines_text(tally) + ")", tally.first_lines.front()});
}

void tell_damage(Recording& recording, const Table& table, const std::vector<ColumnGuess>& guesses) {
    warn(recording, "rows_wrong_width",
         count_text(table.wrong_width.count, "row has", "rows have") + " too few or too many cells and was left out",
         table.wrong_width);
    warn(recording, "rows_without_values",
         count_text(table.text_rows.count, "line holds", "lines hold") + " no values and was left out",
         table.text_rows);
    warn(recording, "header_repeated",
         "the header stands again " + count_text(table.repeated_headers.count, "time", "times"),
         table.repeated_headers);
    for (std::size_t i = 0; i < guesses.size(); ++i)
        warn(recording, "cells_not_readable",
             "column \"" + guesses[i].name +
                 "\": " + count_text(table.columns[i].unreadable.count, "cell is", "cells are") +
                 " not readable and was left out",
             table.columns[i].unreadable);
}

void tell_doubts(Recording& recording, const Layout& layout, const std::vector<ColumnGuess>& guesses) {
    if (layout.decimal_mark_unsure)
        recording.warnings.push_back(
            {"decimal_mark_unsure", "every comma stands before three digits: taken as decimal commas", {}});
    if (!layout.has_names)
        recording.warnings.push_back(
            {"no_header", "no line names the columns: their meanings are guessed by their values", {}});
    for (const auto& guess : guesses) {
        if (guess.role == Role::skip) continue;
        if (!guess.doubt.empty())
            recording.warnings.push_back({"column_unsure", "column \"" + guess.name + "\": " + guess.doubt, {}});
        else if (!guess.unit_text.empty() && !guess.unit_written && guess.form == CellForm::number)
            recording.warnings.push_back(
                {"unit_unknown",
                 "column \"" + guess.name + "\": the unit \"" + guess.unit_text + "\" is not known",
                 {}});
    }
}

const ColumnGuess* time_column(const std::vector<ColumnGuess>& guesses, std::size_t& index) {
    const ColumnGuess* best = nullptr;
    const auto rank = [](const ColumnGuess& guess) {
        const bool number = guess.form == CellForm::number;
        return guess.confidence + (number ? 0.2 : guess.form == CellForm::moment ? 0.1 : 0.0);
    };
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        if (guesses[i].role != Role::time || (best && rank(guesses[i]) <= rank(*best))) continue;
        best = &guesses[i];
        index = i;
    }
    return best;
}

// Keeps the given rows; all of them where the list is empty.
template <typename T>
void keep_rows(std::vector<T>& values, const std::vector<std::uint32_t>& rows) {
    if (rows.empty() || values.empty()) return;
    for (std::size_t i = 0; i < rows.size(); ++i)
        values[i] = values[rows[i]];
    values.resize(rows.size());
    values.shrink_to_fit();
}

// Stamps and lines of the rows in which a column has values; columns with blanks in the same rows share them.
class SharedRows {
  public:
    SharedRows(std::vector<double> time_s, std::vector<std::uint32_t> lines)
        : all_time_(std::make_shared<const std::vector<double>>(std::move(time_s))),
          all_lines_(std::make_shared<const std::vector<std::uint32_t>>(std::move(lines))) {}

    void attach(Channel& channel, std::vector<double> values, bool has_blanks) {
        channel.time_s = all_time_;
        channel.source_lines = all_lines_;
        if (!has_blanks) {
            channel.values = std::move(values);
            return;
        }
        std::vector<bool> filled(values.size());
        for (std::size_t i = 0; i < values.size(); ++i)
            filled[i] = std::isfinite(values[i]);
        std::erase_if(values, [](double value) { return !std::isfinite(value); });
        channel.values = std::move(values);
        auto& part = parts_[filled];
        if (!part.first) part = select(filled);
        channel.time_s = part.first;
        channel.source_lines = part.second;
    }

  private:
    using Part = std::pair<recording::Stamps, recording::SourceLines>;

    [[nodiscard]] Part select(const std::vector<bool>& filled) const {
        std::vector<double> time_s;
        std::vector<std::uint32_t> lines;
        for (std::size_t i = 0; i < filled.size(); ++i) {
            if (!filled[i]) continue;
            time_s.push_back((*all_time_)[i]);
            lines.push_back((*all_lines_)[i]);
        }
        return {std::make_shared<const std::vector<double>>(std::move(time_s)),
                std::make_shared<const std::vector<std::uint32_t>>(std::move(lines))};
    }

    recording::Stamps all_time_;
    recording::SourceLines all_lines_;
    std::map<std::vector<bool>, Part> parts_;
};

void set_start(Recording& recording, const SessionFacts& session, const ColumnGuess* time, double first_reading_s) {
    if (time && (time->form == CellForm::moment || first_reading_s > moment_from_s)) {
        recording.start_unix_s = first_reading_s;
    } else {
        recording.start_unix_s = session.start_unix_s;
        if (time && time->form == CellForm::clock && session.date_unix_s)
            recording.start_unix_s = *session.date_unix_s + first_reading_s;
        if (recording.start_unix_s && !session.zone_known)
            recording.warnings.push_back(
                {"zone_unknown", "the start is written without a time zone: taken as UTC", {}});
    }
    if (session.day_and_month_unsure)
        recording.warnings.push_back(
            {"date_unsure", "the date can be read as day/month or month/day: taken as day/month", {}});
}

base::Error without_time(const std::string& name, std::size_t line) {
    return {ErrorCode::time_not_usable,
            {name, line, ""},
            "no column of time is found and no rate of rows is stated",
            "name one column \"time\", or state the rate"};
}

} // namespace

std::vector<ColumnPlan> plan_columns(const std::vector<ColumnGuess>& guesses) {
    std::vector<ColumnPlan> plans;
    for (const auto& guess : guesses) {
        if (guess.role == Role::skip) {
            plans.push_back({});
            continue;
        }
        const auto& unit = base::definition(guess.unit);
        plans.push_back({guess.form, unit.factor, unit.offset});
    }
    return plans;
}

base::Result<Recording> assemble(Table table, const Layout& layout, const std::vector<ColumnGuess>& guesses,
                                 const Options& options, const std::string& name) {
    const SessionFacts session = understand(layout.facts);
    Recording recording;
    recording.source_file = name;
    recording.driver = session.driver;
    recording.car = session.car;
    recording.track = session.track;
    recording.facts = layout.facts;
    tell_doubts(recording, layout, guesses);
    tell_damage(recording, table, guesses);
    if (table.lines.size() < 2)
        return base::Error{ErrorCode::not_a_table,
                           {name, layout.data_line, ""},
                           "fewer than two rows of data are readable",
                           "export the session again as delimited text"};

    std::size_t time_index = guesses.size();
    const ColumnGuess* time = time_column(guesses, time_index);
    const auto rate = options.row_rate_hz ? options.row_rate_hz : session.row_rate_hz;
    std::vector<double> reading_s;
    if (time) {
        reading_s = std::move(table.columns[time_index].values);
    } else if (rate) {
        for (std::size_t i = 0; i < table.lines.size(); ++i)
            reading_s.push_back(static_cast<double>(i) / *rate);
    } else {
        return without_time(name, layout.data_line);
    }
    const ClockKind kind = time && time->form == CellForm::clock ? ClockKind::time_of_day : ClockKind::elapsed;
    TimeAxis axis = make_time_axis(reading_s, table.lines, kind);
    reading_s = {};
    if (axis.time_s.size() < 2)
        return base::Error{ErrorCode::time_not_usable,
                           {name, layout.data_line, guesses[time_index].name},
                           "its readings never advance",
                           "choose another column as time"};
    recording.warnings.insert(recording.warnings.end(), axis.warnings.begin(), axis.warnings.end());
    recording.splits_s = axis.splits_s;
    recording.duration_s = axis.time_s.back();
    set_start(recording, session, time, axis.first_reading_s);

    keep_rows(table.lines, axis.rows);
    SharedRows rows(std::move(axis.time_s), std::move(table.lines));
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        if (guesses[i].role != Role::channel || guesses[i].form == CellForm::text) continue;
        TableColumn& column = table.columns[i];
        keep_rows(column.values, axis.rows);
        Channel channel;
        channel.name = guesses[i].name;
        channel.meaning = guesses[i].meaning;
        channel.source_unit = guesses[i].unit;
        channel.source_unit_text = guesses[i].unit_text;
        rows.attach(channel, std::move(column.values), column.absent > 0);
        if (channel.size() > 0) recording.channels.push_back(std::move(channel));
    }
    return recording;
}

} // namespace lapwright::import
