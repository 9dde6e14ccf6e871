// SPDX-License-Identifier: GPL-3.0-or-later
// Tables of names: drivers, cars, tracks.  The functions work within an edit of the caller.
#pragma once

#include "core/base/plain_text.h"
#include "core/book/database.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::book {

enum class NameTable { driver, car, track };

// "driver", "car", "track": the table's name, which is the word for people too.
[[nodiscard]] std::string table_text(NameTable table);

// As the tables keep and compare names.
using base::plain_name;
using base::same_name;
using base::trimmed;

// The row of this name, made where there is none; nothing for an empty name.
[[nodiscard]] std::optional<std::int64_t> id_of_name(Database& database, NameTable table, std::string_view name);

// Drivers and cars that no session has, and tracks of which no more than the name is known.
void forget_unused_names(Database& database);

// What a track's row knows besides its name, as it stands there.
struct TrackParts {
    std::optional<std::string> record;
    std::optional<std::string> line;
};

[[nodiscard]] TrackParts parts_of(Database& database, std::int64_t track);
void put_parts(Database& database, std::int64_t track, const TrackParts& parts);

} // namespace lapwright::book
