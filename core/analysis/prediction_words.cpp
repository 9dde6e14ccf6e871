// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/prediction_words.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/findings/cause_display.h"

#include <cmath>
#include <vector>

namespace lapwright::analysis {
namespace {

using base::said;
using comparison::Verdict;
using findings::Lever;

std::string joined(const std::vector<std::string>& parts) {
    std::string line;
    for (const std::string& part : parts)
        line += (line.empty() ? "" : ", ") + part;
    return line;
}

std::string area(double m2, bool on_a_tonne) {
    return (m2 < 0.0 ? "−" : "+") + base::shown_text(std::abs(m2), 2) + " " +
           (on_a_tonne ? said("m² on a tonne") : "m²");
}

std::string percent(double share) {
    return base::shown_text(100.0 * share, 0);
}

} // namespace

std::string asked_text(const book::AskedChange& asked, base::UnitSystem units) {
    std::vector<std::string> parts;
    const auto add = [&](Lever lever, double amount) {
        if (amount != 0.0) parts.push_back(findings::name(lever) + " " + findings::change_text(lever, amount, units));
    };
    const auto add_area = [&](Lever lever, double m2) {
        if (m2 != 0.0) parts.push_back(findings::name(lever) + " " + area(m2, asked.on_a_tonne));
    };
    add(Lever::grip, asked.grip_share);
    add(Lever::downforce, asked.downforce_share);
    add_area(Lever::downforce, asked.downforce_area_m2);
    add(Lever::drag, asked.drag_share);
    add_area(Lever::drag, asked.drag_area_m2);
    add(Lever::power, asked.power_w);
    add(Lever::mass, asked.mass_kg);
    return joined(parts);
}

std::string expected_text(const car::SetupSheet& expected, base::UnitSystem units) {
    std::vector<std::string> parts;
    for (const car::SetupItem& item : expected.items)
        parts.push_back(item.name + " " + item.value);
    if (!expected.tyre.empty()) parts.push_back(said("tyre") + " " + expected.tyre);
    if (expected.mass)
        parts.push_back(said("mass") + " " +
                        base::figure_with_unit(expected.mass->value_kg, base::Quantity::mass, units, 0));
    const auto add = [&](const std::string& name, const std::optional<car::KnownFigure>& figure, double unit,
                         const char* symbol) {
        if (figure) parts.push_back(name + " " + base::shown_text(figure->value / unit, 2) + " " + symbol);
    };
    add(said("downforce"), expected.known.downforce_area_m2, 1.0, "m²");
    add(said("drag"), expected.known.drag_area_m2, 1.0, "m²");
    add(said("power"), expected.known.power_w, 1000.0, "kW");
    return joined(parts);
}

std::string outcome_text(const HeldPrediction& held) {
    if (!held.against) return held.waits_for.empty() ? said("not yet") : said("not yet: %1", {held.waits_for});
    const std::string was = findings::lap_change_text(*held.kept.prediction.observed);
    switch (held.against->verdict) {
    case Verdict::held:
        return said("held: it was %1", {was});
    case Verdict::missed:
        return said("missed: it was %1", {was});
    case Verdict::too_wide:
        break;
    }
    return said("cannot be told: %1 is too wide to judge by", {was});
}

std::string score_sentence(const comparison::Score& score) {
    if (score.judged == 0) return said("No prediction has been judged yet.");
    return said("%1 of %2 judged predictions held: %3 to %4 % of such predictions do (95 % interval), and 95 % should.",
                {base::integer_text(score.held), base::integer_text(score.judged), percent(score.share.low),
                 percent(score.share.high)});
}

} // namespace lapwright::analysis
