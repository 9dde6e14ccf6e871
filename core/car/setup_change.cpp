// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/setup_change.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"

#include <algorithm>

namespace lapwright::car {
namespace {

using base::said;

std::string mass_text(const SetupSheet& sheet, base::UnitSystem units) {
    return sheet.mass ? base::figure_with_unit(sheet.mass->value_kg, base::Quantity::mass, units, 0) : "";
}

std::string springs_text(const SetupSheet& sheet) {
    if (!sheet.springs) return {};
    const auto rate = [](double n_per_m) { return base::fixed_text(n_per_m / 1000.0, 0); };
    return rate(sheet.springs->front_n_per_m) + " / " + rate(sheet.springs->rear_n_per_m) + " N/mm";
}

std::string value_of(const std::vector<SetupItem>& items, const std::string& name) {
    const auto found = std::ranges::find(items, name, &SetupItem::name);
    return found == items.end() ? "" : found->value;
}

void add(std::vector<SetupChange>& changes, const std::string& what, const std::string& before,
         const std::string& after) {
    if (before != after) changes.push_back({what, before, after});
}

} // namespace

bool says_nothing(const SetupSheet& sheet) {
    return !sheet.mass && sheet.tyre.empty() && sheet.items.empty();
}

std::vector<SetupChange> setup_changes(const SetupSheet& before, const SetupSheet& after, base::UnitSystem units) {
    std::vector<SetupChange> changes;
    if (says_nothing(before) || says_nothing(after)) return changes;
    add(changes, said("mass"), mass_text(before, units), mass_text(after, units));
    add(changes, said("tyre"), before.tyre, after.tyre);
    add(changes, said("springs"), springs_text(before), springs_text(after));
    for (const SetupItem& item : before.items)
        add(changes, item.name, item.value, value_of(after.items, item.name));
    for (const SetupItem& item : after.items) {
        if (std::ranges::find(before.items, item.name, &SetupItem::name) == before.items.end())
            add(changes, item.name, "", item.value);
    }
    return changes;
}

std::string one_line(const std::vector<SetupChange>& changes) {
    const auto shown = [](const std::string& value) { return value.empty() ? "—" : value; };
    std::string line;
    for (const SetupChange& change : changes)
        line += (line.empty() ? "" : ", ") + change.what + " " + shown(change.before) + " → " + shown(change.after);
    return line;
}

} // namespace lapwright::car
