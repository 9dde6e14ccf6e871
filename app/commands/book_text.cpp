// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/book_text.h"

#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"
#include "core/book/season_figures.h"
#include "core/book/sha256.h"
#include "core/book/timing_line.h"
#include "core/recording/recording.h"
#include "core/sheet/csv.h"

namespace lapwright::commands {
namespace {

using nlohmann::ordered_json;

std::int64_t number(book::SessionId id) {
    return static_cast<std::int64_t>(id);
}

ordered_json summary_json(const book::SessionSummary& session) {
    return {{"id", number(session.id)},
            {"file", session.source.file_name},
            {"size_bytes", session.source.size_bytes},
            {"sha256", book::hex_text(session.source.checksum)},
            {"driver", text_or_null(session.driver)},
            {"car", text_or_null(session.car)},
            {"track", text_or_null(session.track)},
            {"tyre", text_or_null(session.tyre)},
            {"conditions", text_or_null(session.conditions)},
            {"start_utc", moment_json(session.start_unix_s)},
            {"duration_s", number_json(session.duration_s)},
            {"laps", session.laps},
            {"clean_laps", session.clean_laps},
            {"best_clean_s", maybe_json(session.best_clean_s)},
            {"notes", session.notes}};
}

std::string time_text(const std::optional<double>& time_s) {
    return time_s ? base::lap_time_text(*time_s) : "—";
}

std::string day_text(const book::SessionSummary& session) {
    return session.start_unix_s ? base::date_text(*session.start_unix_s) : "—";
}

// "3 sessions", "1 note".
std::string counted(int count, const std::string& one) {
    return base::integer_text(count) + " " + one + (count == 1 ? "" : "s");
}

// "was removed on 28 Nov 2026, 21:50 UTC; book restore 3 brings it back".
std::string was_removed(book::SessionId id, double removed_unix_s) {
    return "was removed on " + base::date_text(removed_unix_s) + "; lapwright book restore " +
           base::integer_text(number(id)) + " brings it back";
}

std::string listed(const std::vector<std::string>& words) {
    std::string text;
    for (std::size_t i = 0; i < words.size(); ++i)
        text += (i == 0 ? "" : i + 1 == words.size() ? " and " : ", ") + words[i];
    return text;
}

} // namespace

std::string known(const std::string& text) {
    return text.empty() ? "—" : text;
}

std::string list_json(const std::vector<book::SessionSummary>& sessions) {
    ordered_json rows = ordered_json::array();
    for (const book::SessionSummary& session : sessions)
        rows.push_back(summary_json(session));
    return document_text({{"sessions", rows}});
}

std::string list_table(const std::vector<book::SessionSummary>& sessions) {
    if (sessions.empty()) return "no session\n";
    std::vector<std::vector<std::string>> rows{
        {"id", "start", "track", "car", "driver", "tyre", "file", "clean", "best"}};
    for (const book::SessionSummary& session : sessions)
        rows.push_back({base::integer_text(number(session.id)), day_text(session), known(session.track),
                        known(session.car), known(session.driver), known(session.tyre), session.source.file_name,
                        base::integer_text(session.clean_laps), time_text(session.best_clean_s)});
    return aligned(rows, 7);
}

std::string removed_json(const std::vector<book::RemovedSession>& sessions) {
    ordered_json rows = ordered_json::array();
    for (const book::RemovedSession& one : sessions)
        rows.push_back({{"id", number(one.id)},
                        {"file", one.file_name},
                        {"driver", text_or_null(one.driver)},
                        {"car", text_or_null(one.car)},
                        {"track", text_or_null(one.track)},
                        {"start_utc", moment_json(one.start_unix_s)},
                        {"removed_utc", moment_json(one.removed_unix_s)}});
    return document_text({{"sessions", rows}});
}

std::string removed_table(const std::vector<book::RemovedSession>& sessions) {
    if (sessions.empty()) return "no removed session\n";
    std::vector<std::vector<std::string>> rows{{"id", "removed", "start", "track", "car", "driver", "file"}};
    for (const book::RemovedSession& one : sessions)
        rows.push_back({base::integer_text(number(one.id)), base::date_text(one.removed_unix_s),
                        one.start_unix_s ? base::date_text(*one.start_unix_s) : "—", known(one.track), known(one.car),
                        known(one.driver), one.file_name});
    return aligned(rows, 7);
}

std::string season_json(const std::vector<book::SeasonSession>& season) {
    const auto changes = book::setup_changes(season, base::UnitSystem::metric);
    const auto elsewhere = book::timed_elsewhere(season);
    ordered_json rows = ordered_json::array();
    for (std::size_t i = 0; i < season.size(); ++i) {
        ordered_json row = summary_json(season[i].session);
        row["median_clean_s"] = maybe_json(season[i].median_clean_s);
        row["setup"] = ordered_json::array();
        for (const car::SetupItem& item : season[i].setup.items)
            row["setup"].push_back({{"name", item.name}, {"value", item.value}});
        row["setup_change"] = text_or_null(changes[i]);
        const auto& line = season[i].timing_line;
        row["timing_line"] = line ? ordered_json{{"latitude_rad", number_json(line->latitude_rad)},
                                                 {"longitude_rad", number_json(line->longitude_rad)}}
                                  : ordered_json();
        row["timed_elsewhere"] = line ? ordered_json(static_cast<bool>(elsewhere[i])) : ordered_json();
        rows.push_back(std::move(row));
    }
    return document_text({{"sessions", rows}});
}

std::string season_table(const std::vector<book::SeasonSession>& season) {
    if (season.empty()) return "no session\n";
    const auto changes = book::setup_changes(season, base::UnitSystem::metric);
    std::vector<std::vector<std::string>> rows{
        {"start", "car", "driver", "tyre", "conditions", "setup since the one before", "clean", "best", "median"}};
    for (std::size_t i = 0; i < season.size(); ++i) {
        const book::SeasonSession& one = season[i];
        rows.push_back({day_text(one.session), known(one.session.car), known(one.session.driver),
                        known(one.session.tyre), known(one.session.conditions), known(changes[i]),
                        base::integer_text(one.session.clean_laps), time_text(one.session.best_clean_s),
                        time_text(one.median_clean_s)});
    }
    const std::string elsewhere = book::timed_elsewhere_text(season);
    return aligned(rows, 6) + elsewhere + (elsewhere.empty() ? "" : "\n");
}

ordered_json figure_rows_json(const std::vector<book::SeasonSession>& season) {
    ordered_json rows = ordered_json::array();
    for (const book::SeasonSession& one : season) {
        ordered_json row = summary_json(one.session);
        row["figures"] = ordered_json::object();
        for (const book::KeptFigure& figure : one.figures)
            row["figures"][figure.name] = {{"value", number_json(figure.value)},
                                           {"low", number_json(figure.low)},
                                           {"high", number_json(figure.high)},
                                           {"decided_by", figure.decided_by}};
        rows.push_back(std::move(row));
    }
    return rows;
}

std::string figures_json(const std::vector<book::SeasonSession>& season) {
    return document_text({{"sessions", figure_rows_json(season)}});
}

std::string figures_table(const std::vector<book::SeasonSession>& season) {
    if (season.empty()) return "no session has figures: they come from the window's Causes page\n";
    const auto courses = book::figure_courses(season, base::UnitSystem::metric);
    std::vector<std::vector<std::string>> rows{{"session", "track"}};
    for (const book::SeasonSession& one : season)
        rows.push_back({one.session.start_unix_s ? day_text(one.session) : one.session.source.file_name,
                        known(one.session.track)});
    for (const book::FigureCourse& course : courses) {
        rows.front().push_back(course.title);
        for (std::size_t row = 1; row < rows.size(); ++row)
            rows[row].push_back("—");
        for (const book::FigurePoint& point : course.points)
            rows[point.session + 1].back() = book::figure_text(course, point);
    }
    return aligned(rows, 2);
}

std::string pairings_json(const std::vector<book::PairingSummary>& pairings) {
    ordered_json rows = ordered_json::array();
    const auto side = [](const book::SessionSummary& session, int lap) {
        ordered_json one = summary_json(session);
        one["lap"] = lap;
        return one;
    };
    for (const book::PairingSummary& one : pairings) {
        const book::Pairing& pairing = one.kept.pairing;
        rows.push_back({{"id", static_cast<std::int64_t>(one.kept.id)},
                        {"compared_utc", moment_json(pairing.changed_unix_s)},
                        {"sentence", text_or_null(pairing.sentence)},
                        {"a", side(one.a, pairing.lap_a)},
                        {"b", side(one.b, pairing.lap_b)}});
    }
    return document_text({{"pairings", rows}});
}

std::string pairings_table(const std::vector<book::PairingSummary>& pairings) {
    if (pairings.empty()) return "no pairing\n";
    std::vector<std::vector<std::string>> rows{
        {"compared", "track", "session A", "lap", "session B", "lap", "outcome"}};
    for (const book::PairingSummary& one : pairings) {
        const book::Pairing& pairing = one.kept.pairing;
        rows.push_back({base::date_text(pairing.changed_unix_s), known(one.a.track), one.a.source.file_name,
                        base::integer_text(pairing.lap_a), one.b.source.file_name, base::integer_text(pairing.lap_b),
                        known(pairing.sentence)});
    }
    return aligned(rows, 7);
}

std::string renamed_json(const book::Renamed& renamed) {
    const book::Renaming& what = renamed.what;
    return document_text({{"from", what.from},
                          {"to", what.with.value_or(what.to)},
                          {"sessions", what.sessions},
                          {"united", what.with.has_value()}});
}

std::string renamed_table(const book::Renamed& renamed) {
    const book::Renaming& what = renamed.what;
    const std::string begin =
        what.from + " is now " + what.with.value_or(what.to) + ", in " + counted(what.sessions, "session");
    return begin +
           (what.with ? "; united with the " + counted(what.sessions_with, "session") + " that had the name"
                      : std::string()) +
           "\n";
}

std::string added_json(const std::vector<AddedFile>& added) {
    ordered_json rows = ordered_json::array();
    for (const AddedFile& one : added)
        rows.push_back({{"file", one.file},
                        {"id", number(one.added.id)},
                        {"was_there", one.added.was_there},
                        {"mended", one.added.mended},
                        {"removed_utc", moment_json(one.added.removed_unix_s)},
                        {"renewed", one.renewed},
                        {"laps", one.laps},
                        {"without_laps", text_or_null(one.without_laps)}});
    return document_text({{"sessions", rows}});
}

std::string added_table(const std::vector<AddedFile>& added) {
    std::string text;
    for (const AddedFile& one : added) {
        text += one.file + ": ";
        if (one.added.removed_unix_s)
            text += "is in the book again, as " + base::integer_text(number(one.added.id)) + " (it was removed on " +
                    base::date_text(*one.added.removed_unix_s) + ")";
        else if (one.added.was_there)
            text += "was in the book already, as " + base::integer_text(number(one.added.id)) +
                    (one.added.mended ? "; its damaged samples are whole again" : "") +
                    (one.renewed.empty() ? "" : "; now with the " + listed(one.renewed) + " given here");
        else
            text += "is in the book as " + base::integer_text(number(one.added.id)) + ", with " +
                    counted(static_cast<int>(one.laps), "lap");
        if (!one.without_laps.empty()) text += " (" + one.without_laps + ")";
        text += "\n";
    }
    return text;
}

std::string merged_json(const book::Merged& merged) {
    ordered_json removed = ordered_json::array();
    for (const book::RemovedSession& one : merged.removed)
        removed.push_back(
            {{"id", number(one.id)}, {"file", one.file_name}, {"removed_utc", moment_json(one.removed_unix_s)}});
    return document_text({{"sessions", merged.sessions},
                          {"known_sessions", merged.known_sessions},
                          {"removed", removed},
                          {"notes", merged.notes},
                          {"pairings", merged.pairings},
                          {"tracks", merged.tracks},
                          {"conflicts", merged.conflicts}});
}

std::string merged_table(const book::Merged& merged) {
    std::string text = counted(merged.sessions, "new session") + " (" + base::integer_text(merged.known_sessions) +
                       " known already), " + counted(merged.notes, "note") + ", " +
                       counted(merged.pairings, "pairing") + ", " + counted(merged.tracks, "track") + "\n";
    for (const book::RemovedSession& one : merged.removed)
        text += one.file_name + " " + was_removed(one.id, one.removed_unix_s) + "\n";
    if (merged.conflicts > 0)
        text += counted(merged.conflicts, "conflict") +
                ": what people said of one thing differs; \"lapwright book conflicts\" shows them\n";
    return text;
}

std::string table_csv(const book::BookTable& table) {
    const auto cell = [](const book::TableValue& value) -> sheet::Cell {
        if (const auto* text = std::get_if<std::string>(&value)) return *text;
        if (const auto* whole = std::get_if<std::int64_t>(&value)) return sheet::Number{base::integer_text(*whole)};
        const auto* real = std::get_if<double>(&value);
        return sheet::Number{real ? base::exact_text(*real) : ""};
    };
    sheet::Table printed{table.columns, {}};
    for (const auto& row : table.rows) {
        auto& cells = printed.rows.emplace_back();
        for (const book::TableValue& value : row)
            cells.push_back(cell(value));
    }
    return sheet::csv_text(printed);
}

std::string corners_json(const MeasuredCorners& measured) {
    return document_text({{"sessions", measured.sessions}, {"corners", measured.corners}});
}

std::string corners_table(const MeasuredCorners& measured) {
    if (measured.sessions == 0) return "nothing is left to measure\n";
    const auto number = [](std::size_t count) { return base::integer_text(static_cast<std::int64_t>(count)); };
    return number(measured.corners) + " corners of laps measured, in sessions: " + number(measured.sessions) + "\n";
}

std::string health_json(const book::Health& health) {
    return document_text({{"whole", health.whole()}, {"complaints", health.complaints}});
}

std::string health_table(const book::Health& health) {
    if (health.whole()) return "the book is whole\n";
    std::string text;
    for (const std::string& complaint : health.complaints)
        text += complaint + "\n";
    return text;
}

std::string salvaged_json(const book::Salvaged& salvaged) {
    return document_text({{"whole", salvaged.was_whole},
                          {"kept_as", text_or_null(salvaged.kept_as)},
                          {"sessions", salvaged.sessions},
                          {"removed_sessions", salvaged.removed_sessions},
                          {"notes", salvaged.notes},
                          {"damaged_channels", salvaged.damaged_channels},
                          {"losses", salvaged.losses}});
}

std::string salvaged_table(const book::Salvaged& salvaged) {
    if (salvaged.was_whole) return "the book is whole; nothing was changed\n";
    const std::string removed =
        salvaged.removed_sessions > 0 ? counted(salvaged.removed_sessions, "removed session") + ", " : std::string();
    std::string text = counted(salvaged.sessions, "session") + ", " + removed + counted(salvaged.notes, "note") +
                       " are in the book; the damaged one is kept as " + salvaged.kept_as + "\n";
    for (const std::string& loss : salvaged.losses)
        text += loss + "\n";
    return text;
}

} // namespace lapwright::commands
