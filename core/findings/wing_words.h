// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing a track wants, in words for window and command line.
#pragma once

#include "core/causes/aero_balance.h"

#include <string>

namespace lapwright::findings {

// "A is quickest with 0.8 m² more downforce (0.1 to 1.6), worth 0.12 ±0.10 s a lap; from 0.3 to 1.5 m² more it is
// within 0.05 s of that."  No stronger than the interval; why, where it cannot be told.
[[nodiscard]] std::string wing_sentence(const causes::AeroBalance& balance, const std::string& whose, bool on_a_tonne);

// "0.15 ±0.10 m² of drag for each m² of downforce"
[[nodiscard]] std::string drag_cost_text(const causes::DragCost& cost);

} // namespace lapwright::findings
