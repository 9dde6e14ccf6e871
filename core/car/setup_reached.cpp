// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/setup_reached.h"

#include "core/base/number_text.h"
#include "core/base/plain_text.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace lapwright::car {
namespace {

constexpr double fuel_kg = 10.0;
constexpr double scales_kg = 2.0;
constexpr double of_change = 0.2;
constexpr double of_number = 0.01;
constexpr double of_rate = 0.01;

// "7.5 deg" as 7.5 and "deg"; a value without a number in front is all unit.
std::pair<std::optional<double>, std::string_view> number_and_unit(std::string_view value) {
    value = base::trimmed(value);
    const std::size_t end = std::min(value.find_first_not_of("+-0123456789.,eE"), value.size());
    for (std::size_t length = end; length > 0; --length)
        if (const auto number = base::parse_number(value.substr(0, length)))
            return {number, base::trimmed(value.substr(length))};
    return {std::nullopt, value};
}

bool same_value(const std::string& one, const std::string& other) {
    const auto [a, unit_a] = number_and_unit(one);
    const auto [b, unit_b] = number_and_unit(other);
    if (!a || !b) return base::same_name(one, other);
    const double most = std::max(std::abs(*a), std::abs(*b));
    return base::same_name(unit_a, unit_b) && std::abs(*a - *b) <= of_number * most;
}

const SetupItem* item_of(const std::vector<SetupItem>& items, const std::string& name) {
    const auto found = std::ranges::find_if(items, [&](const SetupItem& i) { return base::same_name(i.name, name); });
    return found == items.end() ? nullptr : &*found;
}

// Every item of `wanted` but those that `apart` names stands in `sheet`.
bool has_items(const SetupSheet& sheet, const SetupSheet& wanted, const SetupSheet& apart) {
    return std::ranges::all_of(wanted.items, [&](const SetupItem& item) {
        if (item_of(apart.items, item.name)) return true;
        const SetupItem* there = item_of(sheet.items, item.name);
        return there && same_value(there->value, item.value);
    });
}

bool near(const std::optional<double>& value, double wanted, const std::optional<double>& before, double least) {
    return value && std::abs(*value - wanted) <= std::max(least, before ? of_change * std::abs(wanted - *before) : 0.0);
}

std::optional<double> mass_of(const SetupSheet& sheet) {
    return sheet.mass ? std::optional(sheet.mass->value_kg) : std::nullopt;
}

bool mass_fits(const SetupSheet& sheet, const SetupSheet& before, const SetupSheet& expected) {
    if (expected.mass) return near(mass_of(sheet), expected.mass->value_kg, mass_of(before), scales_kg);
    return !before.mass || !sheet.mass || std::abs(sheet.mass->value_kg - before.mass->value_kg) <= fuel_kg;
}

bool known_fits(const SetupSheet& sheet, const SetupSheet& before, const SetupSheet& expected,
                std::optional<KnownFigure> KnownFigures::* figure) {
    const auto value = [figure](const SetupSheet& of) {
        return of.known.*figure ? std::optional((of.known.*figure)->value) : std::nullopt;
    };
    const auto wanted = value(expected);
    return !wanted || near(value(sheet), *wanted, value(before), 0.0);
}

bool same_springs(const SetupSheet& sheet, const SetupSheet& before) {
    if (!sheet.springs || !before.springs) return !sheet.springs == !before.springs;
    const auto same = [](double a, double b) { return std::abs(a - b) <= of_rate * std::max(a, b); };
    return same(sheet.springs->front_n_per_m, before.springs->front_n_per_m) &&
           same(sheet.springs->rear_n_per_m, before.springs->rear_n_per_m);
}

bool fits(const SetupSheet& sheet, const SetupSheet& before, const SetupSheet& expected) {
    const std::string& tyre = expected.tyre.empty() ? before.tyre : expected.tyre;
    return base::same_name(sheet.tyre, tyre) && same_springs(sheet, before) && mass_fits(sheet, before, expected) &&
           known_fits(sheet, before, expected, &KnownFigures::downforce_area_m2) &&
           known_fits(sheet, before, expected, &KnownFigures::drag_area_m2) &&
           known_fits(sheet, before, expected, &KnownFigures::power_w) && has_items(sheet, expected, {}) &&
           has_items(sheet, before, expected) && has_items(before, sheet, expected);
}

} // namespace

bool expects_nothing(const SetupSheet& expected) {
    return !expected.mass && expected.tyre.empty() && expected.items.empty() && !expected.known.downforce_area_m2 &&
           !expected.known.drag_area_m2 && !expected.known.power_w;
}

bool reached(const SetupSheet& sheet, const SetupSheet& before, const SetupSheet& expected) {
    return !expects_nothing(expected) && fits(sheet, before, expected);
}

bool as_before(const SetupSheet& sheet, const SetupSheet& before) {
    return fits(sheet, before, {});
}

} // namespace lapwright::car
