// SPDX-License-Identifier: GPL-3.0-or-later
// What a person says of a session's laps, in the book.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/database.h"
#include "core/book/entries.h"
#include "core/lap/judged_by_hand.h"

#include <span>
#include <vector>

namespace lapwright::book {

[[nodiscard]] base::Result<std::vector<lap::JudgedByHand>> judged_by_hand(Book& book, SessionId id);

// All words on the session from now on, and its laps as they have them.
[[nodiscard]] base::Result<void> judge_by_hand(Book& book, SessionId id, std::span<const lap::JudgedByHand> words,
                                               std::span<const lap::Lap> laps);

// Within an edit: the rows of its laps become as the words have them, and count as made when they were.
void judge_lap_rows(Database& database, SessionId id);

} // namespace lapwright::book
