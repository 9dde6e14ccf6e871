// SPDX-License-Identifier: GPL-3.0-or-later
// Kept predictions and their score in words, for window and command line.
#pragma once

#include "core/analysis/held_predictions.h"
#include "core/base/display.h"

#include <string>

namespace lapwright::analysis {

// "downforce +10 %, mass −20 kg"; "downforce +0.50 m², drag +0.08 m²".
[[nodiscard]] std::string asked_text(const book::AskedChange& asked, base::UnitSystem units);
// What the setup sheet will say: "wing angle 7 deg, mass 1305 kg"; empty where that is not known.
[[nodiscard]] std::string expected_text(const car::SetupSheet& expected, base::UnitSystem units);
// "held: it was −0.22 ±0.12 s", "not yet: say which session was driven with it".
[[nodiscard]] std::string outcome_text(const HeldPrediction& held);
// "7 of 8 predictions held: between 53 and 98 % of their kind do (95 % interval); 95 % should."
[[nodiscard]] std::string score_sentence(const comparison::Score& score);

} // namespace lapwright::analysis
