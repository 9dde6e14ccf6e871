// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/names.h"

#include "core/book/said.h"

namespace lapwright::book {

std::string table_text(NameTable table) {
    return table == NameTable::driver ? "driver" : table == NameTable::car ? "car" : "track";
}

std::optional<std::int64_t> id_of_name(Database& database, NameTable table, std::string_view name) {
    const std::string plain = plain_name(name);
    if (plain.empty()) return std::nullopt;
    if (auto known = database.one_whole("SELECT id FROM " + table_text(table) + " WHERE name = ?", {plain}))
        return known;
    database.run("INSERT INTO " + table_text(table) + " (name) VALUES (?)", {plain});
    return database.last_id();
}

void forget_unused_names(Database& database) {
    database.run("DELETE FROM driver WHERE id NOT IN (SELECT driver_id FROM session WHERE driver_id IS NOT NULL)");
    database.run("DELETE FROM car WHERE id NOT IN (SELECT car_id FROM session WHERE car_id IS NOT NULL)");
    database.run("DELETE FROM track WHERE record IS NULL AND line IS NULL AND "
                 "id NOT IN (SELECT track_id FROM session WHERE track_id IS NOT NULL)");
}

TrackParts parts_of(Database& database, std::int64_t track) {
    TrackParts parts;
    Rows rows(database, "SELECT record, line FROM track WHERE id = ?", {track});
    if (!rows.next()) return parts;
    if (!rows.absent(0)) parts.record = rows.text(0);
    if (!rows.absent(1)) parts.line = std::string(rows.blob(1));
    return parts;
}

void put_parts(Database& database, std::int64_t track, const TrackParts& parts) {
    const auto line = parts.line ? std::optional(Blob{*parts.line}) : std::nullopt;
    database.run("UPDATE track SET record = ?, line = ? WHERE id = ?", {parts.record, line, track});
    say_track(database, track);
}

} // namespace lapwright::book
