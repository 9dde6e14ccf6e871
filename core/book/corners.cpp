// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/corners.h"

#include "core/book/database.h"
#include "core/book/session_rows.h"

namespace lapwright::book {

base::Result<void> put_corners(Book& book, SessionId id, const std::vector<KeptCorner>& corners) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        clear_corners(database, id);
        for (const KeptCorner& one : corners)
            database.run(
                "INSERT INTO corner VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
                {static_cast<std::int64_t>(id),
                 one.lap,
                 one.place,
                 one.segment,
                 one.start_m,
                 one.end_m,
                 one.time_s,
                 one.entry_speed_mps,
                 one.entry_speed_sd_mps,
                 one.min_speed_mps,
                 one.min_speed_sd_mps,
                 one.min_speed_at_m,
                 one.exit_speed_mps,
                 one.exit_speed_sd_mps,
                 one.lift_at_m,
                 one.braking_point_m,
                 one.braking_point_sd_m,
                 one.braking_mps2,
                 one.throttle_opens_m,
                 one.full_throttle_m,
                 one.full_throttle_sd_m,
                 one.peak_lateral_mps2,
                 one.coasting_s,
                 one.driven_length_m});
    });
}

base::Result<std::vector<SessionId>> sessions_without_corners(Book& book) {
    // As read_table() does.
    book.database().run("PRAGMA trusted_schema = ON");
    auto found = look(book.database(), [](Database& database) {
        std::vector<SessionId> all;
        Rows rows(database,
                  "SELECT session.id FROM session JOIN track ON track.id = track_id WHERE removed_unix_s IS NULL AND "
                  "EXISTS (SELECT 1 FROM lap WHERE lap.session_id = session.id AND kind = 'flying') AND EXISTS (SELECT "
                  "1 FROM "
                  "segments WHERE segments.track = track.name AND segments.kind = 'corner') AND session.id NOT IN "
                  "(SELECT session_id FROM corner_figures) ORDER BY session.id",
                  {});
        while (rows.next())
            all.push_back(SessionId{rows.whole(0)});
        return all;
    });
    book.database().run("PRAGMA trusted_schema = OFF");
    return found;
}

} // namespace lapwright::book
