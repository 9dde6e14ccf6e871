// SPDX-License-Identifier: GPL-3.0-or-later
// Rows out of a damaged book: each table from its beginning until it breaks, from its end until it breaks, and what
// lies between by number where the table has numbers.
#pragma once

#include "core/book/database.h"

#include <string>
#include <vector>

namespace lapwright::book {

// Into an empty book, within an edit of the caller, its foreign keys off; what belonged to a lost session or name is
// left out at the end.  What could not be read, in words.
[[nodiscard]] std::vector<std::string> rescue_rows(const std::string& damaged, Database& into);

} // namespace lapwright::book
