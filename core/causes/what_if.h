// SPDX-License-Identifier: GPL-3.0-or-later
// The lap after a change of the car: the same simulation, the same driver, over the draws of what is known, with what
// the simulation gets wrong and how far a driver makes use of a change (simulated_change.h).
#pragma once

#include "core/causes/explanation.h"

#include <cstddef>
#include <vector>

namespace lapwright::causes {

// Change of the lap and of every segment.  At most `draws` of the model's draws are used (few are quick enough for a
// slider: 40 take some 20 ms on a lap of 4 km).  Untold where the model does not know what is changed.
[[nodiscard]] Prediction what_if(const CarModel& model, const Change& change, std::size_t draws = 40);

// 10 % downforce, 10 % drag, 1 % grip, 10 kg, 10 kW; without the last two where figures are per kilogram.
[[nodiscard]] std::vector<Sensitivity> sensitivities(const CarModel& model, std::size_t draws = 40);

} // namespace lapwright::causes
