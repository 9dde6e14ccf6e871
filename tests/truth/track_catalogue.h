// SPDX-License-Identifier: GPL-3.0-or-later
// The tracks that tests drive on: one invented circuit for whole sessions, and simple shapes with closed forms.
// Frame, axes and signs as in track_shape.h; all shapes are driven counter-clockwise unless stated.
#pragma once

#include <string>
#include <vector>

#include "tests/truth/track_shape.h"

namespace truth {

/// One corner and the straight that follows it, for build_circuit.
struct CornerPlan {
    std::string name;
    double turn_deg = 0.0; // positive to the left
    double radius_m = 50.0;
    double transition_m = 20.0;      // each side; curvature grows as 3u^2 - 2u^3 (C1), or linearly for a clothoid
    double straight_after_m = 100.0; // wished; changed a little so that the lap closes exactly
    std::string straight_name;
    double bank_rad = 0.0; // the inside is lower by this
};

struct CircuitPlan {
    std::string name;
    std::string first_straight_name;
    double first_straight_m = 400.0; // from the gate to the first corner
    double length_m = 3900.0;        // met exactly
    bool clothoids = false;
    std::vector<CornerPlan> corners; // turns must add up to 360 degrees
    GeodeticOrigin origin;
    StartPose start;
    std::vector<HeightWave> waves;
};

/// Straights are changed by the smallest weighted amount that closes the lap and meets the length exactly.
[[nodiscard]] TrackShape build_circuit(const CircuitPlan& plan);

/// Ternbank, an invented circuit on a sandbank in open sea: 3.9 km, nine corners, gate on the main straight.
[[nodiscard]] TrackShape ternbank();
/// The same with a gentle height profile (about +-4 m, slope up to 2 %).
[[nodiscard]] TrackShape ternbank_with_hills();

[[nodiscard]] TrackShape circle(double radius_m);
/// Two straights and two half circles; station 0 at the start of a straight. Curvature jumps (no transitions).
[[nodiscard]] TrackShape stadium(double straight_m, double radius_m);
/// Semi-axes a > b, station 0 at the end of the long axis.
[[nodiscard]] TrackShape ellipse(double a_m, double b_m);
/// Curvature is a sine of the station, turning number 0, crosses itself once; closes because J0 has a zero there.
[[nodiscard]] TrackShape figure_eight(double length_m);

} // namespace truth
