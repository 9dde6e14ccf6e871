// SPDX-License-Identifier: GPL-3.0-or-later
// The names of a book that came from elsewhere, as this program would have put them in (see names.h).
#pragma once

#include "core/book/database.h"

namespace lapwright::book {

// Within an edit of the caller.  Two names that become the same are one; one that holds nothing is none.
void clean_names(Database& database);

} // namespace lapwright::book
