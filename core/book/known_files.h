// SPDX-License-Identifier: GPL-3.0-or-later
// The files that the book has sessions of, by name and size: what is not among them is new.  Removed sessions count:
// nobody waits for those again.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"

#include <cstdint>
#include <set>
#include <string>
#include <utility>

namespace lapwright::book {

[[nodiscard]] base::Result<std::set<std::pair<std::string, std::uint64_t>>> known_files(Book& book);

} // namespace lapwright::book
