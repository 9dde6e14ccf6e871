// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/expected_setup.h"

#include "core/base/plain_text.h"
#include "core/base/translation.h"
#include "core/car/setup_reached.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::analysis {
namespace {

using base::said;

std::optional<car::KnownFigure> changed(const std::optional<car::KnownFigure>& before, double share, double more) {
    if (!before || (share == 0.0 && more == 0.0)) return std::nullopt;
    return car::KnownFigure{before->value * (1.0 + share) + more, before->sd};
}

// Areas on a tonne say nothing of a sheet's.
car::SetupSheet expected(const book::AskedChange& asked, const car::SetupSheet& before) {
    car::SetupSheet sheet;
    if (asked.mass_kg != 0.0 && before.mass)
        sheet.mass = car::Mass{before.mass->value_kg + asked.mass_kg, before.mass->sd_kg};
    const double whole = asked.on_a_tonne ? 0.0 : 1.0;
    sheet.known.downforce_area_m2 =
        changed(before.known.downforce_area_m2, asked.downforce_share, whole * asked.downforce_area_m2);
    sheet.known.drag_area_m2 = changed(before.known.drag_area_m2, asked.drag_share, whole * asked.drag_area_m2);
    sheet.known.power_w = changed(before.known.power_w, 0.0, asked.power_w);
    return sheet;
}

} // namespace

book::Prediction predicted(const causes::Change& change, const causes::Seconds& lap, bool on_a_tonne,
                           const car::SetupSheet& before) {
    book::Prediction p;
    p.source = book::PredictedBy::what_if;
    p.asked = {.grip_share = change.grip_share,
               .downforce_share = change.downforce_share,
               .drag_share = change.drag_share,
               .on_a_tonne = on_a_tonne,
               .power_w = change.power_w,
               .mass_kg = change.mass_kg};
    p.expected = expected(p.asked, before);
    p.change = lap;
    return p;
}

std::optional<book::Prediction> predicted(const causes::AeroBalance& balance, const causes::DragCost& cost,
                                          std::optional<double> downforce_m2, bool on_a_tonne,
                                          const car::SetupSheet& before) {
    const auto& steps = balance.steps;
    const auto step =
        downforce_m2
            ? std::ranges::find_if(
                  steps, [&](const causes::AeroStep& one) { return std::abs(one.downforce_m2 - *downforce_m2) < 1e-6; })
            : std::ranges::min_element(steps, {}, [](const causes::AeroStep& one) { return one.lap.value; });
    if (step == steps.end() || step->downforce_m2 == 0.0) return std::nullopt;
    book::Prediction p;
    p.source = book::PredictedBy::wing;
    p.asked = {.downforce_area_m2 = step->downforce_m2,
               .drag_area_m2 = step->downforce_m2 * cost.per_downforce,
               .on_a_tonne = on_a_tonne};
    p.expected = expected(p.asked, before);
    p.change = step->lap;
    return p;
}

base::Result<void> expect_items(book::Prediction& prediction, const std::vector<std::string>& words,
                                const car::SetupSheet& before) {
    for (const std::string& one : words) {
        const std::size_t equals = one.find('=');
        const std::string name = base::plain_name(one.substr(0, equals));
        const std::string value = equals == std::string::npos ? "" : base::plain_name(one.substr(equals + 1));
        if (name.empty() || value.empty())
            return base::Error{base::ErrorCode::setup_not_readable,
                               {},
                               said("\"%1\" names no item of a setup with its value", {one}),
                               said("write it as \"wing angle=7 deg\"")};
        car::SetupSheet alone;
        alone.items = {{name, value}};
        if (car::reached(before, before, alone))
            return base::Error{base::ErrorCode::setup_not_readable,
                               {},
                               said("the setup sheet says \"%1\" already", {one}),
                               said("name what will be changed, as it will be written then")};
        prediction.expected.items.push_back(std::move(alone.items.front()));
    }
    return {};
}

} // namespace lapwright::analysis
