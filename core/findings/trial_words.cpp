// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/trial_words.h"

#include "core/base/display.h"
#include "core/base/number_text.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {

using comparison::TrialEffect;

namespace {

const std::string is_there = "is there";
const std::string cannot_be_told = "cannot be told";

FigureChangeLine line(const std::string& figure, const base::Estimate& change, double scale, int max_decimals,
                      const std::string& unit) {
    if (!change.told()) return {figure, "—", cannot_be_told + ": " + change.untold};
    const double half = scale * change.half_width();
    const int decimals = std::max(1, base::decimals_for(half, max_decimals));
    std::string text = base::fixed_text(std::abs(scale * change.value), decimals);
    if (text.find_first_not_of("0.") != std::string::npos) text.insert(0, change.value >= 0.0 ? "+" : "−");
    return {figure, text + " " + base::plus_minus_text(half, max_decimals) + unit,
            change.told_apart_from_zero() ? is_there : cannot_be_told};
}

} // namespace

std::string effect_text(const TrialEffect& effect) {
    const double half = 0.5 * (effect.high_s - effect.low_s);
    const int decimals = std::max(2, base::decimals_for(half, 3));
    return (effect.gain_s >= 0.0 ? "gains " : "loses ") + base::fixed_text(std::abs(effect.gain_s), decimals) + " " +
           base::plus_minus_text(half, 3);
}

std::string certainty_text(const TrialEffect& effect) {
    return effect.low_s > 0.0 || effect.high_s < 0.0 ? is_there : cannot_be_told;
}

std::string trial_laps_text(const comparison::Trial& trial) {
    return base::integer_text(trial.baseline_laps) + " clean laps without the change, " +
           base::integer_text(trial.changed_laps) + " with it; a drift of " +
           base::fixed_text(trial.lap.drift_s_per_lap, 3) + " s from lap to lap is taken out";
}

std::vector<FigureChangeLine> figure_change_lines(const car::FigureChanges& changes) {
    const std::string area = changes.on_a_tonne ? " m² on a tonne" : " m²";
    return {line("downforce area", changes.downforce_area_m2, 1.0, 2, area),
            line("drag area", changes.drag_area_m2, 1.0, 3, area), line("tyre grip", changes.grip, 100.0, 1, " %"),
            line("power at the wheels", changes.power, 100.0, 1, " %")};
}

std::string figure_changes_text(const car::FigureChanges& changes) {
    std::string text;
    for (const FigureChangeLine& line : figure_change_lines(changes))
        if (line.certainty == is_there) text += (text.empty() ? "" : ", ") + line.figure + " " + line.change;
    return text;
}

std::string ideal_lap_text(const comparison::IdealLap& ideal, const std::string& letter) {
    if (!ideal.time_s || !ideal.noise_only_gain_s || !ideal.mean_lap_s) return {};
    return "best segments of " + letter + " put together: " + base::lap_time_text(*ideal.time_s) +
           "; laps that differ by chance alone would give " +
           base::lap_time_text(*ideal.mean_lap_s - *ideal.noise_only_gain_s);
}

} // namespace lapwright::findings
