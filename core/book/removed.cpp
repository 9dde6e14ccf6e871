// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/removed.h"

#include "core/book/database.h"

namespace lapwright::book {

std::vector<RemovedSession> removed_rows(Database& database, const std::string& among) {
    std::vector<RemovedSession> all;
    Rows rows(database,
              "SELECT session.id, file_name, coalesce(driver.name, ''), coalesce(car.name, ''), "
              "coalesce(track.name, ''), start_unix_s, removed_unix_s FROM main.session AS session "
              "LEFT JOIN main.driver AS driver ON driver.id = driver_id LEFT JOIN main.car AS car ON car.id = car_id "
              "LEFT JOIN main.track AS track ON track.id = track_id WHERE removed_unix_s IS NOT NULL AND (" +
                  among + ") ORDER BY removed_unix_s DESC, session.id DESC",
              {});
    while (rows.next())
        all.push_back({SessionId{rows.whole(0)}, rows.text(1), rows.text(2), rows.text(3), rows.text(4),
                       rows.maybe_real(5), rows.real(6)});
    return all;
}

base::Result<std::vector<RemovedSession>> removed_sessions(Book& book) {
    std::vector<RemovedSession> all;
    const auto problem = look(book.database(), [&](Database& database) { all = removed_rows(database); });
    if (problem) return *problem;
    return all;
}

} // namespace lapwright::book
