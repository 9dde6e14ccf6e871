// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/season.h"

#include "core/book/names.h"
#include "core/book/session_rows.h"
#include "core/book/summary_rows.h"

#include <algorithm>

namespace lapwright::book {
namespace {

using base::Error;
using base::Result;

constexpr const char* const oldest_first = " ORDER BY start_unix_s IS NULL, start_unix_s, id";

std::vector<SessionSummary> summaries(Database& database, std::string_view track, std::string_view car) {
    std::vector<SessionSummary> all;
    Rows rows(database,
              "SELECT " + std::string(summary_columns) +
                  " FROM summary WHERE (?1 = '' OR track = ?1 COLLATE NOCASE) AND "
                  "(?2 = '' OR car = ?2 COLLATE NOCASE)" +
                  oldest_first,
              {track, car});
    while (rows.next())
        all.push_back(summary_of(rows));
    return all;
}

// The mean of the middle two where they are even in number.
std::optional<double> median_clean_s(const std::vector<lap::Lap>& laps) {
    std::vector<double> times;
    for (const lap::Lap& lap : laps)
        if (lap.clean) times.push_back(lap.time_s());
    if (times.empty()) return std::nullopt;
    std::ranges::sort(times);
    const std::size_t middle = times.size() / 2;
    return times.size() % 2 == 1 ? times[middle] : 0.5 * (times[middle - 1] + times[middle]);
}

} // namespace

Result<std::vector<SeasonSession>> season_of_track(Book& book, const std::string& track, const std::string& car) {
    std::vector<SeasonSession> season;
    const auto problem = look(book.database(), [&](Database& database) {
        if (trimmed(track).empty()) return;
        for (SessionSummary& summary : summaries(database, trimmed(track), trimmed(car))) {
            const SessionId id = summary.id;
            season.push_back(
                {std::move(summary), median_clean_s(lap_rows(database, id)), detail_row(database, id).setup});
        }
    });
    if (problem) return *problem;
    return season;
}

std::optional<Error> put_figures(Book& book, SessionId id, const std::vector<KeptFigure>& figures) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        const auto session = static_cast<std::int64_t>(id);
        database.run("DELETE FROM figure WHERE session_id = ?", {session});
        for (const KeptFigure& figure : figures)
            database.run(
                "INSERT INTO figure (session_id, name, value, low, high, decided_by) VALUES (?, ?, ?, ?, ?, ?)",
                {session, figure.name, figure.value, figure.low, figure.high, figure.decided_by});
    });
}

Result<std::vector<SeasonFigures>> season_of_car(Book& book, const std::string& car) {
    std::vector<SeasonFigures> season;
    const auto problem = look(book.database(), [&](Database& database) {
        if (trimmed(car).empty()) return;
        for (SessionSummary& summary : summaries(database, "", trimmed(car))) {
            std::vector<KeptFigure> figures;
            Rows rows(database,
                      "SELECT name, value, low, high, decided_by FROM figure WHERE session_id = ? ORDER BY name",
                      {static_cast<std::int64_t>(summary.id)});
            while (rows.next())
                figures.push_back({rows.text(0), rows.real(1), rows.real(2), rows.real(3), rows.text(4)});
            if (!figures.empty()) season.push_back({std::move(summary), std::move(figures)});
        }
    });
    if (problem) return *problem;
    return season;
}

} // namespace lapwright::book
