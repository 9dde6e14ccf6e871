// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/wing_text.h"

#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "core/base/number_text.h"
#include "core/findings/cause_display.h"
#include "core/findings/wing_words.h"

#include <set>

namespace lapwright::commands {
namespace {

using nlohmann::ordered_json;

ordered_json side_json(const causes::AeroBalance& balance, const std::string& sentence) {
    ordered_json steps = ordered_json::array();
    for (const causes::AeroStep& step : balance.steps)
        steps.push_back({{"downforce_area_m2", step.downforce_m2}, {"lap_s", estimate_json(step.lap)}});
    const bool told = balance.untold.empty();
    return {{"sentence", sentence},
            {"cannot_tell", text_or_null(balance.untold)},
            {"steps", steps},
            {"best_downforce_area_m2", told ? estimate_json(balance.best_m2) : ordered_json()},
            {"gain_s", told ? estimate_json(balance.gain) : ordered_json()},
            {"flat_from_m2", told ? ordered_json(balance.flat_from_m2) : ordered_json()},
            {"flat_to_m2", told ? ordered_json(balance.flat_to_m2) : ordered_json()},
            {"at_the_end", told ? ordered_json(balance.at_the_end) : ordered_json()}};
}

std::string place_text(const WingReport& report) {
    if (!report.wing.other_track) return {};
    return "On the track and the line of " + report.wing.other_track->of + ", " +
           base::figure_with_unit(report.wing.other_track->length_m, base::Quantity::length, base::UnitSystem::metric,
                                  0) +
           " a lap:\n";
}

ordered_json other_track_json(const WingReport& report) {
    if (!report.wing.other_track) return nullptr;
    return {{"session", report.wing.other_track->of}, {"length_m", report.wing.other_track->length_m}};
}

std::vector<std::string> row_at(const WingReport& report, double downforce_m2) {
    std::vector<std::string> row{base::fixed_text(downforce_m2, 2)};
    if (downforce_m2 == 0.0) return {row.front(), "as now", "as now"};
    for (const causes::AeroBalance* side : {&report.wing.a, &report.wing.b}) {
        std::string cell = "—";
        for (const causes::AeroStep& step : side->steps)
            if (step.downforce_m2 == downforce_m2) cell = findings::lap_change_text(step.lap);
        row.push_back(cell);
    }
    return row;
}

} // namespace

std::string wing_table(const analysis::Pairing& pairing, const WingReport& report) {
    std::set<double> places;
    for (const causes::AeroBalance* side : {&report.wing.a, &report.wing.b})
        for (const causes::AeroStep& step : side->steps)
            places.insert(step.downforce_m2);
    std::vector<std::vector<std::string>> rows{
        {report.on_a_tonne ? "downforce more, m² on a tonne" : "downforce more, m²", "A", "B"}};
    for (const double place : places)
        rows.push_back(row_at(report, place));
    return both_sides(pairing) + "\n" + place_text(report) +
           findings::wing_sentence(report.wing.a, "A", report.on_a_tonne) + "\n" +
           findings::wing_sentence(report.wing.b, "B", report.on_a_tonne) + "\n\n" +
           (places.empty() ? std::string() : aligned(rows, 1) + "\n") + "It costs " +
           findings::drag_cost_text(report.cost) + "; the driver uses the tyres as now.\n";
}

std::string wing_json(const analysis::Pairing& pairing, const WingReport& report) {
    const auto lap = [](const analysis::Side& side) {
        return ordered_json{{"session", side.session->title()}, {"lap", side.lap.number}};
    };
    return document_text(
        {{"lap_a", lap(pairing.a)},
         {"lap_b", lap(pairing.b)},
         {"on_a_tonne", report.on_a_tonne},
         {"other_track", other_track_json(report)},
         {"drag_per_downforce", {{"value", report.cost.per_downforce}, {"sd", report.cost.sd}}},
         {"a", side_json(report.wing.a, findings::wing_sentence(report.wing.a, "A", report.on_a_tonne))},
         {"b", side_json(report.wing.b, findings::wing_sentence(report.wing.b, "B", report.on_a_tonne))}});
}

} // namespace lapwright::commands
