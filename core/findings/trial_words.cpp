// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/trial_words.h"

#include "core/base/display.h"
#include "core/base/number_text.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {

using comparison::TrialEffect;

std::string effect_text(const TrialEffect& effect) {
    const double half = 0.5 * (effect.high_s - effect.low_s);
    const int decimals = std::max(2, base::decimals_for(half, 3));
    return (effect.gain_s >= 0.0 ? "gains " : "loses ") + base::fixed_text(std::abs(effect.gain_s), decimals) + " " +
           base::plus_minus_text(half, 3);
}

std::string certainty_text(const TrialEffect& effect) {
    return effect.low_s > 0.0 || effect.high_s < 0.0 ? "is there" : "cannot be told";
}

std::string trial_laps_text(const comparison::Trial& trial) {
    return base::integer_text(trial.baseline_laps) + " clean laps without the change, " +
           base::integer_text(trial.changed_laps) + " with it; a drift of " +
           base::fixed_text(trial.lap.drift_s_per_lap, 3) + " s from lap to lap is taken out";
}

std::string ideal_lap_text(const comparison::IdealLap& ideal, const std::string& letter) {
    if (!ideal.time_s || !ideal.noise_only_gain_s || !ideal.mean_lap_s) return {};
    return "best segments of " + letter + " put together: " + base::lap_time_text(*ideal.time_s) +
           "; laps that differ by chance alone would give " +
           base::lap_time_text(*ideal.mean_lap_s - *ideal.noise_only_gain_s);
}

} // namespace lapwright::findings
