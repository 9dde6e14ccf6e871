// SPDX-License-Identifier: GPL-3.0-or-later
// Grip and downforce of one car over many outings, in one model (the places and their signs: core/car/grip_model.h):
//
//   corner c of outing s:  ln a_lat = L_s + n ln(1 + k_s v²/g) − τ f + b_c + w
//   braking zone:          ln a_brake = L_s + β + n ln(1 + k_s v²/g) + d_c + δ_c reach + w
//   L_s = limit + driver + track + tyre and other items of the setup + day
//   k_s = ρ_s A_s / 2 m_s,   A_s = area of the car + what the items of that setup change
//
// A driver's habit in a corner (b_c), how a zone is braked (β, d_c, δ_c), the tyres' load exponent n and the car's own
// area are the same in all outings, so that what changes between them is told by every corner against itself, and a
// change of the wing tells through n and its curve over speed also what the area was before.  The most likely values
// by Gauss and Newton, their spread by Laplace's approximation, mixed over how uneven drivers are (σ_b) and how well a
// place is repeated from outing to outing (σ_w): Rue, Martino and Chopin 2009.  Corners below their limit by choice
// and flat ones are left out; those that may be count as much as they are likely at it.
// Stated priors: those of grip_model.h, and (common practice, no source) 4 % of grip between tracks, 2 % between days
// and between drivers, σ_w 0.6 %, a factor of two either way.
#pragma once

#include "core/base/fit_outcome.h"
#include "core/season/outing.h"
#include "core/season/setup_levels.h"

#include <cstdint>
#include <vector>

namespace lapwright::season {

// One that the laps allow, in the order of the outings; effects in the order of the items and their values, against
// each item's first value.
struct GripOverDraw {
    std::vector<double> log_limit; // ln of m/s², at the car's own weight, as its usual driver uses it
    std::vector<double> downforce_area_m2;
    std::vector<std::vector<double>> grip_effects; // ln
    std::vector<std::vector<double>> area_effects;
    double load_exponent = 1.0;
};

struct GripOverOutings {
    base::FitOutcome outcome; // rests on corners and braking zones
    std::vector<GripOverDraw> draws;
};

[[nodiscard]] GripOverOutings fit_grip_over(const std::vector<Outing>& outings, const std::vector<SetupLevels>& levels,
                                            std::size_t draws, std::uint64_t seed);

} // namespace lapwright::season
