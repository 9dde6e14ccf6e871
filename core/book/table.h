// SPDX-License-Identifier: GPL-3.0-or-later
// The book's tables for other tools, which any reader of SQLite can query itself: documented views with SI units in the
// names of their columns (the last step of resources/migrations that makes views says what they hold).
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"

#include <array>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lapwright::book {

inline constexpr std::array<std::string_view, 9> table_names{"sessions",       "laps",        "segments",
                                                             "corner_figures", "car_figures", "setups",
                                                             "setup_items",    "conditions",  "predictions"};

using TableValue = std::variant<std::monostate, std::int64_t, double, std::string>; // the first: absent

struct BookTable {
    std::vector<std::string> columns;
    std::vector<std::vector<TableValue>> rows; // as long as columns
};

// Error book_not_usable where there is no table of this name.
[[nodiscard]] base::Result<BookTable> read_table(Book& book, const std::string& name);

} // namespace lapwright::book
