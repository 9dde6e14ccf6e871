// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/trial_text.h"

#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "core/findings/trial_words.h"

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
    return {name, findings::effect_text(effect), findings::certainty_text(effect)};
}

std::string figures_table(const analysis::TrialReport& report) {
    if (!report.figures) return "what the change did to the car cannot be told: " + report.no_figures + "\n";
    std::vector<std::vector<std::string>> rows{{"figure of the car", "with the change", ""}};
    for (const findings::FigureChangeLine& line : findings::figure_change_lines(*report.figures))
        rows.push_back({line.figure, line.change, line.certainty});
    return aligned(rows, 1);
}

ordered_json figures_json(const analysis::TrialReport& report) {
    if (!report.figures) return {{"cannot_tell", report.no_figures}};
    return figure_changes_json(*report.figures);
}

} // namespace

// Relative changes as shares; areas on a tonne where no mass is known.
ordered_json figure_changes_json(const car::FigureChanges& changes) {
    return {{"on_a_tonne", changes.on_a_tonne},
            {"downforce_area_m2", estimate_json(changes.downforce_area_m2)},
            {"drag_area_m2", estimate_json(changes.drag_area_m2)},
            {"grip_share", estimate_json(changes.grip)},
            {"power_share", estimate_json(changes.power)},
            {"corners", changes.corners},
            {"straights", changes.straights}};
}

std::string trial_table(const analysis::TrialReport& report) {
    std::vector<std::vector<std::string>> rows{{"segment", "the change, s a lap", ""}};
    for (std::size_t i = 0; i < report.trial.segments.size(); ++i)
        rows.push_back(row(report.track.segments[i].name, report.trial.segments[i]));
    rows.push_back(row("whole lap", report.trial.lap));
    std::string text = report.sentence + "\n" + findings::trial_laps_text(report.trial) + "\n";
    for (const std::string& note : report.notes)
        text += note + "\n";
    return text + "\n" + aligned(rows, 1) + "\n" + figures_table(report);
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
                          {"notes", report.notes},
                          {"baseline_laps", report.trial.baseline_laps},
                          {"changed_laps", report.trial.changed_laps},
                          {"lap", effect_json(report.trial.lap)},
                          {"figures", figures_json(report)},
                          {"segments", segments}});
}

} // namespace lapwright::commands
