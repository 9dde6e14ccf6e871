// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/trial_text.h"

#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "core/base/display.h"
#include "core/base/number_text.h"

#include <algorithm>
#include <cmath>

namespace lapwright::commands {
namespace {

using comparison::TrialEffect;
using nlohmann::ordered_json;

ordered_json effect_json(const TrialEffect& effect) {
    return {{"gain_s", number_json(effect.gain_s)},
            {"gain_low_s", number_json(effect.low_s)},
            {"gain_high_s", number_json(effect.high_s)},
            {"drift_s_per_lap", number_json(effect.drift_s_per_lap)}};
}

std::vector<std::string> row(const std::string& name, const TrialEffect& effect) {
    const double half = 0.5 * (effect.high_s - effect.low_s);
    const int decimals = std::max(2, base::decimals_for(half, 3));
    return {name,
            (effect.gain_s >= 0.0 ? "gains " : "loses ") + base::fixed_text(std::abs(effect.gain_s), decimals) + " " +
                base::plus_minus_text(half, 3),
            effect.low_s > 0.0 || effect.high_s < 0.0 ? "" : "cannot be told"};
}

} // namespace

std::string trial_table(const analysis::TrialReport& report) {
    std::vector<std::vector<std::string>> rows{{"segment", "the change, s a lap", ""}};
    for (std::size_t i = 0; i < report.trial.segments.size(); ++i)
        rows.push_back(row(report.track.segments[i].name, report.trial.segments[i]));
    rows.push_back(row("whole lap", report.trial.lap));
    return report.sentence + "\n" + base::integer_text(report.trial.baseline_laps) +
           " clean laps without the change, " + base::integer_text(report.trial.changed_laps) +
           " with it; a drift of " + base::fixed_text(report.trial.lap.drift_s_per_lap, 3) +
           " s from lap to lap is taken out\n\n" + aligned(rows, 1);
}

std::string trial_json(const analysis::TrialReport& report) {
    ordered_json segments = ordered_json::array();
    for (std::size_t i = 0; i < report.trial.segments.size(); ++i) {
        ordered_json one{{"name", report.track.segments[i].name},
                         {"start_m", report.track.segments[i].start_m},
                         {"end_m", report.track.segments[i].end_m}};
        one.update(effect_json(report.trial.segments[i]));
        segments.push_back(std::move(one));
    }
    return document_text({{"sentence", report.sentence},
                          {"baseline_laps", report.trial.baseline_laps},
                          {"changed_laps", report.trial.changed_laps},
                          {"lap", effect_json(report.trial.lap)},
                          {"segments", segments}});
}

} // namespace lapwright::commands
