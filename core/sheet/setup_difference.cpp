// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/setup_difference.h"

#include "core/car/setup_change.h"

namespace lapwright::sheet {

std::vector<Pair> setup_difference(const car::SetupSheet& a, const car::SetupSheet& b, base::UnitSystem units) {
    const auto said = [](const std::string& value) { return value.empty() ? "—" : value; };
    std::vector<Pair> pairs;
    for (const car::SetupChange& change : car::setup_changes(a, b, units))
        pairs.push_back({change.what, said(change.before) + " · " + said(change.after), Favours::neither});
    return pairs;
}

} // namespace lapwright::sheet
