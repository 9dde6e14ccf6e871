// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of a car through a season, ready to be drawn and written.
#pragma once

#include "core/base/display.h"
#include "core/base/units.h"
#include "core/book/season.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::book {

// low..high is the 95 % interval.
struct FigurePoint {
    std::size_t session = 0; // its place in the season
    double value = 0.0;
    double low = 0.0;
    double high = 0.0;
    bool from_data = true; // false: the prior or the setup decided it
};

// One figure of all sessions that have it, in SI, areas on a tonne where they are per kilogram.
struct FigureCourse {
    std::string title; // "downforce area, m² on a tonne"
    base::Unit unit = base::Unit::none;
    int decimals = 2;
    std::vector<FigurePoint> points;
};

// Tyre grip, downforce, drag, power.  Per kilogram unless every session's mass is known, so that they stay comparable;
// a figure that no session has is left out.
[[nodiscard]] std::vector<FigureCourse> figure_courses(const std::vector<SeasonSession>& season,
                                                       base::UnitSystem units);

// "0.71 ±0.05", in the course's unit.
[[nodiscard]] std::string figure_text(const FigureCourse& course, const FigurePoint& point);

} // namespace lapwright::book
