// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/recipe_edit.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/recording/recording.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::import {
namespace {

using base::Quantity;
using base::said;
using base::Unit;
using recording::Meaning;

constexpr int last_meaning = static_cast<int>(Meaning::humidity);
constexpr int last_unit = static_cast<int>(Unit::ampere);

// Forms whose cells bring their unit with them.
bool form_has_unit(CellForm form) {
    return form != CellForm::number;
}

Unit unit_of_form(CellForm form, Unit written) {
    if (form == CellForm::number_with_unit) return written;
    const bool angle = is_angle(form) || form == CellForm::degrees_minutes;
    if (is_hemisphere(form)) return Unit::none;
    return angle ? Unit::degree : Unit::second;
}

std::vector<Unit> units_of(Quantity quantity) {
    std::vector<Unit> units;
    for (int i = 0; i <= last_unit; ++i)
        if (base::quantity(static_cast<Unit>(i)) == quantity) units.push_back(static_cast<Unit>(i));
    const auto usual = std::ranges::find(units, base::shown_unit(quantity, base::UnitSystem::metric));
    if (usual != units.end()) std::rotate(units.begin(), usual, usual + 1);
    return units;
}

std::vector<Unit> all_units() {
    std::vector<Unit> units;
    for (int i = 0; i <= last_unit; ++i)
        units.push_back(static_cast<Unit>(i));
    return units;
}

template <typename T>
bool holds(const std::vector<T>& list, const T& value) {
    return std::ranges::find(list, value) != list.end();
}

Quantity quantity_of(const RecipeColumn& column) {
    if (column.role != Role::channel) return Quantity::time;
    return column.meaning == Meaning::other ? base::quantity(column.unit) : recording::quantity(column.meaning);
}

// Enough that three figures of the span are seen.
int decimals_of(double span) {
    if (!(span > 0.0) || !std::isfinite(span)) return 1;
    return std::clamp(2 - static_cast<int>(std::floor(std::log10(span))), 0, 6);
}

} // namespace

const std::vector<ColumnUse>& all_uses() {
    static const std::vector<ColumnUse> uses = [] {
        std::vector<ColumnUse> list{{Role::skip}, {Role::time}, {Role::date}, {Role::north_south}, {Role::east_west}};
        for (int i = 0; i <= last_meaning; ++i)
            list.push_back({Role::channel, static_cast<Meaning>(i)});
        return list;
    }();
    return uses;
}

std::string words(const ColumnUse& use) {
    switch (use.role) {
    case Role::skip:
        return said("not used");
    case Role::time:
        return said("time");
    case Role::date:
        return said("date");
    case Role::north_south:
        return said("letter N or S");
    case Role::east_west:
        return said("letter E or W");
    case Role::channel:
        break;
    }
    return use.meaning == Meaning::other ? said("further channel") : recording::words(use.meaning);
}

std::string words(CellForm form) {
    switch (form) {
    case CellForm::number:
        return said("number");
    case CellForm::number_with_unit:
        return said("number with its unit");
    case CellForm::day_count:
        return said("days with fractions");
    case CellForm::clock:
        return said("hours:minutes:seconds");
    case CellForm::clock_tenths:
    case CellForm::clock_24_frames:
    case CellForm::clock_25_frames:
    case CellForm::clock_30_frames:
    case CellForm::clock_50_frames:
    case CellForm::clock_60_frames:
    case CellForm::clock_hundredths:
        return said("hours:minutes:seconds:parts, %1 a second", {base::integer_text(parts_a_second(form))});
    case CellForm::packed_clock:
        return said("hhmmss without marks");
    case CellForm::moment:
        return said("date and time of day");
    case CellForm::date:
        return said("date");
    case CellForm::packed_date:
        return said("ddmmyy without marks");
    case CellForm::angle:
        return said("degrees with marks or letters, O is east");
    case CellForm::angle_o_west:
        return said("degrees with marks or letters, O is west");
    case CellForm::degrees_minutes:
        return said("ddmm.mmmm without marks");
    case CellForm::hemisphere:
        return said("letter, O is east");
    case CellForm::hemisphere_o_west:
        return said("letter, O is west");
    case CellForm::text:
        break;
    }
    return said("text");
}

