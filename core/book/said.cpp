// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/said.h"

#include "core/base/plain_text.h"
#include "core/book/judged_by_hand.h"
#include "core/book/session_rows.h"

#include <algorithm>
#include <utility>
#include <vector>

namespace lapwright::book {
namespace {

// The least step between two moments of one subject; doubles tell it apart up to the year 5000.
constexpr double tick_s = 1e-4;

// Of the subject ?1; NULL where nothing was ever said.
std::string in_use(const std::string& field) {
    return "(SELECT value FROM said WHERE subject = ?1 AND field = " + field +
           " AND NOT replaced ORDER BY said_unix_s DESC, value DESC LIMIT 1)";
}

// As the view session_field has them (a view may not ask for JSON).  A line belongs to the gate that it begins at.
const std::string track_fields =
    "(SELECT id, 'record' AS field, coalesce(record, '') AS value, '' AS file_value FROM track UNION ALL SELECT id, "
    "'line ' || CASE json_valid(record) WHEN 1 THEN coalesce(json_extract(record, '$.gate'), '') ELSE '' END, "
    "coalesce(line, ''), '' FROM track)";

// Of ?1 and ?2, not before ?3 and later than all.
const std::string next_moment =
    "max(?3, coalesce((SELECT max(said_unix_s) + 1e-4 FROM said WHERE subject = ?1 AND field "
    "= ?2), 0))";

void replace_all(Database& database, const std::string& subject, const std::string& field) {
    database.run("UPDATE said SET replaced = 1 WHERE subject = ? AND field = ?", {subject, field});
}

std::string session_subject(Database& database, std::int64_t id) {
    Rows rows(database, "SELECT 'session ' || lower(hex(checksum)) FROM session WHERE id = ?", {id});
    return rows.next() ? rows.text(0) : "";
}

std::string subject_of_track(Database& database, std::int64_t id) {
    Rows rows(database, "SELECT name FROM track WHERE id = ?", {id});
    return rows.next() ? track_subject(rows.text(0)) : "";
}

// The row's fields as the view `fields` shows them.
void say_row(Database& database, const std::string& subject, const std::string& fields, std::int64_t id) {
    database.run("INSERT INTO said SELECT ?1, field, 0, file_value, 0 FROM " + fields +
                     " AS f WHERE id = ?2 AND file_value <> '' AND +value <> '' AND NOT EXISTS (SELECT 1 FROM said "
                     "WHERE subject = ?1 "
                     "AND field = f.field)",
                 {subject, id});
    const std::string current = in_use("f.field");
    std::vector<std::string> changed;
    {
        Rows rows(database,
                  "SELECT field FROM " + fields +
                      " AS f WHERE id = ?2 AND CASE WHEN field IN ('driver', 'car', 'track') " +
                      "THEN lower(value) <> lower(coalesce(" + current + ", '')) ELSE +value <> coalesce(" + current +
                      ", '') END",
                  {subject, id});
        while (rows.next())
            changed.push_back(rows.text(0));
    }
    const double now = now_unix_s();
    for (const std::string& field : changed) {
        replace_all(database, subject, field);
        database.run("INSERT INTO said SELECT ?1, ?2, " + next_moment + ", +value, 0 FROM " + fields +
                         " WHERE id = ?4 AND field = ?2",
                     {subject, field, now, id});
    }
}

// Words on laps that are there no more.
void say_taken_back(Database& database, const std::string& subject, std::int64_t id) {
    std::vector<std::string> fields;
    {
        Rows rows(database,
                  "SELECT DISTINCT field FROM said AS f WHERE subject = ?1 AND field LIKE 'judged %' AND " +
                      in_use("f.field") + " <> '' AND field NOT IN (SELECT field FROM session_field WHERE id = ?2)",
                  {subject, id});
        while (rows.next())
            fields.push_back(rows.text(0));
    }
    for (const std::string& field : fields)
        say(database, subject, field, "", now_unix_s());
}

// The column takes over what is in use, where something was said of it.
std::string taken(const std::string& column, const std::string& field, const std::string& value) {
    return column + " = CASE WHEN " + in_use(field) + " IS NULL THEN " + column + " ELSE " + value + " END";
}

void take_name(Database& database, const std::string& subject, std::int64_t id, const std::string& table) {
    const std::string name = in_use("'" + table + "'");
    database.run("INSERT OR IGNORE INTO " + table + " (name) SELECT " + name + " WHERE coalesce(" + name +
                     ", '') <> ''",
                 {subject});
    database.run("UPDATE session SET " +
                     taken(table + "_id", "'" + table + "'",
                           "(SELECT id FROM " + table + " WHERE name = CAST(" + name + " AS TEXT))") +
                     " WHERE id = ?2",
                 {subject, id});
}

void settle_words_on_laps(Database& database, const std::string& subject, std::int64_t id) {
    database.run("DELETE FROM judged_by_hand WHERE session_id = ?", {id});
    database.run("INSERT INTO judged_by_hand SELECT ?2, CAST(substr(field, 8) AS REAL), substr(value, 1, 1) = '1', "
                 "substr(value, 3) FROM (SELECT DISTINCT field, " +
                     in_use("f.field") +
                     " AS value FROM said AS f WHERE subject = ?1 AND field LIKE 'judged %') WHERE value <> ''",
                 {subject, id});
    judge_lap_rows(database, SessionId{id});
}

} // namespace

std::string track_subject(const std::string& name) {
    return "track " + base::lower_case(name);
}

std::string note_subject(const std::string& uid) {
    return "note " + uid;
}

void say_session(Database& database, SessionId id) {
    const auto number = static_cast<std::int64_t>(id);
    const std::string subject = session_subject(database, number);
    say_row(database, subject, "session_field", number);
    say_taken_back(database, subject, number);
}

void say_spelling(Database& database, SessionId id, const std::string& table, const std::string& name) {
    say(database, session_subject(database, static_cast<std::int64_t>(id)), table, name, now_unix_s());
}

void say_track(Database& database, std::int64_t track) {
    say_row(database, subject_of_track(database, track), track_fields, track);
}

void say_all(Database& database) {
    std::vector<std::int64_t> sessions;
    std::vector<std::int64_t> tracks;
    for (const auto& [table, ids] : {std::pair("session", &sessions), std::pair("track", &tracks)}) {
        Rows rows(database, "SELECT id FROM " + std::string(table), {});
        while (rows.next())
            ids->push_back(rows.whole(0));
    }
    for (const std::int64_t id : sessions)
        say_session(database, SessionId{id});
    for (const std::int64_t id : tracks)
        say_track(database, id);
}

void say(Database& database, const std::string& subject, const std::string& field, const Given& value,
         double at_least_unix_s) {
    replace_all(database, subject, field);
    database.run("INSERT INTO said SELECT ?1, ?2, " + next_moment + ", ?4, 0",
                 {subject, field, at_least_unix_s, value});
}

double say_note(Database& database, const Note& note) {
    const std::string subject = note_subject(note.uid);
    double changed = after_gone(database, subject, note.changed_unix_s > 0.0 ? note.changed_unix_s : now_unix_s());
    {
        Rows rows(database, "SELECT max(said_unix_s) FROM said WHERE subject = ? AND field = 'text'", {subject});
        if (rows.next() && !rows.absent(0)) changed = std::max(changed, rows.real(0) + tick_s);
    }
    say(database, subject, "text", note.text, changed);
    return changed;
}

void settle_session(Database& database, std::int64_t session) {
    const std::string subject = session_subject(database, session);
    for (const std::string table : {"driver", "car", "track"})
        take_name(database, subject, session, table);
    database.run("UPDATE session SET " + taken("start_unix_s", "'start'", "nullif(" + in_use("'start'") + ", '')") +
                     ", " + taken("conditions", "'conditions'", in_use("'conditions'")) + ", " +
                     taken("setup", "'setup'", "coalesce(nullif(" + in_use("'setup'") + ", ''), '{}')") + ", " +
                     taken("removed_unix_s", "'removed'", "nullif(" + in_use("'removed'") + ", '')") + " WHERE id = ?2",
                 {subject, session});
    index_setup(database, SessionId{session});
    settle_words_on_laps(database, subject, session);
}

void settle_track(Database& database, std::int64_t track) {
    const std::string subject = subject_of_track(database, track);
    database.run("UPDATE track SET " + taken("record", "'record'", "nullif(" + in_use("'record'") + ", '')") +
                     " WHERE id = ?2",
                 {subject, track});
    // After the record, whose gate says which line.
    const std::string line = "(SELECT f.field FROM " + track_fields + " AS f WHERE f.id = ?2 AND f.field <> 'record')";
    database.run("UPDATE track SET line = nullif(" + in_use(line) + ", '') WHERE id = ?2", {subject, track});
}

void put_gone(Database& database, const std::string& subject, double changed_unix_s) {
    database.run("INSERT INTO gone VALUES (?1, max(?2, ?3)) ON CONFLICT (subject) DO UPDATE SET gone_unix_s = "
                 "max(gone_unix_s, excluded.gone_unix_s)",
                 {subject, now_unix_s(), changed_unix_s});
}

double after_gone(Database& database, const std::string& subject, double changed_unix_s) {
    Rows rows(database, "SELECT gone_unix_s FROM gone WHERE subject = ?", {subject});
    return rows.next() ? std::max(changed_unix_s, rows.real(0) + tick_s) : changed_unix_s;
}

} // namespace lapwright::book
