// SPDX-License-Identifier: GPL-3.0-or-later
// The book's tables, views and indices are those that its migrations make: a flipped bit in their text is damage that
// no check of pages finds, and a list would later fail by it.
#pragma once

#include "core/book/database.h"
#include "core/book/migration.h"

#include <span>

namespace lapwright::book {

// Fails as damaged where the text of one is another, or it is not there.  Further ones are left alone.
void check_schema(Database& database, std::span<const Migration> migrations);

} // namespace lapwright::book
