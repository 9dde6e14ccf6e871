// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/session_rows.h"

#include "core/base/translation.h"
#include "core/book/names.h"
#include "core/book/said.h"
#include "core/car/write_setup_sheet.h"
#include "core/recording/warning_words.h"

#include <algorithm>
#include <chrono>

namespace lapwright::book {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;

std::int64_t number(SessionId id) {
    return static_cast<std::int64_t>(id);
}

lap::LapKind lap_kind(std::string_view text) {
    for (const auto kind : {lap::LapKind::out, lap::LapKind::flying, lap::LapKind::in})
        if (lap::name(kind) == text) return kind;
    return lap::LapKind::incomplete;
}

template <typename Each>
void for_each_placed(const Each& each, auto&& body) {
    std::int64_t place = 0;
    for (const auto& one : each)
        body(place++, one);
}

std::string words_of(const car::SetupSheet& setup) {
    std::string words;
    for (const car::SetupItem& item : setup.items)
        words += item.name + " " + item.value + " ";
    return words;
}

// One text for a setup of which nothing is known.
std::string setup_text(const car::SetupSheet& setup) {
    std::string text = car::setup_sheet_text(setup);
    return trimmed(text) == "{}" ? "{}" : text;
}

// A setup that this version cannot read is as good as none here; its text stays in the book.
car::SetupSheet setup_of(const std::string& text, const std::string& path) {
    auto sheet = car::parse_setup_sheet(text, path);
    return sheet ? std::move(sheet).value() : car::SetupSheet{};
}

void put_setup_words(Database& database, SessionId id, const car::SetupSheet& setup) {
    database.run("UPDATE session SET tyre = ?, setup_words = ? WHERE id = ?",
                 {trimmed(setup.tyre), words_of(setup), number(id)});
}

} // namespace

std::string_view as_bytes(const Checksum& checksum) {
    return {reinterpret_cast<const char*>(checksum.data()), checksum.size()};
}

double now_unix_s() {
    return std::chrono::duration<double>(std::chrono::system_clock::now().time_since_epoch()).count();
}

void require_session(Database& database, SessionId id) {
    const auto found =
        database.one_whole("SELECT 1 FROM session WHERE id = ? AND removed_unix_s IS NULL", {number(id)});
    if (!found)
        database.fail({ErrorCode::book_not_usable,
                       {database.path(), {}, {}},
                       said("this session is not in the book (any more)"),
                       said("look at the book's list again")});
}

void put_moment(Database& database, SessionId id, const std::string& column) {
    database.run("UPDATE session SET " + column + " = max(?, " + column + ") WHERE id = ?", {now_unix_s(), number(id)});
}

SessionId insert_session(Database& database, const Source& source, const recording::Recording& recording) {
    database.run(
        "INSERT INTO session (checksum, file_name, size_bytes, conditions, tyre, setup, setup_words, duration_s, "
        "file_driver, file_car, file_track, file_start_s) VALUES (?, ?, ?, '', '', '{}', '', ?, ?, ?, ?, ?)",
        {Blob{as_bytes(source.checksum)}, source.file_name, static_cast<std::int64_t>(source.size_bytes),
         recording.duration_s, recording.driver, recording.car, recording.track, recording.start_unix_s});
    return SessionId{database.last_id()};
}

void write_details(Database& database, SessionId id, const SessionDetails& details) {
    database.run(
        "UPDATE session SET driver_id = ?, car_id = ?, track_id = ?, start_unix_s = ?, conditions = ?, setup = ? "
        "WHERE id = ?",
        {id_of_name(database, NameTable::driver, details.driver), id_of_name(database, NameTable::car, details.car),
         id_of_name(database, NameTable::track, details.track), details.start_unix_s, details.conditions,
         setup_text(details.setup), number(id)});
    put_setup_words(database, id, details.setup);
    say_session(database, id);
}

void index_setup(Database& database, SessionId id) {
    std::string text;
    {
        Rows rows(database, "SELECT setup FROM session WHERE id = ?", {number(id)});
        if (rows.next()) text = rows.text(0);
    }
    put_setup_words(database, id, setup_of(text, database.path()));
}

SessionDetails detail_row(Database& database, SessionId id) {
    require_session(database, id);
    Rows rows(database,
              "SELECT driver, car, track, summary.start_unix_s, summary.conditions, setup "
              "FROM summary JOIN session USING (id) WHERE id = ?",
              {number(id)});
    if (!rows.next()) return {};
    SessionDetails details{rows.text(0),       rows.text(1), rows.text(2),
                           rows.maybe_real(3), rows.text(4), setup_of(rows.text(5), database.path())};
    // A renaming counts for the sheet as well.
    if (!details.setup.driver.empty() && !details.driver.empty()) details.setup.driver = details.driver;
    if (!details.setup.car.empty() && !details.car.empty()) details.setup.car = details.car;
    return details;
}

void write_laps(Database& database, SessionId id, std::span<const lap::Lap> laps) {
    for_each_placed(laps, [&](std::int64_t place, const lap::Lap& lap) {
        database.run("INSERT INTO lap (session_id, place, number, kind, clean, start_s, end_s, time_sd_s, why) "
                     "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?)",
                     {number(id), place, lap.number, lap::name(lap.kind), static_cast<int>(lap.clean), lap.start_s,
                      lap.end_s, lap.time_sd_s, lap.why_not_clean});
    });
    put_moment(database, id, "laps_unix_s");
}

