// SPDX-License-Identifier: GPL-3.0-or-later
// The one place where figures become words: units by taste, rounding by what is known.  Window, tables and sheet call
// these; none of them formats a number of its own.
#pragma once

#include "core/base/units.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::base {

// metric: km/h, m, kg, kW, N;  imperial: mph, m, kg, bhp as hp, lbf (British club practice);  us: mph, ft, lb, hp, lbf.
enum class UnitSystem { metric, imperial, us };

[[nodiscard]] std::optional<UnitSystem> parse_unit_system(std::string_view text);
[[nodiscard]] std::string_view name(UnitSystem system);

// The unit in which a quantity is shown.
[[nodiscard]] Unit shown_unit(Quantity quantity, UnitSystem system);

// How many decimals a value deserves whose standard uncertainty is sd: sd itself is shown with one significant digit,
// 1.x with two (JCGM 100:2008, 7.2.6: "at most two").  Between 0 and max_decimals; no sd (or 0): max_decimals.
[[nodiscard]] int decimals_for(std::optional<double> sd, int max_decimals);

// 89.9214 -> "1:29.921"; 9.5 -> "9.500"; negative times keep their sign.
[[nodiscard]] std::string lap_time_text(double time_s, int decimals = 3);

// 95 % half-width as shown beside a value: "±0.03", rounded with decimals_for.
[[nodiscard]] std::string plus_minus_text(double half_width, int max_decimals);

// A length, speed, … in the shown unit with that many decimals; without the unit's symbol.
[[nodiscard]] std::string figure_text(double value_si, Quantity quantity, UnitSystem system, int decimals);
// The same with a no-break space and the symbol: "148 km/h".
[[nodiscard]] std::string figure_with_unit(double value_si, Quantity quantity, UnitSystem system, int decimals);

} // namespace lapwright::base
