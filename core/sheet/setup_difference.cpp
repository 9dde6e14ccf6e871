// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/setup_difference.h"

#include "core/base/plain_text.h"
#include "core/base/translation.h"
#include "core/car/setup_change.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace lapwright::sheet {
namespace {

// Parts that make aero, as setup sheets call them: common practice, no source.
constexpr std::array<std::string_view, 13> aero{"wing",      "splitter",    "lip",    "spoiler", "diffuser",
                                                "flap",      "canard",      "gurney", "skirt",   "floor",
                                                "undertray", "ride height", "rake"};

// What the causes are made of comes first; fuel is in the mass already.
int rank(const std::string& name) {
    const std::string lower = base::lower_case(name);
    const auto names = [&](std::string_view word) { return lower.find(word) != std::string::npos; };
    if (lower == base::lower_case(base::said("mass")) || lower == base::lower_case(base::said("tyre"))) return 0;
    if (std::ranges::any_of(aero, names)) return 1;
    return names("fuel") ? 3 : 2;
}

} // namespace

std::vector<Pair> setup_difference(const car::SetupSheet& a, const car::SetupSheet& b, base::UnitSystem units) {
    const auto shown = [](const std::string& value) { return value.empty() ? "—" : value; };
    std::vector<Pair> pairs;
    for (const car::SetupChange& change : car::setup_changes(a, b, units))
        pairs.push_back({change.what, shown(change.before) + " · " + shown(change.after), Favours::neither});
    std::ranges::stable_sort(pairs, {}, [](const Pair& pair) { return rank(pair.name); });
    return pairs;
}

} // namespace lapwright::sheet
