// SPDX-License-Identifier: GPL-3.0-or-later
// A damaged book: what can be read is copied into a new file under the book's name, the damaged one is kept beside it.
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace lapwright::book {

struct Salvaged {
    bool was_whole = false;   // nothing was wrong and nothing was changed; the rest says nothing then
    std::string kept_as;      // the damaged file's new name
    int sessions = 0;         // as lists show them
    int removed_sessions = 0; // that can be restored
    int damaged_channels = 0; // of both
    int notes = 0;
    std::vector<std::string> losses; // in words; empty when all of it was saved
};

// The error says that the file is damaged.
[[nodiscard]] bool is_damage(const base::Error& error);

// A whole book may be in use meanwhile.  Errors: file_not_readable, file_not_writable, book_not_usable (damaged and
// open elsewhere, no book, or a newer version's); the file then is where it was.
[[nodiscard]] base::Result<Salvaged> salvage(const std::string& path);

} // namespace lapwright::book
