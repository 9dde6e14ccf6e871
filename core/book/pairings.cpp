// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/pairings.h"

#include "core/base/translation.h"
#include "core/book/notes.h"
#include "core/book/said.h"
#include "core/book/session_rows.h"

#include <utility>

namespace lapwright::book {
namespace {

using base::Error;
using base::Result;
using base::said;

// Those whose sessions are both listed.
constexpr const char* const listed_pairings =
    "SELECT id, session_a, lap_a, session_b, lap_b, title, sentence, changed_unix_s FROM pairing "
    "WHERE session_a IN (SELECT id FROM session WHERE removed_unix_s IS NULL) "
    "AND session_b IN (SELECT id FROM session WHERE removed_unix_s IS NULL) ";

constexpr const char* const newest_first = "ORDER BY changed_unix_s DESC, id DESC";

KeptPairing pairing_of(const Rows& rows) {
    return {PairingId{rows.whole(0)},
            {SessionId{rows.whole(1)}, static_cast<int>(rows.whole(2)), SessionId{rows.whole(3)},
             static_cast<int>(rows.whole(4)), rows.text(5), rows.text(6), rows.real(7)}};
}

std::string subject_of(Database& database, std::int64_t a, int lap_a, std::int64_t b, int lap_b) {
    Rows rows(database,
              "SELECT 'pairing ' || lower(hex(a.checksum)) || ' ' || ?2 || ' ' || lower(hex(b.checksum)) || ' ' || ?4 "
              "FROM session AS a JOIN session AS b WHERE a.id = ?1 AND b.id = ?3",
              {a, lap_a, b, lap_b});
    return rows.next() ? rows.text(0) : "";
}

// With its notes.
void put_pairing_gone(Database& database, std::int64_t id) {
    database.run("INSERT INTO gone SELECT 'note ' || uid, max(?, changed_unix_s) FROM note WHERE pairing_id = ? "
                 "ON CONFLICT (subject) DO UPDATE SET gone_unix_s = max(gone_unix_s, excluded.gone_unix_s)",
                 {now_unix_s(), id});
    std::string subject;
    double changed = 0.0;
    {
        Rows rows(database, "SELECT session_a, lap_a, session_b, lap_b, changed_unix_s FROM pairing WHERE id = ?",
                  {id});
        if (!rows.next()) return;
        subject = subject_of(database, rows.whole(0), static_cast<int>(rows.whole(1)), rows.whole(2),
                             static_cast<int>(rows.whole(3)));
        changed = rows.real(4);
    }
    put_gone(database, subject, changed);
}

} // namespace

Result<PairingId> put_pairing(Book& book, const Pairing& pairing) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, pairing.session_a);
        require_session(database, pairing.session_b);
        const auto a = static_cast<std::int64_t>(pairing.session_a);
        const auto b = static_cast<std::int64_t>(pairing.session_b);
        const double changed = pairing.changed_unix_s > 0.0 ? pairing.changed_unix_s : now_unix_s();
        database.run("INSERT INTO pairing (session_a, lap_a, session_b, lap_b, title, sentence, changed_unix_s) "
                     "VALUES (?, ?, ?, ?, ?, ?, ?) ON CONFLICT (session_a, lap_a, session_b, lap_b) DO UPDATE SET "
                     "title = excluded.title, sentence = excluded.sentence, changed_unix_s = excluded.changed_unix_s",
                     {a, pairing.lap_a, b, pairing.lap_b, pairing.title, pairing.sentence,
                      after_gone(database, subject_of(database, a, pairing.lap_a, b, pairing.lap_b), changed)});
        const auto id = database.one_whole(
            "SELECT id FROM pairing WHERE session_a = ? AND lap_a = ? AND session_b = ? AND lap_b = ?",
            {a, pairing.lap_a, b, pairing.lap_b});
        index_words(database, pairing.session_a);
        index_words(database, pairing.session_b);
        return PairingId{id.value_or(0)};
    });
}

Result<void> remove_pairing(Book& book, PairingId id) {
    return edit(book.database(), [&](Database& database) {
        std::vector<SessionId> touched;
        {
            Rows rows(database, "SELECT session_a, session_b FROM pairing WHERE id = ?",
                      {static_cast<std::int64_t>(id)});
            if (rows.next()) touched = {SessionId{rows.whole(0)}, SessionId{rows.whole(1)}};
        }
        put_pairing_gone(database, static_cast<std::int64_t>(id));
        database.run("DELETE FROM pairing WHERE id = ?", {static_cast<std::int64_t>(id)});
        for (const SessionId session : touched)
            index_words(database, session);
    });
}

Result<std::vector<KeptPairing>> pairings(Book& book) {
    return look(book.database(), [](Database& database) {
        std::vector<KeptPairing> all;
        Rows rows(database, std::string(listed_pairings) + newest_first, {});
        while (rows.next())
            all.push_back(pairing_of(rows));
        return all;
    });
}

Result<std::vector<PairingSummary>> pairing_list(Book& book) {
    return look(book.database(), [](Database& database) {
        std::vector<PairingSummary> all;
        const auto summary = [&database](SessionId id) {
            Rows rows(database, "SELECT " + std::string(summary_columns) + " FROM summary WHERE id = ?",
                      {static_cast<std::int64_t>(id)});
            return rows.next() ? summary_of(rows) : SessionSummary{};
        };
        Rows rows(database, std::string(listed_pairings) + newest_first, {});
        while (rows.next()) {
            KeptPairing kept = pairing_of(rows);
            SessionSummary a = summary(kept.pairing.session_a);
            SessionSummary b = summary(kept.pairing.session_b);
            all.push_back({std::move(kept), std::move(a), std::move(b)});
        }
        return all;
    });
}

Result<Pairing> read_pairing(Book& book, PairingId id) {
    return look(book.database(), [&](Database& database) {
        Rows rows(database, std::string(listed_pairings) + "AND id = ?", {static_cast<std::int64_t>(id)});
        if (rows.next()) return pairing_of(rows).pairing;
        database.fail({base::ErrorCode::book_not_usable,
                       {database.path(), {}, {}},
                       said("this pairing is not in the book (any more)"),
                       said("look at the book's list again")});
        return Pairing{};
    });
}

Result<TakenPairing> take_pairing(Book& book, PairingId id) {
    auto pairing = read_pairing(book, id);
    if (!pairing) return pairing.error();
    auto notes = notes_of_pairing(book, id);
    if (!notes) return notes.error();
    if (const auto removed = remove_pairing(book, id); !removed) return removed.error();
    return TakenPairing{std::move(pairing).value(), std::move(notes).value()};
}

Result<PairingId> bring_back_pairing(Book& book, const TakenPairing& taken) {
    const auto id = put_pairing(book, taken.pairing);
    if (!id) return id.error();
    for (Note note : taken.notes) {
        note.about.pairing = *id;
        if (const auto put = put_note(book, note); !put) return put.error();
    }
    return *id;
}

} // namespace lapwright::book
