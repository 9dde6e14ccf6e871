// SPDX-License-Identifier: GPL-3.0-or-later
// The true car: a point mass with downforce, drag, power at the wheels and one friction ellipse. Everything is per
// unit of mass in the equations, as a satellite receiver sees it; v of the forces is that through the air.
//   lateral   a_y - g sin(bank) <= mu g (1 + k v^2 / g)^load_exponent,  k = rho ClA / 2m
//   along     (1 + rotating) a = tyre - rho CdA v^2 / 2m - c_rr g - g slope
#pragma once

#include <vector>

namespace truth {

inline constexpr double kGravity_mps2 = 9.80665;

/// Share of the full power at an engine speed; piecewise linear between points sorted by engine speed.
struct PowerPoint {
    double engine_rpm = 0.0;
    double share = 1.0;
};

struct CarTruth {
    double mass_kg = 1325.0;
    double mu = 1.30;
    double load_exponent = 1.0; // 1: friction does not depend on load
    double downforce_area_m2 = 2.9;
    double drag_area_m2 = 1.1;
    double power_w = 312e3; // at the wheels, flat unless power_curve is given
    std::vector<PowerPoint> power_curve;
    double rolling_resistance = 0.013;
    double rotating_share = 0.03;   // added to the mass in the equation along the path
    double brake_efficiency = 0.98; // share of the tyres' grip that full braking can use
    double traction_share = 0.62;   // share of the tyres' grip on the driven wheels
    double shift_s = 0.10;          // no drive for so long at each upshift
    bool lifts_to_shift = false;    // the pedal shows the shift
    std::vector<double> gear_top_mps{22.0, 31.0, 40.0, 50.0, 60.5, 75.0}; // upshift speeds
    double redline_rpm = 7200.0;
};

[[nodiscard]] double downforce_factor(const CarTruth& car, double air_density); // k above, 1/m
[[nodiscard]] double drag_factor(const CarTruth& car, double air_density);      // rho CdA / 2m, 1/m

/// Largest acceleration the tyres give in one direction at a speed squared, before any driver's share.
[[nodiscard]] double tyre_limit_mps2(const CarTruth& car, double air_density, double speed_squared);

/// Highest speed squared on a curvature with `share` of the grip used; `ceiling` where downforce outruns the need.
/// `help_mps2` is gravity along a banked road towards the inside.
[[nodiscard]] double corner_speed_squared(const CarTruth& car, double air_density, double curvature_per_m, double share,
                                          double ceiling, double help_mps2 = 0.0);

/// Power at the wheels in a gear (counted from 1) at a speed.
[[nodiscard]] double power_at(const CarTruth& car, int gear, double speed_mps);
[[nodiscard]] double engine_rpm(const CarTruth& car, int gear, double speed_mps);

/// The two invented cars of the demo.
[[nodiscard]] CarTruth light_aero_hatch();
[[nodiscard]] CarTruth heavy_powerful_coupe();

} // namespace truth
