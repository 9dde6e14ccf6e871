// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/tracks.h"

#include "core/base/translation.h"
#include "core/book/deflate.h"
#include "core/book/packed_values.h"
#include "core/book/said.h"
#include "core/book/varint.h"

#include <cmath>
#include <string_view>

namespace lapwright::book {
namespace {

using base::Error;
using base::Result;
using base::said;

// By the name that the book has.  A record that this version
// cannot read is as good as none; its text stays in the book.
std::optional<track::TrackRecord> record_of_text(const std::string& text, const std::string& name) {
    auto read = track::parse_track_record(text, name);
    if (!read) return std::nullopt;
    track::TrackRecord record = std::move(read).value();
    record.name = name;
    return record;
}

constexpr std::size_t of_the_line = 6;
constexpr std::size_t of_a_node = 5;

// A reference line with a checksum: all its numbers in a row, on earth or not, origin, step, length, then five a node.
std::string line_bytes(const KeptLine& kept) {
    const track::ReferenceLine& line = kept.line;
    std::vector<double> numbers{kept.frame.on_earth ? 1.0 : 0.0,
                                kept.frame.origin.latitude_rad,
                                kept.frame.origin.longitude_rad,
                                kept.frame.origin.height_m,
                                line.step_m,
                                line.length_m};
    for (std::size_t i = 0; i < line.size(); ++i)
        numbers.insert(numbers.end(), {line.position_m[i].east, line.position_m[i].north, line.tangent[i].east,
                                       line.tangent[i].north, line.curvature_per_m[i]});
    const std::string packed_numbers = packed(numbers);
    std::string bytes;
    put_varint(bytes, numbers.size());
    put_varint(bytes, crc32_of(packed_numbers));
    return bytes + packed_numbers;
}

// Nothing where the bytes are damaged.
std::optional<KeptLine> line_of_bytes(std::string_view bytes) {
    const auto count = take_varint(bytes);
    const auto crc = take_varint(bytes);
    if (!count || !crc || crc32_of(bytes) != *crc || *count < of_the_line || (*count - of_the_line) % of_a_node != 0)
        return std::nullopt;
    const auto numbers = unpacked_values(bytes, *count);
    if (!numbers) return std::nullopt;
    const std::vector<double>& n = *numbers;
    KeptLine kept{{{n[1], n[2], n[3]}, n[0] != 0.0}, {}};
    kept.line.step_m = n[4];
    kept.line.length_m = n[5];
    for (std::size_t i = of_the_line; i < n.size(); i += of_a_node) {
        kept.line.position_m.push_back({n[i], n[i + 1]});
        kept.line.tangent.push_back({n[i + 2], n[i + 3]});
        kept.line.curvature_per_m.push_back(n[i + 4]);
    }
    return kept;
}

Error without_name(const Database& database) {
    return {base::ErrorCode::track_not_readable,
            {database.path(), {}, "name"},
            said("the track has no name"),
            said("give it one")};
}

// To the rounding of a record's text.
bool same_gate(const track::RecordedGate& one, const track::RecordedGate& other) {
    constexpr double rounding_rad = 1e-9; // 6 mm on the ground
    return std::abs(one.position.latitude_rad - other.position.latitude_rad) < rounding_rad &&
           std::abs(one.position.longitude_rad - other.position.longitude_rad) < rounding_rad &&
           std::abs(one.heading_rad - other.heading_rad) < rounding_rad;
}

} // namespace

Result<void> put_track(Book& book, const track::TrackRecord& record, const std::optional<KeptLine>& line) {
    const std::string text = track::track_record_json(record);
    const std::string bytes = line ? line_bytes(*line) : std::string();
    return edit(book.database(), [&](Database& database) {
        const auto id = id_of_name(database, NameTable::track, record.name);
        if (!id) return database.fail(without_name(database));
        database.run("UPDATE track SET record = ? WHERE id = ?", {text, *id});
        if (line) database.run("UPDATE track SET line = ? WHERE id = ?", {Blob{bytes}, *id});
        say_track(database, *id);
    });
}

Result<std::optional<track::TrackRecord>> read_track(Book& book, const std::string& name) {
    return look(book.database(), [&](Database& database) {
        Rows rows(database, "SELECT record, name FROM track WHERE name = ? AND record IS NOT NULL", {plain_name(name)});
        return rows.next() ? record_of_text(rows.text(0), rows.text(1)) : std::nullopt;
    });
}

Result<std::optional<KeptLine>> read_line(Book& book, const std::string& name) {
    return look(book.database(), [&](Database& database) {
        Rows rows(database, "SELECT line FROM track WHERE name = ? AND line IS NOT NULL", {plain_name(name)});
        return rows.next() ? line_of_bytes(rows.blob(0)) : std::nullopt;
    });
}

Result<std::vector<track::TrackRecord>> tracks(Book& book) {
    return look(book.database(), [](Database& database) {
        std::vector<track::TrackRecord> all;
        Rows rows(database, "SELECT record, name FROM track WHERE record IS NOT NULL ORDER BY name", {});
        while (rows.next())
            if (auto record = record_of_text(rows.text(0), rows.text(1))) all.push_back(std::move(*record));
        return all;
    });
}

Result<TrackParts> change_track(Book& book, const track::TrackRecord& record) {
    return edit(book.database(), [&](Database& database) {
        TrackParts before;
        const auto id = id_of_name(database, NameTable::track, record.name);
        if (!id) {
            database.fail(without_name(database));
            return before;
        }
        before = parts_of(database, *id);
        const auto old = before.record ? record_of_text(*before.record, record.name) : std::nullopt;
        TrackParts now{track::track_record_json(record), {}};
        if (old && same_gate(old->gate, record.gate)) now.line = before.line;
        put_parts(database, *id, now);
        return before;
    });
}

Result<TrackParts> forget_track(Book& book, const std::string& name) {
    return edit(book.database(), [&](Database& database) {
        const auto id = database.one_whole("SELECT id FROM track WHERE name = ?", {plain_name(name)});
        if (!id) return TrackParts{};
        TrackParts parts = parts_of(database, *id);
        put_parts(database, *id, {});
        forget_unused_names(database);
        return parts;
    });
}

Result<void> bring_back_track(Book& book, const std::string& name, const TrackParts& parts) {
    return edit(book.database(), [&](Database& database) {
        if (const auto id = id_of_name(database, NameTable::track, name)) put_parts(database, *id, parts);
    });
}

} // namespace lapwright::book
