// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/season.h"

#include "core/base/translation.h"
#include "core/book/names.h"
#include "core/book/session_rows.h"
#include "core/book/timing_line.h"
#include "core/car/setup_change.h"

#include <algorithm>

namespace lapwright::book {
namespace {

using base::Error;
using base::Result;
using base::said;

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

std::vector<KeptFigure> figure_rows(Database& database, SessionId id) {
    std::vector<KeptFigure> figures;
    Rows rows(database, "SELECT name, value, low, high, decided_by FROM figure WHERE session_id = ? ORDER BY name",
              {static_cast<std::int64_t>(id)});
    while (rows.next())
        figures.push_back({rows.text(0), rows.real(1), rows.real(2), rows.real(3), rows.text(4)});
    return figures;
}

Result<std::vector<SeasonSession>> season(Book& book, std::string_view track, std::string_view car) {
    return look(book.database(), [&](Database& database) {
        std::vector<SeasonSession> all;
        for (SessionSummary& summary : summaries(database, track, car)) {
            const SessionId id = summary.id;
            const std::vector<lap::Lap> laps = lap_rows(database, id);
            all.push_back({std::move(summary), median_clean_s(laps), detail_row(database, id).setup,
                           figure_rows(database, id),
                           track.empty() ? std::nullopt : place_of_line(database, id, laps)});
        }
        return all;
    });
}

} // namespace

Result<std::vector<SeasonSession>> season_of_track(Book& book, const std::string& track, const std::string& car) {
    if (trimmed(track).empty()) return std::vector<SeasonSession>();
    return season(book, trimmed(track), trimmed(car));
}

Result<std::vector<SeasonSession>> season_of_car(Book& book, const std::string& car) {
    if (trimmed(car).empty()) return std::vector<SeasonSession>();
    auto found = season(book, "", trimmed(car));
    if (!found) return found;
    std::vector<SeasonSession> all = std::move(found).value();
    std::erase_if(all, [](const SeasonSession& one) { return one.figures.empty(); });
    return all;
}

Result<void> put_figures(Book& book, SessionId id, const std::vector<KeptFigure>& figures) {
    return edit(book.database(), [&](Database& database) {
        require_session(database, id);
        write_figures(database, id, figures);
    });
}

std::vector<KeptFigure> kept_figures(const car::CarFigures& figures) {
    std::vector<KeptFigure> kept;
    const auto add = [&kept](const char* name, const std::optional<car::CarFigure>& figure) {
        if (figure && figure->told())
            kept.push_back(
                {name, figure->value, figure->low, figure->high, std::string(car::name(figure->decided_by))});
    };
    add("downforce_area_m2", figures.downforce_area_m2);
    add("downforce_area_m2_per_kg", figures.downforce_area_m2_per_kg);
    add("drag_area_m2", figures.drag_area_m2);
    add("drag_area_m2_per_kg", figures.drag_area_m2_per_kg);
    add("grip", figures.grip);
    add("power_w", figures.power_w);
    add("power_w_per_kg", figures.power_w_per_kg);
    return kept;
}

std::vector<std::string> setup_changes(const std::vector<SeasonSession>& season, base::UnitSystem units) {
    std::vector<std::string> lines;
    std::vector<const SeasonSession*> last; // of each car
    for (const SeasonSession& one : season) {
        lines.emplace_back();
        if (!one.session.start_unix_s || car::says_nothing(one.setup)) continue;
        const auto before = std::ranges::find_if(
            last, [&](const SeasonSession* other) { return same_name(other->session.car, one.session.car); });
        if (before == last.end()) {
            last.push_back(&one);
            continue;
        }
        const std::string line = car::one_line(car::setup_changes((*before)->setup, one.setup, units));
        lines.back() = line.empty() ? said("no change") : line;
        *before = &one;
    }
    return lines;
}

std::string conditions_text(const SeasonSession& session, base::UnitSystem units) {
    std::string text = session.session.conditions;
    const auto& temperature = session.setup.conditions.temperature_k;
    if (!temperature) return text;
    return text + (text.empty() ? "" : ", ") +
           base::figure_with_unit(*temperature, base::Quantity::temperature, units, 0);
}

} // namespace lapwright::book
