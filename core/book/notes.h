// SPDX-License-Identifier: GPL-3.0-or-later
// Notes on a session, a lap, a pairing, or a segment within one of them.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

// Puts the note in, or in the place of the one with its uid; answers with the uid.  A note that was removed may be put
// back with the uid it had, which undoes the removal.
[[nodiscard]] base::Result<std::string> put_note(Book& book, const Note& note);
// One that is not there is removed already.
[[nodiscard]] base::Result<void> remove_note(Book& book, const std::string& uid);

// The oldest first.
[[nodiscard]] base::Result<std::vector<Note>> notes_of_session(Book& book, SessionId id);
[[nodiscard]] base::Result<std::vector<Note>> notes_of_pairing(Book& book, PairingId id);

} // namespace lapwright::book
