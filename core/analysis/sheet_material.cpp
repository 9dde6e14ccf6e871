// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/sheet_material.h"

#include "core/analysis/findings_of.h"
#include "core/analysis/short_text.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/findings/cause_display.h"
#include "core/findings/findings.h"
#include "core/findings/next_test_words.h"
#include "core/findings/wording.h"
#include "core/recording/warning_words.h"
#include "core/sheet/compose_sheet.h"
#include "core/sheet/setup_difference.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <functional>
#include <utility>

namespace lapwright::analysis {
namespace {

using base::said;

sheet::SideFacts facts(const Side& side) {
    return {shortened(side.session->title()),
            std::filesystem::path(side.session->recording->source_file).filename().string(),
            &side.lap,
            &side.trace.best,
            side.clean_laps.size(),
            side.session->recording->driver,
            false,
            ""};
}

std::string date_of(const Pairing& pairing) {
    for (const Side* side : {&pairing.a, &pairing.b})
        if (side->session->recording->start_unix_s)
            return recording::utc_text(*side->session->recording->start_unix_s).substr(0, 10);
    return {};
}

// "dry, gusty, 21 °C, air 1.176 kg/m³", as far as it is known.
std::string conditions(const Side& side, const car::SetupSheet& setup, const car::CarFigures& figures,
                       base::UnitSystem units) {
    std::string text = side.session->conditions.empty() ? std::string() : side.session->conditions + ", ";
    if (setup.conditions.temperature_k)
        text += base::figure_with_unit(*setup.conditions.temperature_k, base::Quantity::temperature, units, 0) + ", ";
    // kept on one line
    return text + said("air %1", {base::shown_text(figures.typical.density_kg_m3, 3) + "\u00A0kg/\u2060m³"});
}

sheet::Pair cause_pair(std::string name, const causes::Seconds& seconds) {
    if (!seconds.told()) return {std::move(name), said("cannot be told"), findings::Favours::neither};
    sheet::Pair pair{std::move(name), findings::worth_text(seconds.value, seconds.low, seconds.high),
                     findings::Favours::neither};
    if (seconds.told_apart_from_zero())
        pair.favours = seconds.value > 0.0 ? findings::Favours::a : findings::Favours::b;
    return pair;
}

// The greatest first, the parts of a sum behind it, what is left over last.
std::vector<sheet::Pair> cause_pairs(const causes::Explanation& e) {
    const std::vector<causes::Column> columns = causes::columns(e.total);
    std::vector<causes::Column> order;
    for (const causes::Column& column : columns) {
        const bool absent = e.per_kilogram && column.term == causes::Term::mass;
        if (!column.part_of && !absent) order.push_back(column);
    }
    std::ranges::sort(order, std::greater<>{}, [&](const causes::Column& column) {
        const causes::Seconds& s = causes::of(e.total, column.term);
        return s.told() ? std::abs(s.value) : -1.0;
    });
    std::vector<sheet::Pair> pairs;
    const auto add = [&](const causes::Column& column) {
        pairs.push_back(cause_pair(findings::column_name(column), causes::of(e.total, column.term)));
    };
    for (const causes::Column& column : order) {
        add(column);
        for (const causes::Column& part : columns)
            if (part.part_of == column.term) add(part);
    }
    pairs.push_back(cause_pair(said("of it aero"), e.total.aero));
    pairs.push_back(cause_pair(said("driver & rest"), e.total.driver_and_rest));
    return pairs;
}

// The best that says what the person may try is among those that the sheet has room for.
std::vector<findings::Finding> with_advice(std::vector<findings::Finding> all, std::optional<causes::Side> my_car) {
    const auto advises = [](const findings::Finding& f) { return !f.try_next.empty(); };
    const auto shown = static_cast<std::ptrdiff_t>(std::min(all.size(), sheet::max_findings));
    const auto first = std::ranges::find_if(all, advises);
    if (my_car && first != all.end() && first - all.begin() >= shown)
        std::rotate(all.begin() + shown - 1, first, first + 1);
    return all;
}

std::vector<sheet::Finding> sheet_findings(const Pairing& pairing, const causes::Explanation& explanation,
                                           base::UnitSystem units, std::optional<causes::Side> my_car) {
    std::vector<sheet::Finding> all;
    for (const findings::Finding& f : with_advice(findings_of(pairing, &explanation, units, my_car), my_car))
        all.push_back({f.claim, f.evidence, f.try_next, f.worth, f.favours, f.start_m, f.end_m});
    return all;
}

void add_explanation(sheet::Material& material, const Pairing& pairing, const SheetExtras& extras,
                     base::UnitSystem units) {
    const causes::Explanation& explanation = *extras.explanation;
    material.findings = sheet_findings(pairing, explanation, units, extras.my_car);
    material.causes = cause_pairs(explanation);
    for (const findings::TestWords& test : findings::next_tests(explanation, units, extras.my_car, 1))
        material.remarks.push_back(said("next test, %1", {findings::sentence(test)}));
    material.a.conditions = conditions(pairing.a, extras.setup_a, explanation.car_a, units);
    material.b.conditions = conditions(pairing.b, extras.setup_b, explanation.car_b, units);
}

} // namespace

sheet::Sheet debrief_sheet(const Pairing& pairing, base::UnitSystem units, const std::string& version,
                           const SheetExtras& extras) {
    sheet::Material material;
    material.track = &pairing.track;
    material.comparison = &pairing.comparison;
    material.repeatability = &pairing.repeatability;
    material.headline = &pairing.headline;
    material.a = facts(pairing.a);
    material.b = facts(pairing.b);
    material.a.mine = extras.my_car == causes::Side::a;
    material.b.mine = extras.my_car == causes::Side::b;
    material.date = date_of(pairing);
    for (const recording::Warning& warning : pairing.warnings)
        material.remarks.push_back(recording::words(warning));
    material.version = version;
    material.notes = extras.notes;
    material.stills = extras.stills;
    material.setup = sheet::setup_difference(extras.setup_a, extras.setup_b, units);
    if (extras.explanation != nullptr) add_explanation(material, pairing, extras, units);
    return sheet::compose_sheet(material, units);
}

} // namespace lapwright::analysis
