// SPDX-License-Identifier: GPL-3.0-or-later
// A session's rows, within an edit or a look of the caller.
#pragma once

#include "core/book/database.h"
#include "core/book/entries.h"
#include "core/book/samples.h"
#include "core/book/sessions.h"
#include "core/lap/lap.h"
#include "core/recording/recording.h"

#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::book {

[[nodiscard]] std::string_view as_bytes(const Checksum& checksum);
[[nodiscard]] double now_unix_s();

// Fails the database where there is no such session, or it was removed.
void require_session(Database& database, SessionId id);

// Without details, laps and numbers.
[[nodiscard]] SessionId insert_session(Database& database, const Source& source, const recording::Recording& recording);

void write_details(Database& database, SessionId id, const SessionDetails& details);
[[nodiscard]] SessionDetails detail_row(Database& database, SessionId id);

void write_laps(Database& database, SessionId id, std::span<const lap::Lap> laps);
[[nodiscard]] std::vector<lap::Lap> lap_rows(Database& database, SessionId id);

// The session's part, a column of its row, was made now.
void put_moment(Database& database, SessionId id, const std::string& column);

// Corner figures belong to the laps that were measured.
void clear_corners(Database& database, SessionId id);

void write_figures(Database& database, SessionId id, const std::vector<KeptFigure>& figures);

void write_recording(Database& database, SessionId id, const recording::Recording& recording,
                     const PackedSamples& samples);
void clear_recording(Database& database, SessionId id);
[[nodiscard]] recording::Recording recording_rows(Database& database, SessionId id);

// What lists know of the setup's text, after it changed.
void index_setup(Database& database, SessionId id);

// What the session can be found by, after an edit that touched it.
void index_words(Database& database, SessionId id);

// Rows of the view `summary` as values.
// The columns that summary_of() takes from the front of a row, in order.
inline constexpr const char* const summary_columns =
    "summary.id, summary.checksum, summary.file_name, summary.size_bytes, driver, car, track, summary.tyre, "
    "summary.conditions, summary.start_unix_s, summary.duration_s, laps, clean_laps, best_clean_s, notes";

[[nodiscard]] SessionSummary summary_of(const Rows& rows);

// Within a look or an edit of the caller; `among` is a condition on the table session, in SQL.
[[nodiscard]] std::vector<RemovedSession> removed_rows(Database& database, const std::string& among = "true");

} // namespace lapwright::book
