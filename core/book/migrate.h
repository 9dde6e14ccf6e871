// SPDX-License-Identifier: GPL-3.0-or-later
// Brings a book's schema up to date.
#pragma once

#include "core/book/database.h"
#include "core/book/migration.h"

#include <span>
#include <string>

namespace lapwright::book {

// Says in the file's header that it is a book ("LWbk").
inline constexpr std::int64_t book_mark = 0x4c57626b;

[[nodiscard]] base::Error no_book(const std::string& path);
[[nodiscard]] base::Error newer_book(const std::string& path);

// All missing steps in one transaction; a book that was there before is copied to "PATH.schema-N" first.  Error
// book_not_usable when the file is no book or has a newer schema.
[[nodiscard]] base::Result<void> migrate(Database& database, std::span<const Migration> migrations);

// A book that can only be read must have today's schema.
[[nodiscard]] base::Result<void> require_today(Database& database, std::span<const Migration> migrations);

} // namespace lapwright::book
