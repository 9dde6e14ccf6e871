// SPDX-License-Identifier: GPL-3.0-or-later
// The figures of two compared laps as text, rounded to what is known of each.  Window, tables and sheet take theirs
// from here, so that one figure has the same characters wherever it stands.  A figure without its uncertainty is
// written without decimals; one that is not there is a dash.
#pragma once

#include "core/base/display.h"
#include "core/comparison/comparison.h"
#include "core/comparison/repeatability.h"
#include "core/lap/lap.h"

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

// "A 97 %": who is likelier to win the segment on any lap, over all clean laps of both.
[[nodiscard]] std::string chance_text(const comparison::Repeatability& repeatability);

} // namespace lapwright::presentation
