// SPDX-License-Identifier: GPL-3.0-or-later
// Where on the track a session's laps begin.  Sessions of one track may have been timed at several lines (the file's
// own lap column, a beacon, a track file), and what lies between two lines belongs to another lap: their times are not
// those of one lap.
#pragma once

#include "core/book/season.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lapwright::book {

// Within a look of the caller: the middle of the places at which the flying laps begin, height 0; nothing without
// positions or flying laps.
[[nodiscard]] std::optional<motion::Geodetic> place_of_line(Database& database, SessionId id,
                                                            std::span<const lap::Lap> laps);

// For each session whether it was timed at another line than most of them, of two as frequent than the later one; lines
// count as one up to same_line_m apart, as recorded positions lag and stray by some metres.
inline constexpr double same_line_m = 25.0;
[[nodiscard]] std::vector<bool> timed_elsewhere(const std::vector<SeasonSession>& season);

// "One session was timed at another line of the track, … : run.csv of 16 May 2026"; empty where none was.
[[nodiscard]] std::string timed_elsewhere_text(const std::vector<SeasonSession>& season);

} // namespace lapwright::book
