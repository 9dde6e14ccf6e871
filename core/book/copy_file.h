// SPDX-License-Identifier: GPL-3.0-or-later
// A whole copy of a book while others may be using it, by SQLite's backup.
#pragma once

#include "core/base/result.h"

#include <string>

namespace lapwright::book {

// Page by page, in the state of one moment; one plain file without companions, which appears whole or not at all and
// takes the place of an older one.  Errors: file_not_writable, book_not_usable.
[[nodiscard]] base::Result<void> copy_book(const std::string& from, const std::string& to);

// A name beside the target for a file that is not whole yet.
[[nodiscard]] std::string partial_name(const std::string& target);
// Flushes the file to the disk and gives it its name.
[[nodiscard]] base::Result<void> appear(const std::string& partial, const std::string& target);
// The same error, told of the file that a person knows in the place of a partial one.
[[nodiscard]] base::Error told_of(base::Error error, const std::string& file);
// Removes the file and what SQLite may have laid beside it.
void remove_book_file(const std::string& path);

} // namespace lapwright::book
