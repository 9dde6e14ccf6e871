// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/causes_text.h"

#include "app/commands/driving_text.h"
#include "app/commands/json_parts.h"
#include "app/commands/json_text.h"
#include "app/commands/table_text.h"
#include "core/base/number_text.h"
#include "core/causes/next_test.h"
#include "core/findings/cause_display.h"
#include "core/findings/next_test_words.h"
#include "core/findings/wording.h"
#include "core/recording/warning_words.h"

#include <algorithm>

namespace lapwright::commands {
namespace {

using base::Quantity;
using base::UnitSystem;
using causes::Cause;
using causes::Explanation;
using causes::Seconds;
using nlohmann::ordered_json;

ordered_json figure_json(const car::CarFigure& f) {
    if (!f.told()) return nullptr;
    return {{"value", number_json(f.value)},
            {"low", number_json(f.low)},
            {"high", number_json(f.high)},
            {"decided_by", car::name(f.decided_by)}};
}

ordered_json figure_json(const std::optional<car::CarFigure>& f) {
    return f ? figure_json(*f) : ordered_json(nullptr);
}

ordered_json force_json(double speed_mps, const std::optional<car::CarFigure>& f) {
    if (!f || !f->told()) return nullptr;
    ordered_json force{{"speed_mps", speed_mps}};
    force.update(figure_json(*f));
    return force;
}

// Rows and columns in the order of the names.
ordered_json correlations_json(const car::CarFigures& f) {
    ordered_json rows = ordered_json::array();
    for (const auto& row : f.correlations) {
        ordered_json cells = ordered_json::array();
        for (const double r : row)
            cells.push_back(number_json(r));
        rows.push_back(std::move(cells));
    }
    return {{"of", {"grip", "downforce_area_m2_per_kg", "drag_area_m2_per_kg", "power_w_per_kg"}}, {"rows", rows}};
}

ordered_json car_json(const car::CarFigures& f, const car::ForceFigures& forces) {
    return {{"grip", figure_json(f.grip)},
            {"grip_as_used", figure_json(f.grip_as_used)},
            {"downforce_area_m2", figure_json(f.downforce_area_m2)},
            {"drag_area_m2", figure_json(f.drag_area_m2)},
            {"power_w", figure_json(f.power_w)},
            {"mass_kg", figure_json(f.mass_kg)},
            {"downforce_n", force_json(forces.speed_mps, forces.downforce_n)},
            {"drag_n", force_json(forces.speed_mps, forces.drag_n)},
            {"downforce_area_m2_per_kg", figure_json(f.downforce_area_m2_per_kg)},
            {"apparent_downforce_area_m2_per_kg", figure_json(f.apparent_downforce_area_m2_per_kg)},
            {"drag_area_m2_per_kg", figure_json(f.drag_area_m2_per_kg)},
            {"power_w_per_kg", figure_json(f.power_w_per_kg)},
            {"tyre_load_exponent", figure_json(f.load_exponent)},
            {"correlations", correlations_json(f)},
            {"air_density_kg_per_m3", number_json(f.typical.density_kg_m3)},
            {"corner_fit",
             {{"settled", f.corner_fit.outcome.converged()},
              {"r_hat", number_json(f.corner_fit.r_hat)},
              {"effective_draws", number_json(f.corner_fit.effective_draws)},
              {"acceptance", number_json(f.corner_fit.acceptance)}}},
            {"straight_fit",
             {{"settled", f.straight_fit.converged()},
              {"rounds", f.straight_fit.rounds},
              {"straights", f.straight_fit.rests_on}}},
            {"notes", f.notes}};
}

template <typename Get>
ordered_json causes_object(const causes::Row& row, bool per_kilogram, Get get) {
    ordered_json out;
    for (const Cause cause : causes::all_causes) {
        const bool absent = per_kilogram && cause == Cause::mass;
        out[std::string(causes::key(cause))] = absent ? ordered_json(nullptr) : number_json(get(row.of(cause)));
    }
    return out;
}

// Why a cell is null, by its key.
ordered_json untold_json(const causes::Row& row, bool per_kilogram) {
    ordered_json why = ordered_json::object();
    for (const Cause cause : causes::all_causes)
        if (!row.of(cause).told() && !(per_kilogram && cause == Cause::mass))
            why[std::string(causes::key(cause))] = row.of(cause).untold;
    if (!row.driver_and_rest.told()) why["driver_and_rest"] = row.driver_and_rest.untold;
    return why;
}

void add_row(ordered_json& out, const causes::Row& row, bool per_kilogram) {
    out["gain_s"] = number_json(row.gain.value);
    out["causes"] = causes_object(row, per_kilogram, [](const Seconds& s) { return s.value; });
    out["causes_low"] = causes_object(row, per_kilogram, [](const Seconds& s) { return s.low; });
    out["causes_high"] = causes_object(row, per_kilogram, [](const Seconds& s) { return s.high; });
    const auto add = [&out](const std::string& name, const Seconds& s) {
        out[name + "_s"] = number_json(s.value);
        out[name + "_low_s"] = number_json(s.low);
        out[name + "_high_s"] = number_json(s.high);
    };
    add("cornering_as_driven", row.cornering_as_driven);
    add("grip_and_downforce", row.cornering);
    add("aero", row.aero);
    add("drag_and_power", row.straights);
    add("driver_and_rest", row.driver_and_rest);
    out["cannot_tell"] = untold_json(row, per_kilogram);
}

ordered_json segment_json(const causes::SegmentRow& s, bool per_kilogram) {
    ordered_json out{{"name", s.segment.name},
                     {"kind", s.segment.kind == track::SegmentKind::corner ? "corner" : "straight"},
                     {"start_m", s.segment.start_m},
                     {"end_m", s.segment.end_m}};
    add_row(out, s.row, per_kilogram);
    out["use_a"] = number_json(s.use_a);
    out["use_b"] = number_json(s.use_b);
    out["driving"] = driving_json(s);
    out["does_not_fit"] = text_or_null(s.does_not_fit);
    return out;
}

// In the order in which the matrix has them; "behind": the sum that is known better and goes first.
ordered_json order_json(const causes::Row& total, bool per_kilogram) {
    ordered_json list = ordered_json::array();
    for (const causes::Column& column : causes::columns(total)) {
        if (per_kilogram && column.term == causes::Term::mass) continue;
        const auto sum = causes::comes_behind(total, column.term);
        list.push_back({{"what", causes::key(column.term)},
                        {"part_of", column.part_of ? ordered_json(causes::key(*column.part_of)) : nullptr},
                        {"behind", sum ? ordered_json(causes::key(*sum)) : nullptr}});
    }
    return list;
}

ordered_json sensitivities_json(const std::vector<causes::Sensitivity>& all) {
    ordered_json list = ordered_json::array();
    for (const causes::Sensitivity& s : all)
        list.push_back({{"change", s.what},
                        {"lap_s", number_json(s.prediction.lap.value)},
                        {"low_s", number_json(s.prediction.lap.low)},
                        {"high_s", number_json(s.prediction.lap.high)}});
    return list;
}

ordered_json next_tests_json(const causes::NextTests& next) {
    const auto width = [](const causes::Width& w) {
        return ordered_json{{"before", number_json(w.before)}, {"after", number_json(w.after)}};
    };
    ordered_json tests = ordered_json::array();
    for (const causes::NextTest& t : next.tests)
        tests.push_back({{"test", causes::key(t.test)},
                         {"car", t.side == causes::Side::a ? "a" : "b"},
                         {"figure", causes::key(t.figure)},
                         {"half_width", width(t.of_figure)},
                         {"question_half_width_s", width(t.of_question)},
                         {"effort_h", number_json(t.effort_h)}});
    return {{"question", causes::key(next.question)}, {"tests", tests}};
}

ordered_json finding_json(const findings::Finding& f) {
    return {{"claim", f.claim},
            {"certainty", findings::words(f.certainty)},
            {"seconds", number_json(f.seconds)},
            {"low_s", maybe_json(f.low)},
            {"high_s", maybe_json(f.high)},
            {"evidence", text_or_null(f.evidence)},
            {"try_next", text_or_null(f.try_next)},
            {"start_m", f.start_m},
            {"end_m", f.end_m}};
}

ordered_json all_warnings(const Explanation& e, const std::vector<recording::Warning>& warnings) {
    ordered_json list = warnings_json(warnings);
    for (const std::string& words : e.warnings)
        list.push_back({{"code", "causes"}, {"message", words}, {"line", nullptr}});
    return list;
}

template <typename Text>
std::vector<std::string> row_cells(const std::string& name, const causes::Row& row, const Explanation& e, Text text) {
    std::vector<std::string> cells{name, text(row.gain)};
    for (const causes::Column& column : causes::columns(e.total)) {
        const bool absent = e.per_kilogram && column.term == causes::Term::mass;
        cells.push_back(absent ? "—" : text(causes::of(row, column.term)));
    }
    cells.push_back(text(row.driver_and_rest));
    return cells;
}

std::string matrix_table(const Explanation& e) {
    std::vector<std::vector<std::string>> rows{{"won by, s", "measured"}};
    for (const causes::Column& column : causes::columns(e.total))
        rows.front().push_back(findings::column_name(column));
    rows.front().emplace_back("driver & rest");
    const auto cell = [](const Seconds& s) { return findings::cell(s).text; };
    for (const causes::SegmentRow& s : e.segments)
        rows.push_back(row_cells(s.segment.name, s.row, e, cell));
    rows.push_back(row_cells("whole lap", e.total, e, cell));
    rows.push_back(row_cells("95 % interval", e.total, e, findings::interval_cell));
    return aligned(rows, 1);
}

std::string sensitivities_table(const Explanation& e) {
    std::string text;
    for (const auto& [letter, all] : {std::pair("A", &e.sensitivities_a), std::pair("B", &e.sensitivities_b)})
        for (const causes::Sensitivity& s : *all)
            if (s.prediction.lap.told())
                text += std::string(letter) + " with " + s.what + ": " + findings::lap_change_text(s.prediction.lap) +
                        " a lap\n";
    const std::string leaning = findings::what_if_leans(e);
    return text + (leaning.empty() ? "" : leaning + "\n");
}

std::string shown(const car::CarFigure& f, double scale, const std::string& unit, int max_decimals) {
    if (!f.told()) return "cannot be told";
    std::string text = findings::with_half_width(f.value * scale, f.half_width() * scale, max_decimals);
    if (!unit.empty()) text += " " + unit;
    if (f.decided_by == car::DecidedBy::prior) text += " (usual value, not the data's)";
    return text;
}

double scale_to(Quantity quantity, UnitSystem units) {
    const base::Unit unit = base::shown_unit(quantity, units);
    return base::from_si(1.0, unit) - base::from_si(0.0, unit);
}

std::string shown(const std::optional<car::CarFigure>& f, Quantity quantity, UnitSystem units) {
    if (!f) return "—";
    return shown(*f, scale_to(quantity, units), std::string(base::symbol(base::shown_unit(quantity, units))), 1);
}

std::string cars_table(const Explanation& e, UnitSystem units) {
    const std::string at = base::figure_with_unit(e.force_speed_mps, Quantity::speed, units, 0);
    const auto area = [](const std::optional<car::CarFigure>& f) {
        return f ? shown(*f, 1.0, "m²", 3) : std::string("—");
    };
    std::vector<std::vector<std::string>> rows{{"what the data say of each car", "A", "B"}};
    const car::CarFigures& a = e.car_a;
    const car::CarFigures& b = e.car_b;
    rows.push_back({"tyre grip", shown(a.grip, 1.0, "", 3), shown(b.grip, 1.0, "", 3)});
    rows.push_back({"downforce at " + at, shown(e.forces_a.downforce_n, Quantity::force, units),
                    shown(e.forces_b.downforce_n, Quantity::force, units)});
    rows.push_back({"downforce area", area(a.downforce_area_m2), area(b.downforce_area_m2)});
    rows.push_back({"drag area", area(a.drag_area_m2), area(b.drag_area_m2)});
    rows.push_back(
        {"power at the wheels", shown(a.power_w, Quantity::power, units), shown(b.power_w, Quantity::power, units)});
    rows.push_back(
        {"mass, from setup", shown(a.mass_kg, Quantity::mass, units), shown(b.mass_kg, Quantity::mass, units)});
    if (e.per_kilogram)
        rows.push_back(
            {"power per kilogram", shown(a.power_w_per_kg, 1.0, "W/kg", 1), shown(b.power_w_per_kg, 1.0, "W/kg", 1)});
    return aligned(rows, 3);
}

} // namespace

std::string causes_json(const analysis::Pairing& pairing, const Explanation& explanation,
                        const std::vector<findings::Finding>& findings, std::optional<causes::Side> my_car) {
    ordered_json segments = ordered_json::array();
    for (const causes::SegmentRow& s : explanation.segments)
        segments.push_back(segment_json(s, explanation.per_kilogram));
    ordered_json total;
    add_row(total, explanation.total, explanation.per_kilogram);
    total["order"] = order_json(explanation.total, explanation.per_kilogram);
    ordered_json list = ordered_json::array();
    for (const findings::Finding& f : findings)
        list.push_back(finding_json(f));
    return document_text({{"a", side_json(pairing.a)},
                          {"b", side_json(pairing.b)},
                          {"my_car", my_car ? ordered_json(*my_car == causes::Side::a ? "a" : "b") : nullptr},
                          {"sentence", findings::causes_sentence(explanation)},
                          {"per_kilogram", explanation.per_kilogram},
                          {"cars",
                           {{"a", car_json(explanation.car_a, explanation.forces_a)},
                            {"b", car_json(explanation.car_b, explanation.forces_b)}}},
                          {"segments", segments},
                          {"total", total},
                          {"sensitivities",
                           {{"a", sensitivities_json(explanation.sensitivities_a)},
                            {"b", sensitivities_json(explanation.sensitivities_b)}}},
                          {"findings", list},
                          {"next_tests", next_tests_json(explanation.next_tests)},
                          {"warnings", all_warnings(explanation, pairing.warnings)}});
}

std::string causes_table(const analysis::Pairing& pairing, const Explanation& explanation,
                         const std::vector<findings::Finding>& findings, std::optional<causes::Side> my_car,
                         UnitSystem units) {
    std::string text = both_sides(pairing) + "\n" + findings::causes_sentence(explanation) + "\n\n";
    text += matrix_table(explanation) + "\n" + cars_table(explanation, units) + "\n" +
            driving_table(explanation, units) + "\n" + sensitivities_table(explanation) + "\n";
    if (my_car) text += std::string("\"Try next\" speaks to ") + (*my_car == causes::Side::a ? "A.\n" : "B.\n");
    for (std::size_t i = 0; i < std::min<std::size_t>(3, findings.size()); ++i) {
        text += base::integer_text(static_cast<std::int64_t>(i) + 1) + ". " + findings[i].claim + "\n";
        if (!findings[i].evidence.empty()) text += "   " + findings[i].evidence + "\n";
        if (!findings[i].try_next.empty()) text += "   Try next. " + findings[i].try_next + "\n";
    }
    for (const findings::TestWords& test : findings::next_tests(explanation, units, my_car))
        text += "Next test. " + findings::sentence(test) + "\n";
    if (!pairing.warnings.empty() || !explanation.warnings.empty()) text += "\nto keep in mind\n";
    for (const recording::Warning& w : pairing.warnings)
        text += "  " + recording::words(w) + "\n";
    for (const std::string& words : explanation.warnings)
        text += "  " + words + "\n";
    return text;
}

} // namespace lapwright::commands
