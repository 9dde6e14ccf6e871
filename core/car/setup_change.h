// SPDX-License-Identifier: GPL-3.0-or-later
// What differs between two setup sheets: mass, tyre, then the items
// in the first one's order and those that the second alone has.
#pragma once

#include "core/base/display.h"
#include "core/car/setup_sheet.h"

#include <string>
#include <vector>

namespace lapwright::car {

// Neither mass nor tyre nor item: nothing can be compared with it.
[[nodiscard]] bool says_nothing(const SetupSheet& sheet);

struct SetupChange {
    std::string what;
    std::string before; // empty: not said
    std::string after;
};

// What is equal is left out; empty when one of the two says nothing at all.
[[nodiscard]] std::vector<SetupChange> setup_changes(const SetupSheet& before, const SetupSheet& after,
                                                     base::UnitSystem units);

// All of them on one line: "wing angle 3 deg → 7 deg, splitter — → long".
[[nodiscard]] std::string one_line(const std::vector<SetupChange>& changes);

} // namespace lapwright::car
