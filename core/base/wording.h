// SPDX-License-Identifier: GPL-3.0-or-later
// Short phrases around figures, in the window, on the command line and on the sheet: who is ahead, who won how much,
// when it was.  Signs as everywhere: a gap or gain above zero favours A.
#pragma once

#include "core/base/display.h"

#include <optional>
#include <span>
#include <string>

namespace lapwright::base {

// Half the width of the 95 % interval of a normal error with this standard uncertainty.
[[nodiscard]] double half_width_95(double sd);

// "A 0.18", "B 0.06", "0.00" where the rounded figure favours nobody; digits by decimals_for, two without an sd.
[[nodiscard]] std::string gain_text(double gain_s, std::optional<double> sd);
// "±0.03", empty without an sd.
[[nodiscard]] std::string gain_margin_text(std::optional<double> sd);
// The whole of it: "A 0.18 ±0.03".
[[nodiscard]] std::string gain_with_margin(double gain_s, std::optional<double> sd);

// Whether the gain is larger than its 95 % half-width; true without an sd, where nothing is claimed about it.
[[nodiscard]] bool stands_out(double gain_s, std::optional<double> sd);

// "A ahead 0.18 s", "B ahead 0.06 s", "level".
[[nodiscard]] std::string gap_text(double gap_s, std::optional<double> sd);

// "1:29.921", with " ±0.006" behind it where the sd is known.
[[nodiscard]] std::string lap_time_with_margin(double time_s, std::optional<double> sd);

// How far behind the fastest: "+0.17"; empty for the fastest itself.
[[nodiscard]] std::string behind_text(double time_s, double fastest_s);

// A figure rounded to what is known: decimals_for its sd, at
// most `max_decimals`; with margin where asked: "148.3 ±0.2".
[[nodiscard]] std::string known_figure(double value_si, std::optional<double> sd, Quantity quantity, UnitSystem system,
                                       int max_decimals, bool with_margin);

// What a difference inside its error may be called: "level" where it is certainly small, else "cannot be told".
// half_width: of its 95 % interval; little: what nobody would act on.
[[nodiscard]] std::string untold_text(double difference, double half_width, double little);
inline constexpr double little_m = 2.0; // of a braking or throttle point

// Which of two places comes first on the lap: "A 32 m later", "B 4 m later", "level" within half a metre; where the
// difference lies inside its error, as untold_text.
[[nodiscard]] std::string later_text(double place_a_m, std::optional<double> sd_a_m, double place_b_m,
                                     std::optional<double> sd_b_m, UnitSystem system);

// By how much A comes later, below zero where B does; nothing where later_text names no distance.
[[nodiscard]] std::optional<double> told_later_m(double place_a_m, std::optional<double> sd_a_m, double place_b_m,
                                                 std::optional<double> sd_b_m);

// "16 May 2026, 10:20 UTC"; a dash where that is no moment of a calendar.
[[nodiscard]] std::string date_text(double unix_s);
// "18 min", "52 s".
[[nodiscard]] std::string duration_text(double duration_s);
// "25 Hz", "0.5 Hz"; a rate below one in ten seconds is written as none: "—".
[[nodiscard]] std::string rate_text(double rate_hz);
// "93 %" of a share 0..1; never "0 %" or "100 %" for a share that is neither.
[[nodiscard]] std::string share_text(double share);
// "Sweep, Hook and Ridge".
[[nodiscard]] std::string listed(std::span<const std::string> names);

} // namespace lapwright::base
