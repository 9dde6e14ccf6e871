// SPDX-License-Identifier: GPL-3.0-or-later
// Books for a friend: a file with some sessions or all of them is a book itself, and taking one in is merging two
// books. The same session (by its source's checksum) comes once; names of drivers, cars and tracks are matched; of two
// notes with one uid the one changed last stays.
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
    std::vector<RemovedSession> removed; // of the known ones those that were removed here, and stay so
    int notes = 0;                       // new or newer
    int pairings = 0;
    int tracks = 0; // whose record was not known
};

// The other file is read and never changed.  What both know stays as this book has it.
[[nodiscard]] base::Result<Merged> merge_from(Book& book, const std::string& path);

} // namespace lapwright::book
