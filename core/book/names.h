// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of names: drivers, cars, tracks.  The functions work within an edit of the caller.
#pragma once

#include "core/book/database.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::book {

enum class NameTable { driver, car, track };

// "driver", "car", "track": the table's name, which is the word for people too.
[[nodiscard]] std::string table_text(NameTable table);

[[nodiscard]] std::string_view trimmed(std::string_view text);
// As the tables keep a name: no line breaks and no other control characters, no blanks around it.
[[nodiscard]] std::string plain_name(std::string_view name);
// "Plover" and " plover": as the tables compare names.
[[nodiscard]] bool same_name(std::string_view one, std::string_view other);

// The row of this name, made where there is none; nothing for an empty name.
[[nodiscard]] std::optional<std::int64_t> id_of_name(Database& database, NameTable table, std::string_view name);

// Drivers and cars that no session has, and tracks of which no more than the name is known.
void forget_unused_names(Database& database);

} // namespace lapwright::book
