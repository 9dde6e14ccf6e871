// SPDX-License-Identifier: GPL-3.0-or-later
// A setup trial and an ideal lap in words, for the window and the command line alike.
#pragma once

#include "core/comparison/repeatability.h"
#include "core/comparison/trial.h"

#include <string>

namespace lapwright::findings {

// "gains 0.05 ±0.02", "loses 0.03 ±0.04": seconds a lap.
[[nodiscard]] std::string effect_text(const comparison::TrialEffect& effect);
// "is there" where the 95 % interval leaves zero out, else "cannot be told".
[[nodiscard]] std::string certainty_text(const comparison::TrialEffect& effect);
// "5 clean laps without the change, 4 with it; a drift of 0.012 s from lap to lap is taken out"
[[nodiscard]] std::string trial_laps_text(const comparison::Trial& trial);

// "best segments of A put together: 1:29.512; laps that differ by chance alone would give 1:29.601"; empty where there
// are too few laps to tell.
[[nodiscard]] std::string ideal_lap_text(const comparison::IdealLap& ideal, const std::string& letter);

} // namespace lapwright::findings
