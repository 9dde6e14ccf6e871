// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces of the findings on causes: how sure one is, the cars' figures behind it, and where it is worth most.
#pragma once

#include "core/causes/telling_order.h"
#include "core/findings/wording.h"

#include <string>
#include <vector>

namespace lapwright::findings {

[[nodiscard]] std::string capital(std::string text);
[[nodiscard]] Certainty certainty_of_cause(const causes::Seconds& s);
// "Power: A 312 ±8, B 384 ±9 kW." for the figure behind a cause; empty where it is not known.
[[nodiscard]] std::string figures_behind(const causes::Explanation& e, causes::Cause cause, base::UnitSystem units);
// Of the whole lap, with the segment where it is worth most; no words yet.
[[nodiscard]] Finding of_seconds(const causes::Explanation& e, About about, const causes::Seconds& total,
                                 const std::vector<double>& by_segment);
[[nodiscard]] Finding of_term(const causes::Explanation& e, causes::Term term);

// Tyre grip with downforce, drag with power; and aero, which is downforce with drag.
[[nodiscard]] Finding of_sum(const causes::Explanation& e, causes::Term sum, base::UnitSystem units,
                             std::optional<causes::Side> my_car);
// The test that would tell most of what `question` is worth; empty where another is asked first.
[[nodiscard]] std::string test_for(const causes::Explanation& e, causes::Term question, base::UnitSystem units,
                                   std::optional<causes::Side> my_car);
// The claim of a sum that can be told.
[[nodiscard]] std::string sum_claim(const causes::Explanation& e, causes::Term sum, Certainty certainty);

} // namespace lapwright::findings
