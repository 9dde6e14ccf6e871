// SPDX-License-Identifier: GPL-3.0-or-later
// Quasi-steady-state speed over a driven path: a backward pass for braking, a forward pass for power, traction, shifts
// and pedals, both under one friction ellipse; then smoothed over the driver's response time so that acceleration is
// continuous. Works on E = v^2 / 2 (m^2/s^2), whose slope along the path is the acceleration.
#pragma once

#include <cstddef>
#include <vector>

#include "tests/truth/car.h"

namespace truth {

/// The road and what the driver asks of it at one grid point.
struct RoadPoint {
    double path_step_m = 1.0;          // path length to the next grid point
    double curvature_per_m = 0.0;      // of the driven path
    double slope = 0.0;                // d height / d path
    double lateral_gravity_mps2 = 0.0; // positive to the left
    double headwind_mps = 0.0;
    double grip_share = 1.0;
    double brake_share = 1.0;
    double exit_share = 1.0;
    double throttle_limit = 1.0;
};

struct Pedals {
    double coast_s = 0.0;
    double throttle_ramp_s = 0.0;
    double response_s = 0.0;
};

struct SpeedProfile {
    std::vector<double> energy;   // v^2/2 at each grid point
    std::vector<double> throttle; // 0..1
    std::vector<double> brake;    // 0..1, share of what full braking in a straight line gives
    std::vector<int> gear;        // from 1
};

[[nodiscard]] SpeedProfile solve_speed(const CarTruth& car, double air_density, const std::vector<RoadPoint>& road,
                                       const Pedals& pedals, double start_speed_mps, double end_speed_mps);

} // namespace truth
