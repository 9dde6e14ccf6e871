// SPDX-License-Identifier: GPL-3.0-or-later
// Other names for drivers, cars and tracks, in all sessions that have them (removed ones too).  A name that another one
// has already unites the two: all sessions are the other's, and a track that knew no gate gets it.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/book/names.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

// What a renaming does.
struct Renaming {
    std::string from;                // as the book writes it
    std::string to;                  // as plain_name() has it
    int sessions = 0;                // that have the old name; removed ones are not counted
    std::optional<std::string> with; // the other that has the new name already, as the book writes it
    int sessions_with = 0;           // that have it
};

// What was done, enough to take it back.
struct Renamed {
    NameTable table{};
    Renaming what;
    std::vector<SessionId> sessions; // all that had the old name, removed ones too
    TrackParts from_before;          // of two that were united
    TrackParts with_before;
    bool my_car = false; // it was the name of the person's own, see my_car.h
};

// Error book_not_usable where nothing has the old name, or the new one is empty, longer than 120 characters, or
// another's with which it may not be united.
enum class Unite { no, yes };
[[nodiscard]] base::Result<Renamed> rename(Book& book, NameTable table, const std::string& from, const std::string& to,
                                           Unite unite);
// The sessions that were renamed get the old name back, and the two that were united are two again.
[[nodiscard]] base::Result<void> undo_rename(Book& book, const Renamed& renamed);

} // namespace lapwright::book
