// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/track_parts.h"

namespace lapwright::book {

TrackParts parts_of(Database& database, std::int64_t track) {
    TrackParts parts;
    Rows rows(database, "SELECT record, line FROM track WHERE id = ?", {track});
    if (!rows.next()) return parts;
    if (!rows.absent(0)) parts.record = rows.text(0);
    if (!rows.absent(1)) parts.line = std::string(rows.blob(1));
    return parts;
}

void put_parts(Database& database, std::int64_t track, const TrackParts& parts) {
    const auto line = parts.line ? std::optional(Blob{*parts.line}) : std::nullopt;
    database.run("UPDATE track SET record = ?, line = ? WHERE id = ?", {parts.record, line, track});
}

} // namespace lapwright::book
