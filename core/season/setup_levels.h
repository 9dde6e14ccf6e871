// SPDX-License-Identifier: GPL-3.0-or-later
// What a car's setup sheets say over its sessions: each item that changed, with its values, and what a change of such
// an item usually does to the car's figures.  An item's kind is read off the words of its name.
#pragma once

#include "core/car/setup_sheet.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::season {

enum class ItemKind { aero, drive, tyre, other };

[[nodiscard]] ItemKind kind_of(std::string_view item_name);

// Standard deviation of the difference that two values of an item make (common practice, no source).
struct UsualEffect {
    double log_grip = 0.0;
    double downforce_area_m2 = 0.0;
    double drag_area_m2 = 0.0;
    double log_power = 0.0;
};
[[nodiscard]] UsualEffect usual_effect(ItemKind kind);

struct SetupLevels {
    std::string item;
    ItemKind kind = ItemKind::other;
    std::vector<std::string> values;     // as they came, at least two; empty: the item was not mounted or not named
    std::vector<std::size_t> of_session; // one a session, a place in `values`
};

// setups: in the order of time.  A sheet that says nothing counts as the one before it.
[[nodiscard]] std::vector<SetupLevels> setup_levels(const std::vector<car::SetupSheet>& setups);

} // namespace lapwright::season
