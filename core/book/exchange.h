// SPDX-License-Identifier: GPL-3.0-or-later
// Books for a friend: a file with some sessions or all of them is a book itself, and taking one in is merging two
// books. The same session (by its source's checksum) comes once; names of drivers, cars and tracks are matched.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/book/sessions.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lapwright::book {

// These sessions with laps, notes, figures, their tracks, and the pairings among them.  The file appears whole or not
// at all.  Errors: file_not_writable, book_not_usable.
[[nodiscard]] base::Result<void> export_sessions(Book& book, std::span<const SessionId> sessions,
                                                 const std::string& path);
// All of it.
[[nodiscard]] base::Result<void> export_book(Book& book, const std::string& path);

struct Merged {
    int sessions = 0; // that were new
    int known_sessions = 0;
    std::vector<RemovedSession> removed; // of the known ones those that one book listed and the other had removed later
    int notes = 0;                       // new or newer
    int pairings = 0;
    int tracks = 0;    // whose record was not known
    int conflicts = 0; // in the whole book now, see conflicts.h
};

// The other file is read and never changed.  The same books make the same book in any order, see unite.h.
[[nodiscard]] base::Result<Merged> merge_from(Book& book, const std::string& path);

} // namespace lapwright::book
