// SPDX-License-Identifier: GPL-3.0-or-later
// Over the season: the clean laps of a track's sessions, and the fitted figures of a car, in the order of time.
#pragma once

#include "core/base/display.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/entries.h"
#include "core/car/car_figures.h"
#include "core/motion/local_frame.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::book {

struct SeasonSession {
    SessionSummary session;
    std::optional<double> median_clean_s; // absent where no lap is clean; the best is in the summary
    car::SetupSheet setup;
    std::vector<KeptFigure> figures;                  // by name; empty where none were fitted
    std::optional<motion::Geodetic> timing_line = {}; // of a track's season, see timing_line.h
};

// Both: the oldest first, those without a date last.
// Sessions on the track; a car's name leaves the others out.
[[nodiscard]] base::Result<std::vector<SeasonSession>> season_of_track(Book& book, const std::string& track,
                                                                       const std::string& car = {});
// Sessions of the car that have figures.
[[nodiscard]] base::Result<std::vector<SeasonSession>> season_of_car(Book& book, const std::string& car);

// What was fitted to the session's laps takes the place of what is there.
[[nodiscard]] base::Result<void> put_figures(Book& book, SessionId id, const std::vector<KeptFigure>& figures);
// Grip, downforce, drag and power; areas and watts per kilogram always, as they are where the mass is known.
[[nodiscard]] std::vector<KeptFigure> kept_figures(const car::CarFigures& figures);

// What changed in the setup, a line for each session, against the last one before it of the same car whose setup is
// known: "wing angle 3 deg → 7 deg", "no change"; empty where there is none before it, or no date, or no setup.
[[nodiscard]] std::vector<std::string> setup_changes(const std::vector<SeasonSession>& season, base::UnitSystem units);

// "dry, light wind, 19 °C": the words and what the setup sheet says of the air.
[[nodiscard]] std::string conditions_text(const SeasonSession& session, base::UnitSystem units);

} // namespace lapwright::book
