// SPDX-License-Identifier: GPL-3.0-or-later
// What differs between the setups of A and B, a line each: "wing angle 7 deg · 3 deg".
#pragma once

#include "core/base/display.h"
#include "core/car/setup_sheet.h"
#include "core/sheet/sheet.h"

#include <vector>

namespace lapwright::sheet {

// Mass, tyre, aero, then the other items in A's order and those that B alone has; what is equal is left out, what is
// missing is a dash.  Empty when one of the two sheets says nothing at all.
[[nodiscard]] std::vector<Pair> setup_difference(const car::SetupSheet& a, const car::SetupSheet& b,
                                                 base::UnitSystem units);

} // namespace lapwright::sheet
