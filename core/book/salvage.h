// SPDX-License-Identifier: GPL-3.0-or-later
// A damaged book: what can be read is copied into a new file under the book's name, the damaged one is kept beside it.
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace lapwright::book {

struct Salvaged {
    std::string kept_as; // the damaged file's new name
    int sessions = 0;
    int damaged_channels = 0; // of these sessions
    int notes = 0;
    std::vector<std::string> losses; // in words; empty when all of it was saved
};

// Nobody may have the book open.  Errors: file_not_writable, book_not_usable; the file then is where it was.
[[nodiscard]] base::Result<Salvaged> salvage(const std::string& path);

} // namespace lapwright::book
