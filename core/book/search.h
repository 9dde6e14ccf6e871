// SPDX-License-Identifier: GPL-3.0-or-later
// Which sessions?  By track, car, driver, tyre, date and words (SQLite's FTS5 over names, tyre, conditions, setup
// items, facts of the file, notes, and titles of pairings).
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

// All that are given must hold; an empty one asks for nothing.
struct Filter {
    std::string driver = {}; // whole names
    std::string car = {};
    std::string track = {};
    std::string tyre = {};
    std::optional<double> from_unix_s = {}; // a session without a date is in no range
    std::optional<double> until_unix_s = {};
    std::string words = {}; // every one of them must stand somewhere, as it is or as the beginning of a word
};

// The newest first, those without a date last.
[[nodiscard]] base::Result<std::vector<SessionSummary>> search(Book& book, const Filter& filter = {});
// Error book_not_usable where there is none with this id, or it was removed.
[[nodiscard]] base::Result<SessionSummary> read_summary(Book& book, SessionId id);

// What a filter can name, sorted: those that at least one session has.
struct Names {
    std::vector<std::string> drivers;
    std::vector<std::string> cars;
    std::vector<std::string> tracks;
    std::vector<std::string> tyres;
};
[[nodiscard]] base::Result<Names> names(Book& book);

} // namespace lapwright::book
