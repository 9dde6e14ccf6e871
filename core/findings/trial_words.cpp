// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/trial_words.h"

#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {

using base::said;
using base::word;

using comparison::TrialEffect;

namespace {

std::string certainty_words(bool told) {
    return told ? said("is there") : said("cannot be told");
}

FigureChangeLine line(const std::string& figure, const base::Estimate& change, double scale, int max_decimals,
                      const std::string& unit) {
    if (!change.told()) return {figure, "—", said("cannot be told: %1", {change.untold}), false};
    const double half = scale * change.half_width();
    const int decimals = std::max(1, base::decimals_for(half, max_decimals));
    std::string text = base::shown_text(std::abs(scale * change.value), decimals);
    if (!base::shows_zero(text)) text.insert(0, change.value >= 0.0 ? "+" : "−");
    return {figure, text + " " + base::plus_minus_text(half, max_decimals) + unit,
            certainty_words(change.told_apart_from_zero()), change.told_apart_from_zero()};
}

} // namespace

std::string effect_text(const TrialEffect& effect) {
    const double half = 0.5 * (effect.high_s - effect.low_s);
    const int decimals = std::max(2, base::decimals_for(half, 3));
    return said(effect.gain_s >= 0.0 ? word("gains %1") : word("loses %1"),
                {base::shown_text(std::abs(effect.gain_s), decimals) + " " + base::plus_minus_text(half, 3)});
}

std::string certainty_text(const TrialEffect& effect) {
    return certainty_words(effect.low_s > 0.0 || effect.high_s < 0.0);
}

std::string trial_laps_text(const comparison::Trial& trial) {
    return said("%1 clean laps without the change, %2 with it; a drift of %3 s from lap to lap is taken out",
                {base::integer_text(trial.baseline_laps), base::integer_text(trial.changed_laps),
                 base::shown_text(trial.lap.drift_s_per_lap, 3)});
}

std::vector<FigureChangeLine> figure_change_lines(const car::FigureChanges& changes) {
    const std::string area = " " + (changes.on_a_tonne ? said("m² on a tonne") : "m²");
    return {line(said("downforce area"), changes.downforce_area_m2, 1.0, 2, area),
            line(said("drag area"), changes.drag_area_m2, 1.0, 3, area),
            line(said("tyre grip"), changes.grip, 100.0, 1, " %"),
            line(said("power at the wheels"), changes.power, 100.0, 1, " %")};
}

std::string figure_changes_text(const car::FigureChanges& changes) {
    std::string text;
    for (const FigureChangeLine& line : figure_change_lines(changes))
        if (line.told) text += (text.empty() ? "" : ", ") + line.figure + " " + line.change;
    return text;
}

std::string ideal_lap_text(const comparison::IdealLap& ideal, const std::string& letter) {
    if (!ideal.time_s || !ideal.noise_only_gain_s || !ideal.mean_lap_s) return {};
    return said("best segments of %1 put together: %2; laps that differ by chance alone would give %3",
                {letter, base::lap_time_text(*ideal.time_s),
                 base::lap_time_text(*ideal.mean_lap_s - *ideal.noise_only_gain_s)});
}

} // namespace lapwright::findings
