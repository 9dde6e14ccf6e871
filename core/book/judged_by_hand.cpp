// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/judged_by_hand.h"

#include "core/base/plain_text.h"
#include "core/book/database.h"
#include "core/book/said.h"
#include "core/book/session_rows.h"

namespace lapwright::book {

namespace {

std::vector<lap::JudgedByHand> word_rows(Database& database, SessionId id) {
    std::vector<lap::JudgedByHand> words;
    Rows rows(database, "SELECT at_s, clean, reason FROM judged_by_hand WHERE session_id = ? ORDER BY at_s",
              {static_cast<std::int64_t>(id)});
    while (rows.next())
        words.push_back({rows.real(0), rows.whole(1) != 0, rows.text(2)});
    return words;
}

} // namespace

base::Result<std::vector<lap::JudgedByHand>> judged_by_hand(Book& book, SessionId id) {
    return look(book.database(), [&](Database& database) {
        require_session(database, id);
        return word_rows(database, id);
    });
}

void judge_lap_rows(Database& database, SessionId id) {
    const std::vector<lap::JudgedByHand> words = word_rows(database, id);
    if (words.empty()) return;
    std::int64_t place = 0;
    for (const lap::Lap& lap : lap::judged_by_hand(lap_rows(database, id), words))
        database.run("UPDATE lap SET clean = ?, why = ? WHERE session_id = ? AND place = ?",
                     {static_cast<int>(lap.clean), lap.why_not_clean, static_cast<std::int64_t>(id), place++});
}

base::Result<void> judge_by_hand(Book& book, SessionId id, std::span<const lap::JudgedByHand> words,
                                 std::span<const lap::Lap> laps) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        const auto session = static_cast<std::int64_t>(id);
        database.run("DELETE FROM judged_by_hand WHERE session_id = ?", {session});
        for (const lap::JudgedByHand& word : words)
            database.run("INSERT OR REPLACE INTO judged_by_hand (session_id, at_s, clean, reason) VALUES (?, ?, ?, ?)",
                         {session, word.at_s, static_cast<int>(word.clean), base::plain_name(word.reason)});
        database.run("DELETE FROM lap WHERE session_id = ?", {session});
        write_laps(database, id, laps);
        say_session(database, id);
    });
}

} // namespace lapwright::book
