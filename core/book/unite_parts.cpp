// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/unite_parts.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::book {
namespace {

struct Table {
    const char* name;
    std::vector<std::string_view> columns; // besides session_id, in whose order the rows count
    std::size_t compared;                  // the first ones, which tell two contents apart
};

struct Part {
    const char* moment;
    std::vector<std::string_view> of_session; // columns of the session's own row
    std::vector<Table> tables;
};

std::vector<Part> session_parts() {
    return {
        {"recording_unix_s",
         {"file_name", "size_bytes", "duration_s", "file_driver", "file_car", "file_track", "file_start_s"},
         {{"fact", {"place", "key", "value"}, 3},
          {"warning", {"place", "code", "message", "line"}, 4},
          {"block", {"place", "count", "crc", "bytes"}, 3},
          {"channel",
           {"place", "name", "meaning", "unit", "unit_text", "time_place", "values_place", "lines_place"},
           8},
          {"split", {"place", "time_s"}, 2}}},
        {"laps_unix_s", {}, {{"lap", {"place", "number", "kind", "clean", "start_s", "end_s", "time_sd_s", "why"}, 8}}},
        {"figures_unix_s", {}, {{"figure", {"name", "value", "low", "high", "decided_by"}, 5}}},
        {"corners_unix_s",
         {},
         {{"corner",
           {"lap_place",
            "place",
            "segment",
            "start_m",
            "end_m",
            "time_s",
            "entry_speed_mps",
            "entry_speed_sd_mps",
            "min_speed_mps",
            "min_speed_sd_mps",
            "min_speed_at_m",
            "exit_speed_mps",
            "exit_speed_sd_mps",
            "lift_at_m",
            "braking_point_m",
            "braking_point_sd_m",
            "braking_mps2",
            "throttle_opens_m",
            "full_throttle_m",
            "full_throttle_sd_m",
            "peak_lateral_mps2",
            "coasting_s",
            "driven_length_m"},
           23}}},
        {"video_unix_s",
         {},
         {{"video_file", {"part", "path", "size_bytes", "ends_checksum"}, 4},
          {"video_step", {"offset_s", "offset_low_s", "offset_high_s", "drift", "around_s", "method"}, 6}}}};
}

std::string listed(const std::vector<std::string_view>& columns) {
    std::string text;
    for (const std::string_view column : columns)
        text += (text.empty() ? "" : ", ") + std::string(column);
    return text;
}

std::string quoted(std::span<const std::string_view> columns) {
    std::string text = "''";
    for (const std::string_view column : columns)
        text += " || ' ' || quote(" + std::string(column) + ")";
    return text;
}

// The part's content as text, of the session `id` of the book `schema`, whose row is `row`.
std::string content(const Part& part, const std::string& schema, const std::string& row) {
    std::string text = "''";
    for (const std::string_view column : part.of_session)
        text += " || ' ' || quote(" + row + "." + std::string(column) + ")";
    for (const Table& table : part.tables)
        text += " || coalesce((SELECT group_concat(one, ',') FROM (SELECT " +
                quoted(std::span(table.columns).first(table.compared)) + " AS one FROM " + schema + "." + table.name +
                " WHERE session_id = " + row + ".id ORDER BY " + std::string(table.columns.front()) + ", one)), '')";
    return text;
}

// The rows of the sessions of the temporary table `these` (theirs, ours).
void copy_rows(Database& database, const Part& part, const std::string& these) {
    for (const Table& table : part.tables) {
        const std::string columns = listed(table.columns);
        database.run("INSERT INTO main." + std::string(table.name) + " (session_id, " + columns + ") SELECT ours, " +
                     columns + " FROM other." + table.name + " JOIN " + these + " ON theirs = session_id");
    }
}

void replace_older(Database& database, const Part& part) {
    const std::string moment = part.moment;
    database.run("CREATE TEMP TABLE newer AS SELECT theirs, ours, there <> here AS differs FROM (SELECT theirs, ours, "
                 "o." +
                 moment + " AS o_s, m." + moment + " AS m_s, " + content(part, "other", "o") + " AS there, " +
                 content(part, "main", "m") +
                 " AS here FROM coming JOIN other.session AS o ON o.id = theirs JOIN "
                 "main.session AS m ON m.id = ours WHERE NOT fresh AND o." +
                 moment + " >= m." + moment + ") WHERE (o_s, there) > (m_s, here)");
    for (const Table& table : part.tables)
        database.run("DELETE FROM main." + std::string(table.name) +
                     " WHERE session_id IN (SELECT ours FROM newer WHERE differs)");
    database.run("CREATE TEMP TABLE copied AS SELECT theirs, ours FROM newer WHERE differs");
    copy_rows(database, part, "copied");
    const std::string own = part.of_session.empty() ? "" : ", " + listed(part.of_session);
    const std::string columns = moment + own;
    database.run("UPDATE main.session SET (" + columns + ") = (SELECT " + columns +
                 " FROM other.session AS o JOIN newer ON o.id = theirs WHERE ours = main.session.id) WHERE id IN "
                 "(SELECT ours FROM newer)");
    database.run("DROP TABLE copied");
    database.run("DROP TABLE newer");
}

} // namespace

void bring_sessions(Database& database) {
    const auto parts = session_parts();
    for (const Part& part : parts)
        replace_older(database, part);
    // What people said of a fresh one is settled from what was said.
    database.run("INSERT INTO main.session (checksum, file_name, size_bytes, duration_s, file_driver, file_car, "
                 "file_track, file_start_s, recording_unix_s, laps_unix_s, figures_unix_s, corners_unix_s, "
                 "video_unix_s, conditions, tyre, setup, setup_words) SELECT checksum, file_name, size_bytes, "
                 "duration_s, file_driver, file_car, file_track, "
                 "file_start_s, recording_unix_s, laps_unix_s, figures_unix_s, corners_unix_s, video_unix_s, '', '', "
                 "'{}', '' FROM other.session "
                 "JOIN coming ON theirs = id WHERE fresh");
    database.run("UPDATE coming SET ours = (SELECT m.id FROM main.session AS m JOIN other.session AS o "
                 "ON o.checksum = m.checksum WHERE o.id = theirs) WHERE fresh");
    database.run("CREATE TEMP TABLE fresh AS SELECT theirs, ours FROM coming WHERE fresh");
    for (const Part& part : parts)
        copy_rows(database, part, "fresh");
    database.run("DROP TABLE fresh");
}

} // namespace lapwright::book
