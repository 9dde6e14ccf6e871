// SPDX-License-Identifier: GPL-3.0-or-later
// A receiver that has lost its signal writes its last fix again and again, from one row to
// some seconds, and some fill the rows before their first fix with it.  Such a repeat says
// where the car was, not where it is: it is no measurement. A car that stands repeats its
// fix too, and a coarse one may stay the same while the car creeps: those are left.
#pragma once

#include "core/motion/measurements.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lapwright::motion {

// Positions as they were written, in metres, and the step that the writing resolves.
struct Fixes {
    std::span<const double> time_s;
    std::span<const Vec2> position_m;
    double quantisation_m = 0.0;
};

// 1 for each fix that repeats its neighbour while the car drove on by more than the writing's resolution: told by the
// speed, by the jump that ends the run, or by how far the car got in the second before or behind it.  Of each run the
// fix that tells where the car was is kept.  splits_s: nothing is joined across these.
[[nodiscard]] std::vector<std::uint8_t> frozen_fixes(const Fixes& fixes, const Series& speed,
                                                     std::span<const double> splits_s);

// 1 for each sample that repeats its neighbour at one of the moments (increasing) at which fixes were frozen; and for
// the repeats in runs that are longer than chance makes them in this series and end in a jump.
[[nodiscard]] std::vector<std::uint8_t> frozen_values(const Series& series, std::span<const double> frozen_fix_s);

// Moments at which speed and course together repeat their neighbours for longer than chance makes them, until one of
// them jumps; none where they are not on the same stamps.
[[nodiscard]] std::vector<double> frozen_velocity_s(const Series& speed, const Series& course);

// The smallest step between two values, 0 where there is none.
[[nodiscard]] double quantisation(std::span<const double> values);

} // namespace lapwright::motion
