// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/exchange.h"

#include "core/base/check.h"
#include "core/book/copy_file.h"
#include "core/book/database.h"
#include "core/book/names.h"
#include "core/book/session_rows.h"

#include <array>
#include <filesystem>
#include <system_error>
#include <utility>
#include <vector>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;

using Chosen = std::optional<std::span<const SessionId>>;

void give_sessions(Database& database, const std::string& table, std::int64_t from, std::optional<std::int64_t> to) {
    database.run("UPDATE session SET " + table + "_id = ? WHERE " + table + "_id = ?", {to, from});
    database.run("DELETE FROM " + table + " WHERE id = ?", {from});
}

// The names of a book that came from elsewhere, as this program would have put them in (see names.h).  Two names that
// become the same are one; one that holds nothing is none.
void clean_names(Database& database) {
    for (const NameTable kind : {NameTable::driver, NameTable::car, NameTable::track}) {
        const std::string table = table_text(kind);
        std::vector<std::pair<std::int64_t, std::string>> unclean;
        {
            Rows rows(database, "SELECT id, name FROM " + table, {});
            while (rows.next())
                if (const std::string name = rows.text(1); plain_name(name) != name)
                    unclean.emplace_back(rows.whole(0), plain_name(name));
        }
        for (const auto& [id, name] : unclean) {
            const auto same = database.one_whole("SELECT id FROM " + table + " WHERE name = ?", {name});
            if (name.empty() || same)
                give_sessions(database, table, id, same);
            else
                database.run("UPDATE " + table + " SET name = ? WHERE id = ?", {name, id});
        }
    }
}

struct Part {
    const char* table;
    const char* columns; // besides session_id
};

// What belongs to one session and comes with it as it is.
constexpr std::array parts{
    Part{"fact", "place, key, value"},
    Part{"warning", "place, code, message, line"},
    Part{"lap", "place, number, kind, clean, start_s, end_s, time_sd_s, why"},
    Part{"block", "place, count, crc, bytes"},
    Part{"channel", "place, name, meaning, unit, unit_text, time_place, values_place, lines_place"},
    Part{"split", "place, time_s"},
    Part{"figure", "name, value, low, high, decided_by"},
    Part{"judged_by_hand", "at_s, clean, reason"}};

// Their sessions, each with the id it has here; fresh: it is not here yet.
void choose(Database& database, const Chosen& chosen) {
    database.run("CREATE TEMP TABLE coming (theirs INTEGER PRIMARY KEY, ours INTEGER, fresh INTEGER NOT NULL)");
    constexpr const char* const listed =
        "INSERT OR IGNORE INTO coming SELECT id, (SELECT id FROM main.session WHERE checksum = o.checksum), 0 "
        "FROM other.session AS o WHERE removed_unix_s IS NULL";
    if (!chosen) return database.run(listed);
    for (const SessionId id : *chosen) {
        database.run(std::string(listed) + " AND id = ?", {static_cast<std::int64_t>(id)});
        if (database.changed_rows() == 0)
            database.fail({base::ErrorCode::book_not_usable,
                           {database.path(), {}, {}},
                           "a chosen session is not in the book (any more)",
                           "look at the book's list again"});
    }
}

void bring_names(Database& database, bool all) {
    for (const std::string table : {"driver", "car", "track"}) {
        const std::string used = all && table == "track" ? ""
                                                         : " WHERE id IN (SELECT " + table +
                                                               "_id FROM other.session JOIN coming ON theirs = id)";
        database.run("INSERT OR IGNORE INTO main." + table + " (name) SELECT name FROM other." + table + used);
    }
}

// Records and lines of tracks of which this book knows the name alone.
int bring_tracks(Database& database) {
    const auto bring = [&](const std::string& column) {
        database.run("UPDATE main.track SET " + column + " = (SELECT " + column +
                     " FROM other.track AS o WHERE o.name = main.track.name) WHERE " + column +
                     " IS NULL AND name IN (SELECT name FROM other.track WHERE " + column + " IS NOT NULL)");
        return static_cast<int>(database.changed_rows());
    };
    const int records = bring("record");
    bring("line");
    return records;
}

std::string same_name(const std::string& table) {
    return "(SELECT m.id FROM main." + table + " AS m JOIN other." + table +
           " AS t ON t.name = m.name WHERE t.id = o." + table + "_id)";
}

