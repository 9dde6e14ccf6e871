// SPDX-License-Identifier: GPL-3.0-or-later
// Where both cars of a pairing are while it is played: at the same place, or on the same clock.  Times are of each
// recording; places are of the common line.
#pragma once

#include "core/analysis/analysis.h"
#include "core/workspace/session_key.h"

namespace lapwright::workspace {

struct PlayedMoment {
    double place_m = 0.0; // of A, and of the cursor
    double time_a_s = 0.0;
    double time_b_s = 0.0;
};

// Both at one place.
[[nodiscard]] PlayedMoment at_place(const analysis::Pairing& pairing, double place_m);
// One at a moment of its recording, the other at the same place; a time outside the lap is taken to its end.
[[nodiscard]] PlayedMoment at_time_of(const analysis::Pairing& pairing, Side side, double time_s);
// A at a moment, B as long behind its own passing of from_m: who is out first.
[[nodiscard]] PlayedMoment on_one_clock(const analysis::Pairing& pairing, double from_m, double time_a_s);
// How much faster than life B is shown there so that both are at the same metre: above 1 where B is the slower one.
[[nodiscard]] double stretch_of_b(const analysis::Pairing& pairing, double place_m);

} // namespace lapwright::workspace
