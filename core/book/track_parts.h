// SPDX-License-Identifier: GPL-3.0-or-later
// What a track's row knows besides its name, as it stands there, within an edit or a look of the caller.
#pragma once

#include "core/book/database.h"

#include <cstdint>
#include <optional>
#include <string>

namespace lapwright::book {

struct TrackParts {
    std::optional<std::string> record;
    std::optional<std::string> line;
};

[[nodiscard]] TrackParts parts_of(Database& database, std::int64_t track);
void put_parts(Database& database, std::int64_t track, const TrackParts& parts);

} // namespace lapwright::book