int bring_sessions(Database& database) {
    constexpr const char* const plain = "checksum, file_name, size_bytes, start_unix_s, conditions, tyre, setup, "
                                        "setup_words, duration_s, file_driver, file_car, file_track, file_start_s";
    database.run("INSERT INTO main.session (" + std::string(plain) + ", driver_id, car_id, track_id) SELECT " + plain +
                 ", " + same_name("driver") + ", " + same_name("car") + ", " + same_name("track") +
                 " FROM other.session AS o JOIN coming ON theirs = id WHERE ours IS NULL");
    const auto fresh = static_cast<int>(database.changed_rows());
    database.run("UPDATE coming SET fresh = 1, ours = (SELECT m.id FROM main.session AS m JOIN other.session AS o "
                 "ON o.checksum = m.checksum WHERE o.id = theirs) WHERE ours IS NULL");
    for (const Part& part : parts)
        database.run("INSERT INTO main." + std::string(part.table) + " (session_id, " + part.columns +
                     ") SELECT ours, " + part.columns + " FROM other." + part.table +
                     " JOIN coming ON theirs = session_id WHERE fresh");
    return fresh;
}

// Of a session that is here already, names, start and conditions where this book has none.
void fill_known_sessions(Database& database) {
    const auto from_theirs = [](const std::string& what) {
        return "(SELECT " + what + " FROM other.session AS o WHERE o.checksum = main.session.checksum)";
    };
    database.run("UPDATE main.session SET driver_id = coalesce(driver_id, " + from_theirs(same_name("driver")) +
                 "), car_id = coalesce(car_id, " + from_theirs(same_name("car")) + "), track_id = coalesce(track_id, " +
                 from_theirs(same_name("track")) + "), start_unix_s = coalesce(start_unix_s, " +
                 from_theirs("start_unix_s") + "), conditions = CASE conditions WHEN '' THEN " +
                 from_theirs("conditions") +
                 " ELSE conditions END WHERE id IN (SELECT ours FROM coming WHERE NOT fresh)");
}

int bring_pairings(Database& database) {
    database.run("INSERT INTO main.pairing (session_a, lap_a, session_b, lap_b, title, sentence, changed_unix_s) "
                 "SELECT a.ours, lap_a, b.ours, lap_b, title, sentence, changed_unix_s FROM other.pairing AS o "
                 "JOIN coming AS a ON a.theirs = session_a JOIN coming AS b ON b.theirs = session_b WHERE true "
                 "ON CONFLICT (session_a, lap_a, session_b, lap_b) DO UPDATE SET title = excluded.title, "
                 "sentence = excluded.sentence, changed_unix_s = excluded.changed_unix_s "
                 "WHERE excluded.changed_unix_s > pairing.changed_unix_s");
    return static_cast<int>(database.changed_rows());
}

int bring_notes(Database& database) {
    database.run("CREATE TEMP TABLE coming_pairing AS SELECT o.id AS theirs, m.id AS ours FROM other.pairing AS o "
                 "JOIN coming AS a ON a.theirs = o.session_a JOIN coming AS b ON b.theirs = o.session_b "
                 "JOIN main.pairing AS m ON m.session_a = a.ours AND m.lap_a = o.lap_a AND m.session_b = b.ours "
                 "AND m.lap_b = o.lap_b");
    database.run(
        "INSERT INTO main.note (uid, session_id, pairing_id, lap, segment, at_m, text, changed_unix_s) "
        "SELECT uid, s.ours, p.ours, lap, segment, at_m, text, changed_unix_s FROM other.note "
        "LEFT JOIN coming AS s ON s.theirs = session_id LEFT JOIN coming_pairing AS p ON p.theirs = pairing_id "
        "WHERE (session_id IS NULL OR s.ours IS NOT NULL) AND (pairing_id IS NULL OR p.ours IS NOT NULL) "
        "ON CONFLICT (uid) DO UPDATE SET session_id = excluded.session_id, pairing_id = excluded.pairing_id, "
        "lap = excluded.lap, segment = excluded.segment, at_m = excluded.at_m, text = excluded.text, "
        "changed_unix_s = excluded.changed_unix_s WHERE excluded.changed_unix_s > note.changed_unix_s");
    const auto notes = static_cast<int>(database.changed_rows());
    database.run("DROP TABLE coming_pairing");
    return notes;
}

