// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/cause_display.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/units.h"
#include "core/findings/wording.h"

#include <algorithm>
#include <cmath>
#include <utility>

namespace lapwright::findings {
namespace {

using base::Quantity;
using base::said;
using base::UnitSystem;
using base::word;
using causes::Explanation;
using causes::Seconds;

constexpr int cell_decimals = 2;
const std::string no_figure = "—";

std::string cannot_be_told() {
    return said("cannot be told");
}

// With what stands in the way.
std::string cannot_be_told(const std::string& why) {
    return said("cannot be told: %1", {why});
}

std::string with_letter(double seconds, int decimals) {
    const std::string text = base::shown_text(std::abs(seconds), decimals);
    return (seconds >= 0.0 ? "A " : "B ") + text;
}

// "1479 ±160" of a figure in a unit.
std::string figure(const car::CarFigure& f, base::Unit unit, int max_decimals) {
    if (!f.told()) return cannot_be_told();
    const double factor = base::definition(unit).factor;
    return with_half_width(base::from_si(f.value, unit), f.half_width() / factor, max_decimals);
}

// Square metres on a tonne read more easily than on a kilogram.
car::CarFigure on_a_tonne(const car::CarFigure& f) {
    return {base::scaled(f, base::tonne_kg), f.decided_by};
}

FigureLine line(std::string name, const std::optional<car::CarFigure>& a, const std::optional<car::CarFigure>& b,
                base::Unit unit, int max_decimals) {
    FigureLine result;
    const std::string symbol(base::symbol(unit));
    result.name = std::move(name);
    if (!symbol.empty()) result.name += ", " + symbol;
    if (a) {
        result.a = figure(*a, unit, max_decimals);
        if (a->told()) result.decided_a = car::name(a->decided_by);
    }
    if (b) {
        result.b = figure(*b, unit, max_decimals);
        if (b->told()) result.decided_b = car::name(b->decided_by);
    }
    return result;
}

std::string signed_text(double value, int decimals) {
    std::string text = base::shown_text(std::abs(value), decimals);
    if (base::shows_zero(text)) return text;
    return (value >= 0.0 ? "+" : "−") + text;
}

base::Unit unit_of(Lever lever, UnitSystem units) {
    switch (lever) {
    case Lever::power:
        return base::shown_unit(Quantity::power, units);
    case Lever::mass:
        return base::shown_unit(Quantity::mass, units);
    default:
        return base::Unit::percent;
    }
}

// "downforce earns A 2.12 s" as a part of a sentence.
std::string part(const std::string& what, const Seconds& s) {
    if (!s.told()) return said("%1 cannot be told", {what});
    const int decimals = std::clamp(base::decimals_for(s.half_width(), cell_decimals), 1, cell_decimals);
    return what + " " + with_letter(s.value, decimals) + " " + base::plus_minus_text(s.half_width(), cell_decimals) +
           " s";
}

} // namespace

Cell cell(const Seconds& seconds) {
    if (!seconds.told()) return {no_figure, Favours::neither, false};
    const std::string text = base::shown_text(std::abs(seconds.value), cell_decimals);
    if (std::abs(seconds.value) < min_told_s) return {"·", Favours::neither, seconds.told_apart_from_zero()};
    return {(seconds.value >= 0.0 ? "A " : "B ") + text, seconds.value >= 0.0 ? Favours::a : Favours::b,
            seconds.told_apart_from_zero()};
}

std::string column_name(const causes::Column& column) {
    if (column.term == causes::Term::cornering) return said("grip + downforce");
    if (column.term == causes::Term::straights) return said("drag + power");
    const std::string name = causes::name(column.term);
    return column.part_of ? said("of it %1", {name}) : name;
}

std::string interval_cell(const Seconds& seconds) {
    if (!seconds.told()) return no_figure;
    const double half = seconds.half_width();
    return "±" + base::shown_text(half, seconds_decimals(half, cell_decimals));
}

std::string seconds_in_full(const Seconds& seconds) {
    if (!seconds.told()) return cannot_be_told(seconds.untold);
    double from_s = seconds.low;
    double to_s = seconds.high;
    if (to_s < 0.0) std::swap(from_s, to_s); // B's: the smaller first
    return said("%1 s, 95 % between %2 and %3", {with_letter(seconds.value, cell_decimals),
                                                 with_letter(from_s, cell_decimals), with_letter(to_s, cell_decimals)});
}

std::vector<FigureLine> figure_lines(const Explanation& e, UnitSystem units) {
    const auto& a = e.car_a;
    const auto& b = e.car_b;
    const std::string at = base::figure_with_unit(e.force_speed_mps, Quantity::speed, units, 0);
    const base::Unit force = base::shown_unit(Quantity::force, units);
    const base::Unit none = base::Unit::none;
    std::vector<FigureLine> lines;
    lines.push_back(line(said("tyre grip"), a.grip, b.grip, none, 3));
    lines.push_back(line(said("grip as used"), a.grip_as_used, b.grip_as_used, none, 3));
    if (e.per_kilogram) {
        lines.push_back(line(said("downforce area, m² on a tonne"), on_a_tonne(a.downforce_area_m2_per_kg),
                             on_a_tonne(b.downforce_area_m2_per_kg), none, 2));
        lines.push_back(line(said("drag area, m² on a tonne"), on_a_tonne(a.drag_area_m2_per_kg),
                             on_a_tonne(b.drag_area_m2_per_kg), none, 2));
        lines.push_back(line(said("power at the wheels, W on a kg"), a.power_w_per_kg, b.power_w_per_kg, none, 1));
    } else {
        lines.push_back(line(said("downforce at %1", {at}), e.forces_a.downforce_n, e.forces_b.downforce_n, force, 0));
        lines.push_back(line(said("drag at %1", {at}), e.forces_a.drag_n, e.forces_b.drag_n, force, 0));
        lines.push_back(line(said("downforce area, m²"), a.downforce_area_m2, b.downforce_area_m2, none, 2));
        lines.push_back(line(said("drag area, m²"), a.drag_area_m2, b.drag_area_m2, none, 2));
        lines.push_back(
            line(said("power at the wheels"), a.power_w, b.power_w, base::shown_unit(Quantity::power, units), 1));
    }
    lines.push_back(line(said("mass"), a.mass_kg, b.mass_kg, base::shown_unit(Quantity::mass, units), 0));
    return lines;
}

std::string cornering_sentence(const Explanation& e) {
    const causes::Row& row = e.total;
    if (e.same_car || !causes::comes_behind(row, causes::Term::cornering)) return {};
    return said("Cornering as driven (tyres, downforce and how much of them the drivers use): %1.",
                {part(said("whole lap"), row.cornering_as_driven)});
}

std::string aero_sentence(const Explanation& e) {
    using causes::Cause;
    if (!e.total.aero.told()) return said("What the aero is worth cannot be told: %1.", {e.total.aero.untold});
    return said("Aero, downforce and drag together: %1 (%2, %3).",
                {part(said("whole lap"), e.total.aero), part(said("downforce"), e.total.of(Cause::downforce)),
                 part(said("drag"), e.total.of(Cause::drag))});
}

std::string missing_mass_sentence(const Explanation& e) {
    if (!e.per_kilogram) return {};
    const bool a = e.car_a.mass_kg.has_value();
    const bool b = e.car_b.mass_kg.has_value();
    if (!a && !b)
        return said("The mass of neither car is known: figures are per kilogram, and mass is not a cause of its own. "
                    "Enter it under Setup.");
    return said("The mass of car %1 is not known: figures are per kilogram, and mass is not a cause of its own. Enter "
                "it under Setup.",
                {a ? "B" : "A"});
}

std::string use_text(const causes::SegmentRow& row) {
    const auto percent = [](double share) {
        return std::isfinite(share) ? base::shown_text(100.0 * share, 0) + " %" : no_figure;
    };
    const bool corner = row.segment.kind == track::SegmentKind::corner;
    return said(corner ? word("Tyres used: A %1, B %2") : word("Engine used: A %1, B %2"),
                {percent(row.use_a), percent(row.use_b)});
}

std::string name(Lever lever) {
    switch (lever) {
    case Lever::grip:
        return said("tyre grip");
    case Lever::downforce:
        return said("downforce");
    case Lever::drag:
        return said("drag");
    case Lever::power:
        return said("power");
    case Lever::mass:
        return said("mass");
    }
    return {};
}

LeverSteps steps(Lever lever, UnitSystem units) {
    switch (lever) {
    case Lever::grip:
        return {0.005, 20};
    case Lever::downforce:
    case Lever::drag:
        return {0.02, 25};
    case Lever::power:
        return {2.0 * base::definition(unit_of(lever, units)).factor, 25};
    case Lever::mass:
        return {(units == UnitSystem::us ? 10.0 : 5.0) * base::definition(unit_of(lever, units)).factor, 30};
    }
    return {};
}

void add(causes::Change& change, Lever lever, double amount) {
    switch (lever) {
    case Lever::grip:
        change.grip_share += amount;
        break;
    case Lever::downforce:
        change.downforce_share += amount;
        break;
    case Lever::drag:
        change.drag_share += amount;
        break;
    case Lever::power:
        change.power_w += amount;
        break;
    case Lever::mass:
        change.mass_kg += amount;
        break;
    }
}

Moved moved(const causes::Change& change) {
    const std::array<double, all_levers.size()> amounts{change.grip_share, change.downforce_share, change.drag_share,
                                                        change.power_w, change.mass_kg};
    for (const Lever lever : all_levers) {
        const double amount = amounts[static_cast<std::size_t>(lever)];
        if (amount != 0.0) return {lever, amount};
    }
    return {};
}

std::string change_text(Lever lever, double amount, UnitSystem units) {
    const base::Unit unit = unit_of(lever, units);
    const double shown = base::from_si(amount, unit);
    const std::string text = signed_text(shown, lever == Lever::grip ? 1 : 0);
    if (base::shows_zero(text)) return said("as it is");
    return text + "\u00a0" + std::string(base::symbol(unit));
}

std::string lap_change_text(const Seconds& change) {
    if (!change.told()) return cannot_be_told(change.untold);
    const int decimals = std::clamp(base::decimals_for(change.half_width(), 3), cell_decimals, 3);
    return signed_text(change.value, decimals) + " ±" + base::shown_text(change.half_width(), decimals) + "\u00a0s";
}

Seconds favouring_a(const Seconds& change, causes::Side changed) {
    if (changed == causes::Side::b) return change; // a slower B favours A
    return {-change.value, -change.high, -change.low, change.untold};
}

std::string predicted_lap_text(double lap_time_s, const Seconds& change) {
    if (!change.told()) return no_figure;
    return base::lap_time_text(lap_time_s + change.value, std::clamp(base::decimals_for(change.half_width(), 3), 1, 3));
}

std::string what_if_leans(const Explanation& e) {
    using causes::Term;
    if (e.same_car || causes::comes_behind(e.total, Term::downforce) != Term::cornering) return {};
    return said(
        "A change of downforce alone leans on how grip and downforce share the cornering, which these laps hardly "
        "tell: its interval says how much.");
}

std::string where_it_changes(const Explanation& e, const causes::Prediction& prediction) {
    std::vector<std::size_t> order;
    for (std::size_t k = 0; k < prediction.segments.size() && k < e.segments.size(); ++k) {
        if (prediction.segments[k].told() && std::abs(prediction.segments[k].value) >= min_told_s) order.push_back(k);
    }
    std::ranges::sort(order, std::greater<>{}, [&](std::size_t k) { return std::abs(prediction.segments[k].value); });
    if (order.empty()) return {};
    std::string places;
    for (std::size_t i = 0; i < std::min<std::size_t>(3, order.size()); ++i) {
        const std::string place =
            e.segments[order[i]].segment.name + " " + signed_text(prediction.segments[order[i]].value, cell_decimals);
        places = i == 0 ? place : said("%1, %2", {places, place});
    }
    return said("Most in %1.", {places + "\u00a0s"});
}

} // namespace lapwright::findings
