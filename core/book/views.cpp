// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/views.h"

#include "core/book/database.h"
#include "core/book/deflate.h"
#include "core/book/session_rows.h"
#include "core/book/sha256.h"
#include "core/book/varint.h"

#include <array>

namespace lapwright::book {
namespace {

struct Marked {
    const char* sql;
    int columns;
};

// All that is read into a recording, its numbers by their checksums; quote() writes every bit of a real number.
constexpr std::array marked{
    Marked{
        "SELECT session.file_name, file_driver, file_car, file_track, quote(file_start_s), quote(session.duration_s), "
        "driver, car, track FROM session JOIN summary USING (id) WHERE id = ?",
        9},
    Marked{"SELECT place, count, crc FROM block WHERE session_id = ? ORDER BY place", 3},
    Marked{"SELECT place, name, meaning, unit, unit_text, time_place, values_place FROM channel WHERE session_id = ? "
           "ORDER BY place",
           7},
    Marked{"SELECT place, quote(time_s) FROM split WHERE session_id = ? ORDER BY place", 2}};

constexpr const char* const id_of_laps =
    "SELECT id FROM pairing WHERE session_a = ? AND lap_a = ? AND session_b = ? AND lap_b = ?";

std::optional<std::int64_t> find(Database& database, const TwoLaps& laps) {
    return database.one_whole(id_of_laps, {static_cast<std::int64_t>(laps.session_a), laps.lap_a,
                                           static_cast<std::int64_t>(laps.session_b), laps.lap_b});
}

} // namespace

base::Result<Checksum> mark_of_session(Book& book, SessionId id) {
    Sha256 sum;
    const auto problem = look(book.database(), [&](Database& database) {
        require_session(database, id);
        for (const Marked& part : marked) {
            std::string text;
            Rows rows(database, part.sql, {static_cast<std::int64_t>(id)});
            while (rows.next()) {
                for (int column = 0; column < part.columns; ++column) {
                    const std::string_view cell = rows.blob(column);
                    put_varint(text, cell.size());
                    text += cell;
                }
            }
            std::string size;
            put_varint(size, text.size());
            sum.add(size);
            sum.add(text);
        }
    });
    if (problem) return *problem;
    return sum.finish();
}

std::optional<base::Error> put_view(Book& book, const TwoLaps& laps, const Checksum& made_from,
                                    std::string_view bytes) {
    return edit(book.database(), [&](Database& database) {
        const auto id = find(database, laps);
        if (!id) return;
        database.run("INSERT OR REPLACE INTO kept_view (pairing_id, made_from, crc, bytes) VALUES (?, ?, ?, ?)",
                     {*id, Blob{as_bytes(made_from)}, static_cast<std::int64_t>(crc32_of(bytes)), Blob{bytes}});
    });
}

std::optional<std::string> read_view(Book& book, const TwoLaps& laps, const Checksum& made_from) {
    std::optional<std::string> bytes;
    const auto problem = look(book.database(), [&](Database& database) {
        const auto id = find(database, laps);
        if (!id) return;
        Rows rows(database, "SELECT crc, bytes FROM kept_view WHERE pairing_id = ? AND made_from = ?",
                  {*id, Blob{as_bytes(made_from)}});
        if (rows.next() && crc32_of(rows.blob(1)) == static_cast<std::uint64_t>(rows.whole(0)))
            bytes = std::string(rows.blob(1));
    });
    return problem ? std::nullopt : bytes;
}

} // namespace lapwright::book