void index_coming(Database& database) {
    database.run("DELETE FROM words WHERE rowid IN (SELECT ours FROM coming)");
    database.run("INSERT INTO words (rowid, text) SELECT session_id, text FROM found_by "
                 "WHERE session_id IN (SELECT ours FROM coming)");
}

// What the attached book "other" has and this one has not.  Both have today's schema.
Merged unite(Database& database, const Chosen& chosen) {
    Merged merged;
    choose(database, chosen);
    bring_names(database, !chosen);
    merged.tracks = bring_tracks(database);
    merged.sessions = bring_sessions(database);
    fill_known_sessions(database);
    merged.known_sessions =
        static_cast<int>(database.one_whole("SELECT count(*) FROM coming WHERE NOT fresh").value_or(0));
    merged.removed = removed_rows(database, "session.id IN (SELECT ours FROM coming)");
    merged.pairings = bring_pairings(database);
    merged.notes = bring_notes(database);
    index_coming(database);
    database.run("DROP TABLE coming");
    return merged;
}

// The book that SQLite opens by `name`, attached as "other" while the body runs.
Result<void> with_other(Database& database, const std::string& name, const std::function<void(Database&)>& body) {
    database.run("ATTACH ? AS other", {name});
    if (auto attached = database.take_outcome(); !attached) return attached;
    auto done = edit(database, body);
    database.run("DETACH other");
    auto late = database.take_outcome();
    return done ? late : done;
}

// A new book under a name of its own, with what was chosen of this one.
Result<void> write_part(const std::string& from, const std::string& partial, const Chosen& chosen) {
    auto part = Book::open(partial);
    if (!part) return part.error();
    Book book = std::move(part).value();
    Database& database = book.database();
    auto united = with_other(database, from, [&](Database& into) { static_cast<void>(unite(into, chosen)); });
    if (!united) return united;
    database.run("PRAGMA journal_mode = DELETE"); // one file, without a log beside it
    return database.take_outcome();
}

Result<void> write_whole(Book& book, const std::string& path, const Chosen& chosen) {
    std::error_code unknown;
    if (std::filesystem::equivalent(path, book.path(), unknown))
        return Error{ErrorCode::file_not_writable,
                     {path, {}, {}},
                     "the book cannot be exported onto itself",
                     "choose another file name"};
    const std::string partial = partial_name(path);
    remove_book_file(partial);
    auto done = write_part(book.database().name(), partial, chosen);
    if (done) done = appear(partial, path);
    remove_book_file(partial);
    return !done && done.error().place.file == partial ? told_of(done.error(), path) : done;
}

// A copy of another book with today's schema and clean names.
Result<void> made_ours(const std::string& copy) {
    auto opened = Book::open(copy);
    if (!opened) return opened.error();
    Book other = std::move(opened).value();
    return edit(other.database(), clean_names);
}

} // namespace

Result<void> export_sessions(Book& book, std::span<const SessionId> sessions, const std::string& path) {
    return write_whole(book, path, sessions);
}

Result<void> export_book(Book& book, const std::string& path) {
    return write_whole(book, path, std::nullopt);
}

Result<Merged> merge_from(Book& book, const std::string& path) {
    std::error_code unknown;
    if (!std::filesystem::is_regular_file(path, unknown))
        return Error{ErrorCode::file_not_readable, {path, {}, {}}, "there is no such file", "check the name"};
    if (std::filesystem::equivalent(path, book.path(), unknown))
        return Error{
            ErrorCode::book_not_usable, {path, {}, {}}, "this is the book itself", "name the other book's file"};
    // The other file may be older, lie on a disk that cannot be written, and shall never be changed: a copy is read.
    const std::string copy = partial_name(book.path() + ".incoming");
    Merged merged;
    auto done = copy_book(path, copy);
    if (done) done = made_ours(copy);
    if (done)
        done =
            with_other(book.database(), sqlite_name(copy), [&](Database& into) { merged = unite(into, std::nullopt); });
    remove_book_file(copy);
    if (done) return merged;
    return done.error().place.file == copy ? told_of(done.error(), path) : done.error();
}

} // namespace lapwright::book
