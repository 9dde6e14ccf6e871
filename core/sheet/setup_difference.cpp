// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/setup_difference.h"

#include <algorithm>
#include <string>

namespace lapwright::sheet {
namespace {

using car::SetupItem;
using car::SetupSheet;

bool says_nothing(const SetupSheet& sheet) {
    return !sheet.mass && sheet.tyre.empty() && sheet.items.empty();
}

std::string mass_text(const SetupSheet& sheet, base::UnitSystem units) {
    return sheet.mass ? base::figure_with_unit(sheet.mass->value_kg, base::Quantity::mass, units, 0) : "";
}

std::string value_of(const std::vector<SetupItem>& items, const std::string& name) {
    const auto found = std::ranges::find(items, name, &SetupItem::name);
    return found == items.end() ? "" : found->value;
}

void add(std::vector<Pair>& pairs, const std::string& name, const std::string& a, const std::string& b) {
    if (a == b) return;
    pairs.push_back({name, (a.empty() ? "—" : a) + " · " + (b.empty() ? "—" : b), Favours::neither});
}

} // namespace

std::vector<Pair> setup_difference(const SetupSheet& a, const SetupSheet& b, base::UnitSystem units) {
    std::vector<Pair> pairs;
    if (says_nothing(a) || says_nothing(b)) return pairs;
    add(pairs, "mass", mass_text(a, units), mass_text(b, units));
    add(pairs, "tyre", a.tyre, b.tyre);
    for (const SetupItem& item : a.items)
        add(pairs, item.name, item.value, value_of(b.items, item.name));
    for (const SetupItem& item : b.items) {
        if (std::ranges::find(a.items, item.name, &SetupItem::name) == a.items.end())
            add(pairs, item.name, "", item.value);
    }
    return pairs;
}

} // namespace lapwright::sheet
