// SPDX-License-Identifier: GPL-3.0-or-later
// Drawn tables (drawn_tables.h) come out as they were driven: every meaning with its unit, values and stamps, or a
// doubt that names the column is told; nothing that means nothing here gets a meaning; and what is refused could not be
// read. LAPWRIGHT_DRAWN_TABLES says how many are drawn (40), LAPWRIGHT_DRAWN_TABLES_FROM
// from which seed.
#include "core/import/drawn_layout.h"

#include "core/import/formats/import.h"
#include "core/recording/warning_words.h"

#include <gtest/gtest.h>

#include <cstdlib>
#include <map>
#include <memory>

namespace lapwright::import {
namespace {

using recording::WarningKind;

using drawn::Column;
using drawn::Table;
using recording::Channel;
using recording::Meaning;
using recording::Recording;

std::string told(const Recording& recording) {
    std::string all;
    for (const auto& warning : recording.warnings)
        all += "\n    " + std::string(recording::name(warning.kind)) + ": " + recording::words(warning);
    return all;
}

// A doubt that a person is asked about, of a column whose header begins like this channel's name.
bool is_doubted(const Recording& recording, const std::string& name) {
    return std::ranges::any_of(recording.warnings, [&](const auto& warning) {
        const bool doubt = warning.kind == WarningKind::column_unsure || warning.kind == WarningKind::column_left_out ||
                           warning.kind == WarningKind::speed_contradicts;
        return doubt && warning.of == name;
    });
}

// What is wrong with a channel, or nothing.
std::string fault_of(const Channel& channel, const Column& column, const Table& table) {
    const auto& rows = table.drive.rows;
    for (std::size_t k = 0; k < channel.size(); ++k) {
        const std::size_t i = (*channel.source_lines)[k] - table.first_line;
        if (i >= rows.size()) return "a line that does not exist";
        double off = channel.values[k] - column.value(rows[i]);
        if (column.meaning == Meaning::course) off = std::remainder(off, 2.0 * std::numbers::pi);
        if (std::abs(off) > column.tolerance)
            return "row " + drawn::whole(i) + " is " + base::exact_text(channel.values[k]) + ", not " +
                   base::exact_text(column.value(rows[i]));
        const double time_off = (*channel.time_s)[k] - (rows[i].time_s - rows.front().time_s);
        if (std::abs(time_off) > 1.1 * table.clock_step_s + 1e-9)
            return "row " + drawn::whole(i) + " is at " + base::exact_text((*channel.time_s)[k]) + " s, not " +
                   base::exact_text(rows[i].time_s);
    }
    return 2 * column.every * channel.size() < rows.size() ? "most of its rows are lost" : "";
}

void check_one(std::uint64_t seed, std::map<std::string, int>& counts) {
    const auto table = std::make_unique<Table>(drawn::draw(seed));
    const std::string where = table->manner + ", seed " + drawn::whole(seed) + ", " +
                              table->text.substr(0, table->text.find('\n', table->text.find(',')));
    const auto result = import_bytes(table->text, "drawn.csv");
    if (!table->has_clock) {
        ++counts["without a clock"];
        EXPECT_FALSE(result.ok()) << where;
        EXPECT_TRUE(result.ok() || result.error().code == base::ErrorCode::time_not_usable) << where;
        return;
    }
    if (!result.ok()) {
        ADD_FAILURE() << where << "\n  refused: " << base::one_line(result.error());
        return;
    }
    const Recording& recording = *result;
    ++counts["read"];
    for (const Channel& channel : recording.channels) {
        if (channel.meaning == Meaning::other) continue;
        const auto column = std::ranges::find_if(
            table->columns, [&](const Column& c) { return c.meaning == channel.meaning && c.value; });
        const bool spare =
            (channel.meaning == Meaning::position_accuracy || channel.meaning == Meaning::vertical_acceleration) &&
            column == table->columns.end();
        if (spare || is_doubted(recording, channel.name)) continue;
        if (column == table->columns.end()) {
            ADD_FAILURE() << where << "\n  \"" << channel.name << "\" was taken for "
                          << recording::name(channel.meaning);
            continue;
        }
        const std::string fault = fault_of(channel, *column, *table);
        if (!fault.empty()) ADD_FAILURE() << where << "\n  \"" << channel.name << "\": " << fault << told(recording);
    }
    for (const Column& column : table->columns) {
        if (!column.value) continue;
        ++counts["columns"];
        if (recording.find(column.meaning)) continue;
        const bool told_of = std::ranges::any_of(recording.warnings, [&](const auto& warning) {
            return warning.kind == WarningKind::column_unsure || warning.kind == WarningKind::column_left_out;
        });
        if (!told_of) ADD_FAILURE() << where << "\n  " << column.header << " is not known" << told(recording);
    }
}

TEST(DrawnTables, ComeOutAsTheyWereDriven) {
    const char* const wanted = std::getenv("LAPWRIGHT_DRAWN_TABLES");
    const auto count = static_cast<std::uint64_t>(base::parse_integer(wanted ? wanted : "40").value_or(40));
    std::map<std::string, int> counts;
    const char* const from = std::getenv("LAPWRIGHT_DRAWN_TABLES_FROM");
    const auto first = static_cast<std::uint64_t>(base::parse_integer(from ? from : "1").value_or(1));
    for (std::uint64_t seed = first; seed < first + count; ++seed)
        check_one(seed, counts);
    EXPECT_EQ(counts["read"] + counts["without a clock"], static_cast<int>(count));
}

} // namespace
} // namespace lapwright::import
