// SPDX-License-Identifier: GPL-3.0-or-later
// Over the season: the clean laps of a track's sessions, and the fitted figures of a car, in the order of time.
#pragma once

#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

struct SeasonSession {
    SessionSummary session;
    std::optional<double> median_clean_s; // absent where no lap is clean; the best is in the summary
    car::SetupSheet setup;
};

// Sessions on the track, the oldest first, those without a date last; a car's name leaves the others out.
[[nodiscard]] base::Result<std::vector<SeasonSession>> season_of_track(Book& book, const std::string& track,
                                                                       const std::string& car = {});

// What was fitted to the session's laps takes the place of what is there.
[[nodiscard]] std::optional<base::Error> put_figures(Book& book, SessionId id, const std::vector<KeptFigure>& figures);

struct SeasonFigures {
    SessionSummary session;
    std::vector<KeptFigure> figures; // by name
};

// Sessions of the car that have figures, the oldest first.
[[nodiscard]] base::Result<std::vector<SeasonFigures>> season_of_car(Book& book, const std::string& car);

} // namespace lapwright::book
