// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/rename.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"
#include "core/base/translation.h"
#include "core/book/database.h"
#include "core/book/said.h"
#include "core/book/session_rows.h"

namespace lapwright::book {
namespace {

using base::Error;
using base::Result;
using base::said;

constexpr int max_characters = 120; // of a name

struct Row {
    std::int64_t id = 0;
    std::string name;
};

std::string quoted(const std::string& name) {
    return "\"" + name + "\"";
}

void fail(Database& database, const std::string& what, const std::string& remedy) {
    database.fail({base::ErrorCode::book_not_usable, {database.path(), {}, {}}, what, remedy});
}

std::optional<Row> row_of(Database& database, NameTable table, const std::string& name) {
    Rows rows(database, "SELECT id, name FROM " + table_text(table) + " WHERE name = ?", {trimmed(name)});
    return rows.next() ? std::optional(Row{rows.whole(0), rows.text(1)}) : std::nullopt;
}

int listed_sessions(Database& database, NameTable table, std::int64_t id) {
    return static_cast<int>(
        database
            .one_whole("SELECT count(*) FROM session WHERE removed_unix_s IS NULL AND " + table_text(table) + "_id = ?",
                       {id})
            .value_or(0));
}

std::vector<SessionId> sessions_of(Database& database, NameTable table, std::int64_t id) {
    std::vector<SessionId> all;
    Rows rows(database, "SELECT id FROM session WHERE " + table_text(table) + "_id = ? ORDER BY id", {id});
    while (rows.next())
        all.push_back(SessionId{rows.whole(0)});
    return all;
}

void give_name(Database& database, NameTable table, const std::vector<SessionId>& sessions, std::int64_t name) {
    for (const SessionId session : sessions)
        database.run("UPDATE session SET " + table_text(table) + "_id = ? WHERE id = ?",
                     {name, static_cast<std::int64_t>(session)});
}

// The same row under another name.  What is known of a track is said of the new one.
void write_name(Database& database, NameTable table, std::int64_t id, const std::string& name) {
    const TrackParts parts = table == NameTable::track ? parts_of(database, id) : TrackParts{};
    if (table == NameTable::track) put_parts(database, id, {});
    database.run("UPDATE " + table_text(table) + " SET name = ? WHERE id = ?", {name, id});
    if (table == NameTable::track) put_parts(database, id, parts);
    for (const SessionId session : sessions_of(database, table, id))
        say_spelling(database, session, table_text(table), name);
}

void tell_all(Database& database, const std::vector<SessionId>& sessions) {
    for (const SessionId session : sessions) {
        say_session(database, session); // those that changed their row
        index_words(database, session);
    }
}

// The rows of both names, and what lies between them.
struct Found {
    Row from;
    std::optional<Row> with;
    Renaming what;
};

std::optional<Found> find(Database& database, NameTable table, const std::string& from, const std::string& to) {
    const auto old = row_of(database, table, from);
    if (!old) {
        fail(database, "the book has no " + table_text(table) + " " + quoted(from),
             said("look at the book's list for the names that it has"));
        return std::nullopt;
    }
    const std::string name = plain_name(to);
    if (name.empty()) {
        fail(database, said("the new name is empty"), said("give one"));
        return std::nullopt;
    }
    if (base::count_characters(name) > std::size_t{max_characters}) {
        fail(database, "the new name is longer than " + base::integer_text(max_characters) + " characters",
             said("give a shorter one"));
        return std::nullopt;
    }
    Found found{*old, row_of(database, table, name), {old->name, name, 0, {}, 0}};
    found.what.sessions = listed_sessions(database, table, old->id);
    if (found.with && found.with->id == old->id) found.with.reset(); // itself, written otherwise
    if (found.with) {
        found.what.with = found.with->name;
        found.what.sessions_with = listed_sessions(database, table, found.with->id);
    }
    return found;
}

// Whether the person's own car had the name.
bool rename_my_car(Database& database, NameTable table, const std::string& from, const std::string& to) {
    if (table == NameTable::track) return false;
    database.run("UPDATE my_car SET " + table_text(table) + " = ? WHERE " + table_text(table) + " = ?", {to, from});
    return database.changed_rows() > 0;
}

// All is the other's; its own row of the two stays.
void unite(Database& database, const Found& found, Renamed& done) {
    give_name(database, done.table, done.sessions, found.with->id);
    if (done.table == NameTable::track) {
        done.from_before = parts_of(database, found.from.id);
        done.with_before = parts_of(database, found.with->id);
        // A line belongs to the gate that it begins at: both are of one of the two.
        if (!done.with_before.record && done.from_before.record) put_parts(database, found.with->id, done.from_before);
        put_parts(database, found.from.id, {});
    }
    database.run("DELETE FROM " + table_text(done.table) + " WHERE id = ?", {found.from.id});
}

} // namespace

Result<Renamed> rename(Book& book, NameTable table, const std::string& from, const std::string& to, Unite may_unite) {
    return edit(book.database(), [&](Database& database) {
        Renamed done;
        const auto found = find(database, table, from, to);
        if (!found) return done;
        if (found->with && may_unite == Unite::no) {
            fail(database,
                 "there is a " + table_text(table) + " " + quoted(found->with->name) + " already, with " +
                     base::integer_text(found->what.sessions_with) +
                     (found->what.sessions_with == 1 ? " session" : " sessions"),
                 said("choose another name, or add --unite to make the two one"));
            return done;
        }
        done = {table, found->what, sessions_of(database, table, found->from.id), {}, {}, false};
        if (found->with)
            unite(database, *found, done);
        else
            write_name(database, table, found->from.id, found->what.to);
        done.my_car = rename_my_car(database, table, found->from.name, found->what.to);
        tell_all(database, done.sessions);
        return done;
    });
}

Result<void> undo_rename(Book& book, const Renamed& renamed) {
    return edit(book.database(), [&](Database& database) {
        const auto now = row_of(database, renamed.table, renamed.what.to);
        if (!now)
            return fail(database, "the book has no " + quoted(renamed.what.to) + " any more", said("rename by hand"));
        if (renamed.what.with) {
            const auto old = id_of_name(database, renamed.table, renamed.what.from);
            if (!old) return;
            give_name(database, renamed.table, renamed.sessions, *old);
            if (renamed.table == NameTable::track) {
                put_parts(database, *old, renamed.from_before);
                put_parts(database, now->id, renamed.with_before);
            }
        } else {
            write_name(database, renamed.table, now->id, renamed.what.from);
        }
        if (renamed.my_car)
            static_cast<void>(rename_my_car(database, renamed.table, renamed.what.to, renamed.what.from));
        tell_all(database, renamed.sessions);
    });
}

} // namespace lapwright::book
