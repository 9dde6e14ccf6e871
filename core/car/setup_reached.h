// SPDX-License-Identifier: GPL-3.0-or-later
// Whether a car was driven as it was meant to be: the setup sheet of a later session against what was to be changed.
#pragma once

#include "core/car/setup_sheet.h"

namespace lapwright::car {

// Nothing in it that a later sheet could reach.
[[nodiscard]] bool expects_nothing(const SetupSheet& expected);

// Every value that `expected` names is reached: mass and known figures to a fifth of their change from `before` (and
// 2 kg, as scales are read), numbers of items to a hundredth with the same unit, words by their letters.  All that it
// does not name is as before: tyre, springs and items, and the mass to 10 kg, some laps of fuel (common practice, no
// source).  An expectation of nothing is never reached.
[[nodiscard]] bool reached(const SetupSheet& sheet, const SetupSheet& before, const SetupSheet& expected);

// As before in all of this.
[[nodiscard]] bool as_before(const SetupSheet& sheet, const SetupSheet& before);

} // namespace lapwright::car
