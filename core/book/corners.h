// SPDX-License-Identifier: GPL-3.0-or-later
// What a session's flying laps did in the corners of its track, kept for other tools (the view corner_figures).  Places
// are distances along the track's line; what could not be measured is absent.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

struct KeptCorner {
    int lap = 0;   // its place among the session's laps
    int place = 0; // along the lap
    std::string segment;
    double start_m = 0.0;
    double end_m = 0.0;
    double time_s = 0.0;
    double entry_speed_mps = 0.0;
    std::optional<double> entry_speed_sd_mps;
    std::optional<double> min_speed_mps;
    std::optional<double> min_speed_sd_mps;
    std::optional<double> min_speed_at_m;
    double exit_speed_mps = 0.0;
    std::optional<double> exit_speed_sd_mps;
    std::optional<double> lift_at_m;
    std::optional<double> braking_point_m;
    std::optional<double> braking_point_sd_m;
    std::optional<double> braking_mps2; // mean deceleration, positive
    std::optional<double> throttle_opens_m;
    std::optional<double> full_throttle_m;
    std::optional<double> full_throttle_sd_m;
    std::optional<double> peak_lateral_mps2;
    std::optional<double> coasting_s;
    std::optional<double> driven_length_m;
};

// Take the place of those that are there.  Other laps of the session (change_laps) take them away.
[[nodiscard]] base::Result<void> put_corners(Book& book, SessionId id, const std::vector<KeptCorner>& corners);

// Listed sessions with flying laps on a track whose corners are known, of which no corner figures are shown: never
// measured, or before the track's corners were moved.
[[nodiscard]] base::Result<std::vector<SessionId>> sessions_without_corners(Book& book);

} // namespace lapwright::book
