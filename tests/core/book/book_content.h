// SPDX-License-Identifier: GPL-3.0-or-later
// All that a book holds, without the ids that are its own: two books that are the same have the same content.
#pragma once

#include "core/book/book_fixture.h"
#include "core/book/database.h"
#include "core/book/exchange.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <sqlite3.h>
#include <string>
#include <utility>
#include <vector>

namespace lapwright::book {

// All that a book holds, without the ids that are its own.
inline std::vector<std::string> content(Book& book) {
    const std::string session = "(SELECT hex(checksum) FROM session WHERE session.id = ";
    std::vector<std::string> queries{
        "SELECT hex(checksum), file_name, size_bytes, (SELECT name FROM driver WHERE id = driver_id), (SELECT name "
        "FROM "
        "car WHERE id = car_id), (SELECT name FROM track WHERE id = track_id), start_unix_s, conditions, tyre, setup, "
        "setup_words, duration_s, file_driver, file_start_s, removed_unix_s, recording_unix_s, laps_unix_s, "
        "figures_unix_s, corners_unix_s, video_unix_s, (SELECT group_concat(text) FROM words WHERE rowid = session.id) "
        "IS NULL FROM session",
        "SELECT name FROM driver",
        "SELECT name FROM car",
        "SELECT name, record, line FROM track",
        "SELECT " + session + "session_a), lap_a, " + session +
            "session_b), lap_b, title, sentence, changed_unix_s FROM pairing",
        "SELECT uid, " + session + "session_id), (SELECT " + session + "session_a) || lap_a || " + session +
            "session_b) || lap_b FROM pairing WHERE pairing.id = pairing_id), lap, segment, at_m, text, changed_unix_s "
            "FROM note",
        "SELECT subject, field, said_unix_s, value, replaced FROM said",
        "SELECT * FROM gone",
        "SELECT " + session + "session_id), " + session +
            "there_id), uid, source, program, kept_unix_s, grip_share, downforce_share, drag_share, downforce_area_m2, "
            "drag_area_m2, on_a_tonne, power_w, mass_kg, expected, lap_s, change_s, change_low_s, change_high_s, "
            "driven, "
            "observed_s, observed_low_s, observed_high_s, changed_unix_s FROM prediction",
        "SELECT * FROM video_place"};
    for (const std::string part : {"fact", "warning", "lap", "channel", "split", "figure", "judged_by_hand", "corner",
                                   "video_file", "video_step"})
        queries.push_back("SELECT '" + part + "', " + session + "session_id), * FROM " + part);
    queries.push_back("SELECT " + session + "session_id), place, count, crc, bytes FROM block");
    std::vector<std::string> all;
    for (const std::string& query : queries) {
        sqlite3_stmt* rows = nullptr;
        EXPECT_EQ(sqlite3_prepare_v2(book.database().handle(), query.c_str(), -1, &rows, nullptr), SQLITE_OK) << query;
        std::vector<std::string> of_query;
        while (sqlite3_step(rows) == SQLITE_ROW) {
            std::string row;
            for (int i = 0; i < sqlite3_column_count(rows); ++i) {
                if (std::string_view(sqlite3_column_name(rows, i)) == "session_id") continue;
                const auto* bytes = static_cast<const char*>(sqlite3_column_blob(rows, i));
                const auto count = static_cast<std::size_t>(sqlite3_column_bytes(rows, i));
                row += bytes ? std::string(bytes, count) + "|" : "-|";
            }
            of_query.push_back(row);
        }
        sqlite3_finalize(rows);
        std::ranges::sort(of_query);
        all.insert(all.end(), of_query.begin(), of_query.end());
    }
    return all;
}

inline void expect_same_content(Book& one, Book& other) {
    const auto a = content(one);
    const auto b = content(other);
    for (const auto& [mine, theirs] : {std::pair(&a, &b), std::pair(&b, &a)})
        for (const std::string& row : *mine)
            EXPECT_NE(std::ranges::find(*theirs, row), theirs->end()) << row.substr(0, 300);
}

inline car::SetupSheet wing(int clicks) {
    car::SetupSheet sheet;
    sheet.tyre = clicks % 2 == 0 ? "soft" : "hard";
    sheet.items = {{"wing", base::integer_text(clicks)}};
    return sheet;
}

inline void merge_well(Book& into, const std::string& from) {
    const auto merged = merge_from(into, from);
    ASSERT_TRUE(merged.ok()) << base::one_line(merged.error());
}

} // namespace lapwright::book