std::string unit_words(Unit unit) {
    if (unit == Unit::none) return said("no unit");
    if (unit == Unit::fraction) return said("0 to 1");
    return std::string(base::symbol(unit));
}

ColumnUse use_of(const RecipeColumn& column) {
    return {column.role, column.role == Role::channel ? column.meaning : Meaning::other};
}

std::vector<Unit> units_for(const RecipeColumn& column) {
    if (column.role == Role::skip || form_has_unit(column.form)) return {column.unit};
    if (column.role == Role::channel && column.meaning == Meaning::other) return all_units();
    return units_of(quantity_of(column));
}

std::vector<CellForm> forms_for(const ColumnUse& use) {
    using enum CellForm;
    if (use.role == Role::skip) return {number};
    if (use.role == Role::time) return {number, clock, packed_clock, moment, day_count, number_with_unit};
    if (use.role == Role::date) return {date, packed_date};
    if (use.role == Role::north_south) return {hemisphere};
    if (use.role == Role::east_west) return {hemisphere, hemisphere_o_west};
    if (use.meaning == Meaning::latitude) return {number, angle, degrees_minutes, number_with_unit};
    if (use.meaning == Meaning::longitude) return {number, angle, angle_o_west, degrees_minutes, number_with_unit};
    if (use.meaning == Meaning::course) return {number, angle, number_with_unit};
    if (use.meaning == Meaning::lap_time) return {number, clock, number_with_unit};
    return {number, number_with_unit};
}

RecipeColumn with_form(RecipeColumn column, CellForm form) {
    column.form = form;
    if (form_has_unit(form)) {
        column.unit = unit_of_form(form, column.unit);
        column.scale = 1.0;
    } else if (const auto units = units_for(column); !holds(units, column.unit)) {
        column.unit = units.front();
    }
    return column;
}

RecipeColumn with_use(RecipeColumn column, const ColumnUse& use, const ColumnGuess& guess) {
    if (use == ColumnUse{guess.role, guess.role == Role::channel ? guess.meaning : Meaning::other} &&
        use.role != Role::skip)
        return {column.header, guess.role, use.meaning, guess.unit, guess.form, guess.scale};
    if (use.role == Role::skip) return {column.header, Role::skip};
    const bool was_read = column.role != Role::skip;
    const CellForm form_before = was_read ? column.form : guess.form;
    const Unit unit_before = was_read ? column.unit : guess.unit;
    column.role = use.role;
    column.meaning = use.meaning;
    column.unit = unit_before;
    const auto forms = forms_for(use);
    column = with_form(std::move(column), holds(forms, form_before) ? form_before : forms.front());
    if (was_read && column.unit == unit_before) return column;
    column.scale = 1.0;
    // What the file writes is stronger than what is usual.
    if (!form_has_unit(column.form) && holds(units_for(column), guess.unit)) column.unit = guess.unit;
    return column;
}

std::string range_words(std::span<const double> values, const RecipeColumn& column, base::UnitSystem system) {
    double least = std::numeric_limits<double>::infinity();
    double most = -least;
    for (const double value : values) {
        if (!std::isfinite(value)) continue;
        least = std::min(least, value);
        most = std::max(most, value);
    }
    if (least > most || column.role == Role::skip) return "";
    // Days and moments are no figures that a person could judge.
    if (column.form == CellForm::date || column.form == CellForm::packed_date || column.form == CellForm::moment ||
        column.form == CellForm::day_count)
        return recording::utc_text(least) + " … " + recording::utc_text(most);
    const Quantity quantity = quantity_of(column);
    const Unit unit = base::shown_unit(quantity, system);
    const bool whole = std::ranges::all_of(values, [&](double value) {
        const double shown = base::from_si(value, unit);
        return !std::isfinite(value) || std::abs(shown - std::round(shown)) < 1e-9;
    });
    const int decimals = whole ? 0 : decimals_of(base::from_si(most, unit) - base::from_si(least, unit));
    if (least == most) return base::figure_with_unit(least, quantity, system, whole ? 0 : 3);
    return base::figure_text(least, quantity, system, decimals) + " … " +
           base::figure_with_unit(most, quantity, system, decimals);
}

} // namespace lapwright::import
