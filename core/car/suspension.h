// SPDX-License-Identifier: GPL-3.0-or-later
// Downforce straight from the springs: on straights they carry weight and downforce, so the sum of the four wheels'
// loads grows with speed squared, whatever the tyres do.
//
//   L = kf (z_fl + z_fr) + kr (z_rl + z_rr) = L0 + S v² + p a⁺ + q a⁻ + e,     S = ρ ClA / 2,  L0 one a lap
//
// a⁺ and a⁻: driving and braking; links and springs share what they do to the wheels' loads, each in its own way, so
// the springs alone may see more or less than nothing of it.  Which way a channel counts is read off braking, which
// presses the front in and lets the rear come up.  Samples of one straight share its bumps and crests: errors are
// clustered by straight (Liang and Zeger 1986; from memory).
#pragma once

#include "core/car/car_figures.h"

#include <string>

namespace lapwright::car {

struct SuspensionDownforce {
    double n_per_mps2 = 0.0; // S
    double sd = 0.0;         // of the fit and the spring rates, and of how a car's attitude changes what it is given
    std::string untold = {}; // empty, or why travel was recorded and yet tells nothing

    [[nodiscard]] bool told() const { return untold.empty(); }
};

// Absent where no travel was recorded.
[[nodiscard]] std::optional<SuspensionDownforce> suspension_downforce(const CarData& data);

// What recorded travel would tell were its springs known; absent where it would tell nothing.
[[nodiscard]] std::optional<UntoldTravel> springs_would_tell(const CarData& data);

} // namespace lapwright::car
