// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/driving_text.h"

#include "app/commands/json_parts.h"
#include "app/commands/table_text.h"
#include "core/comparison/driver_difference.h"
#include "core/findings/driver_display.h"

#include <vector>

namespace lapwright::commands {
namespace {

using comparison::MaybeFigure;
using nlohmann::ordered_json;

void put(ordered_json& out, ordered_json& derived, const std::string& stem, const std::string& unit,
         const MaybeFigure& figure) {
    const std::string key = stem + (unit.empty() ? "" : "_" + unit);
    out[key] = figure ? number_json(figure->value) : ordered_json(nullptr);
    out[stem + "_sd" + (unit.empty() ? "" : "_" + unit)] = figure ? maybe_json(figure->sd) : ordered_json(nullptr);
    if (figure && figure->derived) derived.push_back(key);
}

void add_rows(std::vector<std::vector<std::string>>& rows, const std::string& where,
              const std::vector<findings::DriverFigure>& figures) {
    for (std::size_t i = 0; i < figures.size(); ++i)
        rows.push_back({i == 0 ? where : "", figures[i].name, figures[i].a, figures[i].b, figures[i].says});
}

} // namespace

ordered_json driving_json(const causes::SegmentRow& row) {
    ordered_json out;
    ordered_json derived = ordered_json::array();
    const auto both = [&](const std::string& stem, const std::string& unit, const MaybeFigure& a,
                          const MaybeFigure& b) {
        put(out, derived, stem + "_a", unit, a);
        put(out, derived, stem + "_b", unit, b);
    };
    const auto& a = row.driving_a;
    const auto& b = row.driving_b;
    both("braking_point", "m", a.braking_point_m, b.braking_point_m);
    both("braking_before_slowest", "m", comparison::braking_before_slowest_m(a),
         comparison::braking_before_slowest_m(b));
    both("throttle_opens", "m", a.throttle_opens_m, b.throttle_opens_m);
    both("full_throttle", "m", a.full_throttle_m, b.full_throttle_m);
    both("lift_to_brakes", "s", a.lift_to_brakes_s, b.lift_to_brakes_s);
    both("coasting", "s", a.coasting_s, b.coasting_s);
    both("shifts", "", a.shifts, b.shifts);
    both("shift_cost", "s", a.shift_cost_s, b.shift_cost_s);
    const comparison::DriverDifference d = comparison::driver_difference(a, b);
    put(out, derived, "brakes_later", "m", d.brakes_later_m);
    put(out, derived, "opens_earlier", "m", d.opens_earlier_m);
    put(out, derived, "full_earlier", "m", d.full_earlier_m);
    put(out, derived, "brakes_sooner_after_lift", "s", d.brakes_sooner_after_lift_s);
    put(out, derived, "coasts_less", "s", d.coasts_less_s);
    put(out, derived, "shifts_cost_less", "s", d.shifts_cost_less_s);
    out["derived"] = derived;
    return out;
}

std::string driving_table(const causes::Explanation& explanation, base::UnitSystem units) {
    std::vector<std::vector<std::string>> rows{{"what both drivers do", "", "A", "B", ""}};
    for (const causes::SegmentRow& row : explanation.segments)
        if (row.segment.kind == track::SegmentKind::corner)
            add_rows(rows, row.segment.name, findings::driver_figures(row, units));
    add_rows(rows, "whole lap", findings::driver_figures(explanation));
    return aligned(rows, 2) + findings::driver_figures_note() + "\n";
}

} // namespace lapwright::commands
