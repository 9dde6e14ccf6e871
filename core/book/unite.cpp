// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/unite.h"

#include "core/book/conflicts.h"
#include "core/book/names.h"
#include "core/book/said.h"
#include "core/book/session_rows.h"
#include "core/book/unite_parts.h"

#include <algorithm>
#include <string>
#include <vector>

namespace lapwright::book {
namespace {

// Their sessions, each with the id it has here; fresh: it is not here yet.
void choose(Database& database, const Coming& wanted) {
    database.run("CREATE TEMP TABLE coming (theirs INTEGER PRIMARY KEY, ours INTEGER, fresh INTEGER NOT NULL, "
                 "listed_there INTEGER NOT NULL, listed_here INTEGER NOT NULL)");
    const std::string listed =
        "INSERT OR IGNORE INTO coming SELECT o.id, m.id, m.id IS NULL, o.removed_unix_s IS NULL, "
        "m.id IS NOT NULL AND m.removed_unix_s IS NULL FROM other.session AS o "
        "LEFT JOIN main.session AS m ON m.checksum = o.checksum WHERE " +
        std::string(wanted.removed_too ? "true" : "o.removed_unix_s IS NULL");
    if (!wanted.sessions) return database.run(listed);
    for (const SessionId id : *wanted.sessions) {
        database.run(listed + " AND o.id = ?", {static_cast<std::int64_t>(id)});
        if (database.changed_rows() == 0)
            database.fail({base::ErrorCode::book_not_usable,
                           {database.path(), {}, {}},
                           "a chosen session is not in the book (any more)",
                           "look at the book's list again"});
    }
}

// What was said there; of a chosen part, of its sessions, their tracks and notes.
void bring_said(Database& database, bool all) {
    const std::string of_part =
        all ? "true"
            : "subject IN (SELECT 'session ' || lower(hex(checksum)) FROM other.session JOIN coming ON theirs = id "
              "UNION SELECT 'track ' || lower(name) FROM other.track WHERE id IN (SELECT track_id FROM other.session "
              "JOIN coming ON theirs = id) UNION SELECT 'note ' || uid FROM other.note WHERE session_id IN (SELECT "
              "theirs FROM coming) OR pairing_id IN (SELECT id FROM other.pairing WHERE session_a IN (SELECT theirs "
              "FROM coming) AND session_b IN (SELECT theirs FROM coming)))";
    database.run("INSERT INTO main.said SELECT subject, field, said_unix_s, value, replaced FROM other.said WHERE " +
                 of_part + " ON CONFLICT DO UPDATE SET replaced = max(replaced, excluded.replaced)");
    database.run(
        "INSERT INTO main.gone SELECT subject, gone_unix_s FROM other.gone WHERE true ON CONFLICT DO UPDATE SET "
        "gone_unix_s = max(gone_unix_s, excluded.gone_unix_s)");
}

// Tracks of which more than the name is known come without a session too.  Of two spellings the greater: which book is
// asked first does not matter.
void bring_tracks(Database& database, bool all) {
    const std::string used =
        all ? "true" : "id IN (SELECT track_id FROM other.session JOIN coming ON theirs = other.session.id)";
    database.run("INSERT INTO main.track (name) SELECT name FROM other.track WHERE " + used +
                 " ON CONFLICT (name) DO UPDATE SET name = max(name, excluded.name) WHERE name <> excluded.name "
                 "COLLATE BINARY");
}

// Where a video was ever seen; of a chosen part, the videos of its sessions.
void bring_places_of_videos(Database& database, bool all) {
    const std::string used =
        all ? "true" : "(ends_checksum, size_bytes) IN (SELECT ends_checksum, size_bytes FROM main.video_file)";
    database.run("INSERT OR IGNORE INTO main.video_place (ends_checksum, size_bytes, path) SELECT ends_checksum, "
                 "size_bytes, path FROM other.video_place WHERE " +
                 used);
}

std::vector<std::int64_t> ids(Database& database, const std::string& sql) {
    std::vector<std::int64_t> all;
    Rows rows(database, sql, {});
    while (rows.next())
        all.push_back(rows.whole(0));
    return all;
}

int known_tracks(Database& database) {
    return static_cast<int>(database.one_whole("SELECT count(*) FROM main.track WHERE record IS NOT NULL").value_or(0));
}

// Names are written as they were said last.
void spell_names(Database& database) {
    for (const std::string table : {"driver", "car", "track"})
        database.run("UPDATE main." + table + " SET name = coalesce((SELECT value FROM main.said WHERE field = '" +
                     table + "' AND value = main." + table +
                     ".name COLLATE NOCASE ORDER BY said_unix_s DESC, value DESC LIMIT 1), name)");
}

// The rows show what is in use now.  Which sessions may have changed stays in the table "touched".
void settle(Database& database) {
    database.run("CREATE TEMP TABLE touched AS SELECT id FROM main.session WHERE id IN (SELECT ours FROM coming) OR "
                 "'session ' || lower(hex(checksum)) IN (SELECT subject FROM other.said)");
    for (const std::int64_t id : ids(database, "SELECT id FROM touched"))
        settle_session(database, id);
    for (const std::int64_t id : ids(database, "SELECT id FROM main.track"))
        settle_track(database, id);
    forget_unused_names(database);
    spell_names(database);
}

// The subject of the pairing `p`, of two sessions of this book.
std::string pairing_subject(const std::string& a, const std::string& b) {
    const auto session = [](const std::string& id) {
        return "(SELECT lower(hex(checksum)) FROM main.session AS s WHERE s.id = " + id + ")";
    };
    return "'pairing ' || " + session(a) + " || ' ' || p.lap_a || ' ' || " + session(b) + " || ' ' || p.lap_b";
}

std::string removed_later(const std::string& subject, const std::string& changed) {
    return "EXISTS (SELECT 1 FROM main.gone AS g WHERE g.subject = " + subject + " AND g.gone_unix_s >= " + changed +
           ")";
}

int bring_pairings(Database& database) {
    database.run("INSERT INTO main.pairing (session_a, lap_a, session_b, lap_b, title, sentence, changed_unix_s) "
                 "SELECT a.ours, lap_a, b.ours, lap_b, title, sentence, changed_unix_s FROM other.pairing AS p "
                 "JOIN coming AS a ON a.theirs = session_a JOIN coming AS b ON b.theirs = session_b WHERE NOT " +
                 removed_later(pairing_subject("a.ours", "b.ours"), "p.changed_unix_s") +
                 " ON CONFLICT (session_a, lap_a, session_b, lap_b) DO UPDATE SET title = excluded.title, "
                 "sentence = excluded.sentence, changed_unix_s = excluded.changed_unix_s WHERE "
                 "(excluded.changed_unix_s, excluded.title, excluded.sentence) > "
                 "(pairing.changed_unix_s, pairing.title, pairing.sentence)");
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
        "WHERE (session_id IS NULL OR s.ours IS NOT NULL) AND (pairing_id IS NULL OR p.ours IS NOT NULL) AND NOT " +
        removed_later("'note ' || uid", "changed_unix_s") +
        " ON CONFLICT (uid) DO UPDATE SET session_id = excluded.session_id, pairing_id = excluded.pairing_id, "
        "lap = excluded.lap, segment = excluded.segment, at_m = excluded.at_m, text = excluded.text, "
        "changed_unix_s = excluded.changed_unix_s WHERE "
        "(excluded.changed_unix_s, excluded.text, excluded.segment, coalesce(excluded.lap, -1)) > "
        "(note.changed_unix_s, note.text, note.segment, coalesce(note.lap, -1))");
    const auto notes = static_cast<int>(database.changed_rows());
    database.run("DROP TABLE coming_pairing");
    return notes;
}

// What was predicted is the same in both; who drove with it and what was observed come together from the later one.
void bring_predictions(Database& database) {
    const std::string predicted = "source, program, kept_unix_s, grip_share, downforce_share, drag_share, "
                                  "downforce_area_m2, drag_area_m2, on_a_tonne, power_w, mass_kg, expected, lap_s, "
                                  "change_s, change_low_s, change_high_s";
    const std::string since = "driven, observed_s, observed_low_s, observed_high_s, changed_unix_s";
    const auto order = [](const std::string& of) {
        return "(" + of + ".changed_unix_s, " + of + ".driven, quote(" + of + ".observed_s), quote(" + of +
               ".observed_low_s), quote(" + of + ".observed_high_s))";
    };
    database.run("INSERT INTO main.prediction (uid, session_id, there_id, " + predicted + ", " + since +
                 ") SELECT uid, whose.ours, there.ours, " + predicted + ", " + since +
                 " FROM other.prediction JOIN coming AS whose ON whose.theirs = session_id "
                 "JOIN coming AS there ON there.theirs = there_id WHERE NOT " +
                 removed_later("'prediction ' || uid", "changed_unix_s") +
                 " ON CONFLICT (uid) DO UPDATE SET driven = excluded.driven, observed_s = excluded.observed_s, "
                 "observed_low_s = excluded.observed_low_s, observed_high_s = excluded.observed_high_s, "
                 "changed_unix_s = excluded.changed_unix_s WHERE " +
                 order("excluded") + " > " + order("prediction"));
}

// Of two the same one, whichever book comes to which.
void bring_pictures(Database& database) {
    database.run("INSERT INTO main.outline SELECT ours, places_m FROM other.outline JOIN coming ON theirs = session_id "
                 "WHERE true ON CONFLICT (session_id) DO UPDATE SET places_m = max(places_m, excluded.places_m)");
    database.run(
        "INSERT INTO main.gap_curve SELECT a.ours, lap_a, b.ours, lap_b, gaps_s FROM other.gap_curve "
        "JOIN coming AS a ON a.theirs = session_a JOIN coming AS b ON b.theirs = session_b WHERE true "
        "ON CONFLICT (session_a, lap_a, session_b, lap_b) DO UPDATE SET gaps_s = max(gaps_s, excluded.gaps_s)");
}

void remove_gone(Database& database) {
    database.run("DELETE FROM main.note WHERE " + removed_later("'note ' || note.uid", "note.changed_unix_s"));
    database.run("DELETE FROM main.prediction WHERE " +
                 removed_later("'prediction ' || prediction.uid", "prediction.changed_unix_s"));
    database.run("DELETE FROM main.pairing WHERE id IN (SELECT p.id FROM main.pairing AS p WHERE " +
                 removed_later(pairing_subject("p.session_a", "p.session_b"), "p.changed_unix_s") + ")");
}

void index_touched(Database& database) {
    database.run("DELETE FROM words WHERE rowid IN (SELECT id FROM touched)");
    database.run("INSERT INTO words (rowid, text) SELECT session_id, text FROM found_by "
                 "WHERE session_id IN (SELECT id FROM touched)");
}

int count(Database& database, const std::string& where) {
    return static_cast<int>(database.one_whole("SELECT count(*) FROM coming WHERE " + where).value_or(0));
}

} // namespace

Merged unite(Database& database, const Coming& coming) {
    Merged merged;
    const int tracks_before = known_tracks(database);
    choose(database, coming);
    bring_said(database, !coming.sessions);
    bring_tracks(database, !coming.sessions);
    bring_sessions(database);
    bring_places_of_videos(database, !coming.sessions);
    settle(database);
    merged.sessions = count(database, "fresh AND ours IN (SELECT id FROM main.session WHERE removed_unix_s IS NULL)");
    merged.known_sessions = count(database, "NOT fresh AND listed_there");
    merged.removed =
        removed_rows(database, "session.id IN (SELECT ours FROM coming WHERE NOT fresh AND (listed_there OR "
                               "listed_here))");
    merged.tracks = std::max(0, known_tracks(database) - tracks_before);
    merged.pairings = bring_pairings(database);
    merged.notes = bring_notes(database);
    bring_predictions(database);
    bring_pictures(database);
    remove_gone(database);
    index_touched(database);
    merged.conflicts = static_cast<int>(conflict_rows(database).size());
    database.run("DROP TABLE touched");
    database.run("DROP TABLE coming");
    return merged;
}

} // namespace lapwright::book