void clear_corners(Database& database, SessionId id) {
    database.run("DELETE FROM corner WHERE session_id = ?", {number(id)});
    put_moment(database, id, "corners_unix_s");
}

void write_figures(Database& database, SessionId id, const std::vector<KeptFigure>& figures) {
    database.run("DELETE FROM figure WHERE session_id = ?", {number(id)});
    for (const KeptFigure& figure : figures)
        database.run("INSERT INTO figure (session_id, name, value, low, high, decided_by) VALUES (?, ?, ?, ?, ?, ?)",
                     {number(id), figure.name, figure.value, figure.low, figure.high, figure.decided_by});
    put_moment(database, id, "figures_unix_s");
}

std::vector<lap::Lap> lap_rows(Database& database, SessionId id) {
    std::vector<lap::Lap> laps;
    Rows rows(database,
              "SELECT number, kind, clean, start_s, end_s, time_sd_s, why FROM lap WHERE session_id = ? ORDER BY place",
              {number(id)});
    while (rows.next())
        laps.push_back({static_cast<int>(rows.whole(0)), lap_kind(rows.text(1)), rows.real(3), rows.real(4),
                        rows.maybe_real(5), rows.whole(2) != 0, rows.text(6)});
    return laps;
}

void write_recording(Database& database, SessionId id, const recording::Recording& recording,
                     const PackedSamples& samples) {
    database.run(
        "UPDATE session SET duration_s = ?, file_driver = ?, file_car = ?, file_track = ?, file_start_s = ? "
        "WHERE id = ?",
        {recording.duration_s, recording.driver, recording.car, recording.track, recording.start_unix_s, number(id)});
    for_each_placed(recording.facts, [&](std::int64_t place, const auto& fact) {
        database.run("INSERT INTO fact VALUES (?, ?, ?, ?)", {number(id), place, fact.first, fact.second});
    });
    for_each_placed(recording.warnings, [&](std::int64_t place, const recording::Warning& warning) {
        const auto line = warning.line() ? std::optional(static_cast<std::int64_t>(*warning.line())) : std::nullopt;
        database.run("INSERT INTO warning VALUES (?, ?, ?, ?, ?)",
                     {number(id), place, std::string(recording::name(warning.kind)), recording::words(warning), line});
    });
    for_each_placed(recording.splits_s, [&](std::int64_t place, double time_s) {
        database.run("INSERT INTO split VALUES (?, ?, ?)", {number(id), place, time_s});
    });
    write_samples(database, id, recording, samples);
    put_moment(database, id, "recording_unix_s");
}

void clear_recording(Database& database, SessionId id) {
    for (const char* const table : {"channel", "block", "fact", "warning", "split"})
        database.run("DELETE FROM " + std::string(table) + " WHERE session_id = ?", {number(id)});
}

recording::Recording recording_rows(Database& database, SessionId id) {
    recording::Recording recording;
    require_session(database, id);
    {
        Rows rows(database,
                  "SELECT file_name, file_driver, file_car, file_track, file_start_s, duration_s FROM session "
                  "WHERE id = ?",
                  {number(id)});
        if (!rows.next()) return recording;
        recording.source_file = rows.text(0);
        recording.driver = rows.text(1);
        recording.car = rows.text(2);
        recording.track = rows.text(3);
        recording.start_unix_s = rows.maybe_real(4);
        recording.duration_s = rows.real(5);
    }
    Rows facts(database, "SELECT key, value FROM fact WHERE session_id = ? ORDER BY place", {number(id)});
    while (facts.next())
        recording.facts.emplace_back(facts.text(0), facts.text(1));
    Rows warnings(database, "SELECT code, message, line FROM warning WHERE session_id = ? ORDER BY place",
                  {number(id)});
    while (warnings.next()) {
        recording::Warning warning{.kind = recording::parse_warning_kind(warnings.text(0)), .told = warnings.text(1)};
        if (const auto line = warnings.maybe_whole(2)) warning.seen = {1, {static_cast<std::uint32_t>(*line)}};
        recording.warnings.push_back(std::move(warning));
    }
    Rows splits(database, "SELECT time_s FROM split WHERE session_id = ? ORDER BY place", {number(id)});
    while (splits.next())
        recording.splits_s.push_back(splits.real(0));
    read_samples(database, id, recording);
    return recording;
}

void index_words(Database& database, SessionId id) {
    database.run("DELETE FROM words WHERE rowid = ?", {number(id)});
    database.run("INSERT INTO words (rowid, text) SELECT session_id, text FROM found_by WHERE session_id = ?",
                 {number(id)});
}

SessionSummary summary_of(const Rows& rows) {
    SessionSummary summary;
    summary.id = SessionId{rows.whole(0)};
    const std::string_view checksum = rows.blob(1);
    std::copy_n(checksum.begin(), std::min(checksum.size(), summary.source.checksum.size()),
                summary.source.checksum.begin());
    summary.source.file_name = rows.text(2);
    summary.source.size_bytes = static_cast<std::uint64_t>(rows.whole(3));
    summary.driver = rows.text(4);
    summary.car = rows.text(5);
    summary.track = rows.text(6);
    summary.tyre = rows.text(7);
    summary.conditions = rows.text(8);
    summary.start_unix_s = rows.maybe_real(9);
    summary.duration_s = rows.real(10);
    summary.laps = static_cast<int>(rows.whole(11));
    summary.clean_laps = static_cast<int>(rows.whole(12));
    summary.best_clean_s = rows.maybe_real(13);
    summary.notes = static_cast<int>(rows.whole(14));
    return summary;
}

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

} // namespace lapwright::book
