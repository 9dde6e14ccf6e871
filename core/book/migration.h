// SPDX-License-Identifier: GPL-3.0-or-later
// The book's schema is the sum of numbered steps, resources/migrations/NNNN-….sql, which the build puts into the
// program.  A step that was released is never changed.
#pragma once

#include <span>
#include <string_view>

namespace lapwright::book {

struct Migration {
    int number = 0; // 1, 2, …: the schema's version after it
    std::string_view sql;
};

// Those of resources/migrations, in order.
[[nodiscard]] std::span<const Migration> known_migrations();

} // namespace lapwright::book
