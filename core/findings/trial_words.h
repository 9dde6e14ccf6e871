// SPDX-License-Identifier: GPL-3.0-or-later
// A setup trial and an ideal lap in words, for the window and the command line alike.
#pragma once

#include "core/car/figure_changes.h"
#include "core/comparison/repeatability.h"
#include "core/comparison/trial.h"

#include <string>
#include <vector>

namespace lapwright::findings {

// "gains 0.05 ±0.02", "loses 0.03 ±0.04": seconds a lap.
[[nodiscard]] std::string effect_text(const comparison::TrialEffect& effect);
// "is there" where the 95 % interval leaves zero out, else "cannot be told".
[[nodiscard]] std::string certainty_text(const comparison::TrialEffect& effect);
// "5 clean laps without the change, 4 with it; a drift of 0.012 s from lap to lap is taken out"
[[nodiscard]] std::string trial_laps_text(const comparison::Trial& trial);

// What the change did to one figure of the car: "downforce area", "+0.42 ±0.18 m²", "is there".
struct FigureChangeLine {
    std::string figure;
    std::string change;
    std::string certainty;
    bool told; // it is there
};
[[nodiscard]] std::vector<FigureChangeLine> figure_change_lines(const car::FigureChanges& changes);
// "downforce area +0.42 ±0.18 m², drag area +0.05 ±0.02 m²": those that are there; empty where none is.
[[nodiscard]] std::string figure_changes_text(const car::FigureChanges& changes);

// "best segments of A put together: 1:29.512; laps that differ by chance alone would give 1:29.601"; empty where there
// are too few laps to tell.
[[nodiscard]] std::string ideal_lap_text(const comparison::IdealLap& ideal, const std::string& letter);

} // namespace lapwright::findings
