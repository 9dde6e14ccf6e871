// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of two compared laps as text, rounded to what is known of each.  Window, tables and sheet take theirs
// from here, so that one figure has the same characters wherever it stands.  A figure without its uncertainty is
// written without decimals; one that is not there is a dash.
#pragma once

#include "core/base/display.h"
#include "core/comparison/comparison.h"
#include "core/comparison/repeatability.h"
#include "core/lap/lap.h"

#include <optional>
#include <string>

namespace lapwright::presentation {

// Whether the 95 % half-width stands behind it: "148.3" or "148.3 ±0.2".
enum class Margin { without, with };

[[nodiscard]] std::string speed_text(const comparison::MaybeFigure& speed_mps, base::UnitSystem units, Margin margin);
// Of a place on the lap, or a length.
[[nodiscard]] std::string place_text(const comparison::MaybeFigure& place_m, base::UnitSystem units, Margin margin);
// "142.8 · 139.1": of A and of B.
[[nodiscard]] std::string both_speeds(const comparison::MaybeFigure& a, const comparison::MaybeFigure& b,
                                      base::UnitSystem units);

// "1:29.921 ±0.006", of a lap that is compared: along the line of both.
[[nodiscard]] std::string lap_time_text(const lap::LapTrace& trace, const lap::Lap& lap);

// A difference with its sign: "+0.18 ±0.03", "−0.06 ±0.02", "0.00".
[[nodiscard]] std::string signed_with_margin(double difference, std::optional<double> sd, int most_decimals);

// Which line is further inside of a corner that turns by that angle: "A 0.8 ±0.5 m inside", "A 0.6 ±0.4 m outside";
// where the difference lies inside its error "line level" or "line cannot be told".
[[nodiscard]] std::string line_text(const comparison::LineAt& line, double turned_rad, base::UnitSystem units);
// "A 0.8 ±0.5 m left", of any place; "line cannot be told (±1.4 m)".
[[nodiscard]] std::string sideways_text(double difference_m, std::optional<double> sd_m, base::UnitSystem units);

// "A 97 %": who is likelier to win the segment on any lap, over all clean laps of both.
[[nodiscard]] std::string chance_text(const comparison::Repeatability& repeatability);

} // namespace lapwright::presentation
