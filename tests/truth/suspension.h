// SPDX-License-Identifier: GPL-3.0-or-later
// Suspension travel of a car that follows its loads at once (wind left out): static weight, downforce, what driving and
// braking move from axle to axle less the part that links carry, what cornering moves from side to side, and the road's
// bumps, the same lap after lap.
#pragma once

#include <array>

#include "tests/truth/random.h"
#include "tests/truth/session.h"

namespace truth {

struct SuspensionTruth {
    double front_n_per_m = 70e3; // one wheel
    double rear_n_per_m = 60e3;
    double front_of_weight = 0.55;
    double front_of_downforce = 0.45;
    double attitude_factor = 1.0; // of the downforce on a straight to that in a corner, which the car's figure is
    double height_over_wheelbase = 0.19; // of the centre of gravity
    double height_over_track = 0.32;
    double anti_dive = 0.15; // share of the transfer that links carry
    double anti_squat = 0.25;
    double bump_sd_m = 0.002; // of the road, at each wheel
    double noise_sd_m = 0.0005;
    double front_sign = 1.0; // travel counts as compression
    double rear_sign = 1.0;
    double zero_m = 0.03;
};

/// A club car's, from a seed.
[[nodiscard]] SuspensionTruth draw_suspension(Random& random);

enum Wheel { front_left, front_right, rear_left, rear_right };

/// Travel of the four wheels without the sensor's noise; index: Wheel.
[[nodiscard]] std::array<double, 4> suspension_travel_m(const SuspensionTruth& suspension, const CarTruth& car,
                                                        double air_density, const TruthSample& sample);

} // namespace truth
