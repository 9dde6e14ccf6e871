// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/tracks.h"

#include "core/book/line_bytes.h"
#include "core/book/names.h"

namespace lapwright::book {
namespace {

using base::Error;
using base::Result;

// By the name that the book has.  A record that this version cannot read is as good as none; its text stays in the
// book.
std::optional<track::TrackRecord> record_of_text(const std::string& text, const std::string& name) {
    auto read = track::parse_track_record(text, name);
    if (!read) return std::nullopt;
    track::TrackRecord record = std::move(read).value();
    record.name = name;
    return record;
}

} // namespace

std::optional<Error> put_track(Book& book, const track::TrackRecord& record, const std::optional<KeptLine>& line) {
    const std::string text = track::track_record_json(record);
    const std::string bytes = line ? line_bytes(*line) : std::string();
    return edit(book.database(), [&](Database& database) {
        const auto id = id_of_name(database, NameTable::track, record.name);
        if (!id)
            return database.fail({base::ErrorCode::track_not_readable,
                                  {database.path(), {}, "name"},
                                  "the track has no name",
                                  "give it one"});
        database.run("UPDATE track SET record = ? WHERE id = ?", {text, *id});
        if (line) database.run("UPDATE track SET line = ? WHERE id = ?", {Blob{bytes}, *id});
    });
}

Result<std::optional<track::TrackRecord>> read_track(Book& book, const std::string& name) {
    std::optional<track::TrackRecord> record;
    const auto problem = look(book.database(), [&](Database& database) {
        Rows rows(database, "SELECT record, name FROM track WHERE name = ? AND record IS NOT NULL", {plain_name(name)});
        if (rows.next()) record = record_of_text(rows.text(0), rows.text(1));
    });
    if (problem) return *problem;
    return record;
}

Result<std::optional<KeptLine>> read_line(Book& book, const std::string& name) {
    std::optional<KeptLine> line;
    const auto problem = look(book.database(), [&](Database& database) {
        Rows rows(database, "SELECT line FROM track WHERE name = ? AND line IS NOT NULL", {plain_name(name)});
        if (rows.next()) line = line_of_bytes(rows.blob(0));
    });
    if (problem) return *problem;
    return line;
}

Result<std::vector<track::TrackRecord>> tracks(Book& book) {
    std::vector<track::TrackRecord> all;
    const auto problem = look(book.database(), [&](Database& database) {
        Rows rows(database, "SELECT record, name FROM track WHERE record IS NOT NULL ORDER BY name", {});
        while (rows.next())
            if (auto record = record_of_text(rows.text(0), rows.text(1))) all.push_back(std::move(*record));
    });
    if (problem) return *problem;
    return all;
}

Result<TrackParts> forget_track(Book& book, const std::string& name) {
    TrackParts parts;
    const auto problem = edit(book.database(), [&](Database& database) {
        const auto id = database.one_whole("SELECT id FROM track WHERE name = ?", {plain_name(name)});
        if (!id) return;
        parts = parts_of(database, *id);
        put_parts(database, *id, {});
        forget_unused_names(database);
    });
    if (problem) return *problem;
    return parts;
}

std::optional<Error> bring_back_track(Book& book, const std::string& name, const TrackParts& parts) {
    return edit(book.database(), [&](Database& database) {
        if (const auto id = id_of_name(database, NameTable::track, name)) put_parts(database, *id, parts);
    });
}

} // namespace lapwright::book
