// SPDX-License-Identifier: GPL-3.0-or-later
// The lap of one draw after the car was changed, with what the simulation itself gets wrong: it knows neither shifts
// nor pedals, and a driver does not use a change of the tyres' forces to the full, or more than that.
#pragma once

#include "core/causes/explanation.h"

#include <array>
#include <cstddef>
#include <span>
#include <utility>
#include <vector>

namespace lapwright::causes {

// Relative error of what an exchange is worth with both cars known (measured on tests/worlds).  Index: Cause.
inline constexpr std::array<double, cause_count> model_error_sd{0.045, 0.045, 0.06, 0.06, 0.06};
// Of what more or less grip or downforce is worth, a driver has to make use (common practice, no source).
inline constexpr double adaptation_sd = 0.10;

// The car as it is after each change, one upon the other, and whose change it was.
using Changed = std::vector<std::pair<Cause, car::SimulatedCar>>;

// Change of the time of every segment.  The same draw errs alike in every call.
[[nodiscard]] std::vector<double> simulated_change(const CarModel& model, std::size_t draw, const Changed& after);

} // namespace lapwright::causes
