// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/notes.h"

#include "core/book/said.h"
#include "core/book/session_rows.h"

namespace lapwright::book {
namespace {

using base::Error;
using base::Result;

template <typename Id>
std::optional<std::int64_t> whole(const std::optional<Id>& id) {
    return id ? std::optional(static_cast<std::int64_t>(*id)) : std::nullopt;
}

template <typename Id>
std::optional<Id> maybe(const std::optional<std::int64_t>& number) {
    return number ? std::optional(static_cast<Id>(*number)) : std::nullopt;
}

// The sessions that the note is found by, before or after the edit.
std::vector<SessionId> sessions_of_note(Database& database, const std::string& uid) {
    std::vector<SessionId> ids;
    Rows rows(database,
              "SELECT session_id FROM note WHERE uid = ?1 AND session_id IS NOT NULL UNION "
              "SELECT session_a FROM note JOIN pairing ON pairing.id = pairing_id WHERE uid = ?1 UNION "
              "SELECT session_b FROM note JOIN pairing ON pairing.id = pairing_id WHERE uid = ?1",
              {uid});
    while (rows.next())
        ids.push_back(SessionId{rows.whole(0)});
    return ids;
}

std::string new_uid(Database& database) {
    Rows rows(database, "SELECT lower(hex(randomblob(16)))", {});
    return rows.next() ? rows.text(0) : "";
}

double moment_of(Database& database, const std::string& uid) {
    Rows rows(database, "SELECT changed_unix_s FROM note WHERE uid = ?", {uid});
    return rows.next() ? rows.real(0) : 0.0;
}

// A pairing that bears a note lives, whoever removed it before the note was written.
void keep_pairing(Database& database, PairingId id, double noted_unix_s) {
    database.run("UPDATE pairing SET changed_unix_s = max(changed_unix_s, ?) WHERE id = ?",
                 {noted_unix_s, static_cast<std::int64_t>(id)});
}

Result<std::vector<Note>> notes_where(Book& book, const std::string& column, std::int64_t id) {
    return look(book.database(), [&](Database& database) {
        std::vector<Note> notes;
        Rows rows(database,
                  "SELECT uid, session_id, pairing_id, lap, segment, at_m, text, changed_unix_s FROM note WHERE " +
                      column + " = ? ORDER BY id",
                  {id});
        while (rows.next())
            notes.push_back({rows.text(0),
                             {maybe<SessionId>(rows.maybe_whole(1)), maybe<PairingId>(rows.maybe_whole(2)),
                              maybe<int>(rows.maybe_whole(3)), rows.text(4), rows.maybe_real(5)},
                             rows.text(6),
                             rows.real(7)});
        return notes;
    });
}

} // namespace

Result<std::string> put_note(Book& book, const Note& note) {
    return edit(book.database(), [&](Database& database) {
        const std::string uid = note.uid.empty() ? new_uid(database) : note.uid;
        const double changed_unix_s = say_note(database, {uid, {}, note.text, note.changed_unix_s});
        if (note.about.session) require_session(database, *note.about.session);
        auto touched = sessions_of_note(database, uid);
        const NoteAbout& about = note.about;
        database.run("INSERT INTO note (uid, session_id, pairing_id, lap, segment, at_m, text, changed_unix_s) "
                     "VALUES (?, ?, ?, ?, ?, ?, ?, ?) ON CONFLICT (uid) DO UPDATE SET session_id = "
                     "excluded.session_id, pairing_id = excluded.pairing_id, lap = excluded.lap, segment = "
                     "excluded.segment, at_m = excluded.at_m, text = excluded.text, changed_unix_s = "
                     "excluded.changed_unix_s",
                     {uid, whole(about.session), whole(about.pairing), whole(about.lap), about.segment, about.at_m,
                      note.text, changed_unix_s});
        if (about.pairing) keep_pairing(database, *about.pairing, changed_unix_s);
        for (const SessionId id : sessions_of_note(database, uid))
            touched.push_back(id);
        for (const SessionId id : touched)
            index_words(database, id);
        return uid;
    });
}

Result<void> remove_note(Book& book, const std::string& uid) {
    return edit(book.database(), [&](Database& database) {
        const auto touched = sessions_of_note(database, uid);
        put_gone(database, note_subject(uid), moment_of(database, uid));
        database.run("DELETE FROM note WHERE uid = ?", {uid});
        for (const SessionId id : touched)
            index_words(database, id);
    });
}

Result<std::vector<Note>> notes_of_session(Book& book, SessionId id) {
    return notes_where(book, "session_id", static_cast<std::int64_t>(id));
}

Result<std::vector<Note>> notes_of_pairing(Book& book, PairingId id) {
    return notes_where(book, "pairing_id", static_cast<std::int64_t>(id));
}

} // namespace lapwright::book
