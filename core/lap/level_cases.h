// SPDX-License-Identifier: GPL-3.0-or-later
// How far two receivers' maps may lie apart before the laps are looked at.
//
// Draws of a motion know how fast a receiver's error walks, not over how long it forgets where it was, and so not how
// far its mean over a session lies off: that is one of several, each as likely as it lets the shift that was seen be.
#pragma once

#include "core/lap/road_shift.h"

#include <span>
#include <vector>

namespace lapwright::lap {

// Of one session's draws.
struct DrawnLevel {
    double variance = 0.0; // of their mean shift over the session, per axis, m²
    double span_s = 0.0;   // of the session's laps
};

// What the draws' levels are to be multiplied by, and the share of the shift seen that is then the receivers'.
struct LevelCase {
    double own_scale = 1.0;
    double first_scale = 1.0;
    double gain = 0.0;
    double chance = 0.0; // they sum to 1
};

// seen: the shift of the own map against the first's.
[[nodiscard]] std::vector<LevelCase> level_cases(const DrawnLevel& own, const DrawnLevel& first, const Shift& seen);

[[nodiscard]] double mean_gain(std::span<const LevelCase> cases);

// The case in which the chances up to it reach `share`, 0..1.
[[nodiscard]] const LevelCase& case_at(std::span<const LevelCase> cases, double share);

} // namespace lapwright::lap
