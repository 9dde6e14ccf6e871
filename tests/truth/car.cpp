// SPDX-License-Identifier: GPL-3.0-or-later
// See car.h for the equations. Figures of the two demo cars are invented.
#include "tests/truth/car.h"

#include <algorithm>
#include <cmath>

namespace truth {
namespace {

double power_share(const std::vector<PowerPoint>& curve, const double rpm) {
    if (curve.empty()) return 1.0;
    if (rpm <= curve.front().engine_rpm) return curve.front().share;
    for (std::size_t i = 1; i < curve.size(); ++i) {
        if (rpm > curve[i].engine_rpm) continue;
        const double part = (rpm - curve[i - 1].engine_rpm) / (curve[i].engine_rpm - curve[i - 1].engine_rpm);
        return curve[i - 1].share + part * (curve[i].share - curve[i - 1].share);
    }
    return curve.back().share;
}

} // namespace

double downforce_factor(const CarTruth& car, const double air_density) {
    return air_density * car.downforce_area_m2 / (2.0 * car.mass_kg);
}

double drag_factor(const CarTruth& car, const double air_density) {
    return air_density * car.drag_area_m2 / (2.0 * car.mass_kg);
}

double tyre_limit_mps2(const CarTruth& car, const double air_density, const double speed_squared) {
    const double load = 1.0 + downforce_factor(car, air_density) * speed_squared / kGravity_mps2;
    const double grip = car.load_exponent == 1.0 ? load : std::pow(load, car.load_exponent);
    return car.mu * kGravity_mps2 * grip;
}

double corner_speed_squared(const CarTruth& car, const double air_density, const double curvature_per_m,
                            const double share, const double ceiling, const double help_mps2) {
    const double bend = std::abs(curvature_per_m);
    const double k = downforce_factor(car, air_density);
    const double slack = bend - share * car.mu * k;
    const double linear = slack > 0.0 ? (share * car.mu * kGravity_mps2 + help_mps2) / slack : ceiling;
    double w = std::min(linear, ceiling);
    if (car.load_exponent == 1.0) return w;
    if (bend * w - help_mps2 <= share * tyre_limit_mps2(car, air_density, w)) return w;
    for (int i = 0; i < 8; ++i) { // convex from above: Newton decreases towards the root
        const double limit = share * tyre_limit_mps2(car, air_density, w);
        const double slope = car.load_exponent * limit * k / (kGravity_mps2 + k * w);
        w -= (bend * w - help_mps2 - limit) / (bend - slope);
    }
    return w;
}

double engine_rpm(const CarTruth& car, const int gear, const double speed_mps) {
    return car.redline_rpm * speed_mps / car.gear_top_mps[static_cast<std::size_t>(gear - 1)];
}

double power_at(const CarTruth& car, const int gear, const double speed_mps) {
    return car.power_w * power_share(car.power_curve, engine_rpm(car, gear, speed_mps));
}

CarTruth light_aero_hatch() {
    return {};
}

CarTruth heavy_powerful_coupe() {
    CarTruth car;
    car.mass_kg = 1465.0;
    car.mu = 1.36;
    car.downforce_area_m2 = 0.9;
    car.drag_area_m2 = 0.75;
    car.power_w = 364e3;
    car.shift_s = 0.13;
    car.lifts_to_shift = true;
    car.gear_top_mps = {24.0, 35.0, 47.0, 59.0, 71.0, 84.0};
    car.redline_rpm = 6800.0;
    return car;
}

} // namespace truth
