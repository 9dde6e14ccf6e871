// SPDX-License-Identifier: GPL-3.0-or-later
// Cars from a club hatch to a winged coupe, drivers from steady to scrappy, outings from one clean lap to a dozen.
#include <algorithm>
#include <cmath>
#include <numbers>

#include "tests/worlds/draws.h"
#include "tests/worlds/world.h"

namespace worlds {

truth::CarTruth draw_car(std::uint64_t seed, std::uint64_t stream) {
    truth::Random field(seed, 20'900); // who compares laps drives in one class: tyres, power and mass are alike
    const double class_mu = between(field, 1.05, 1.40);
    const double class_power_w_per_kg = between(field, 125.0, 270.0);
    const double class_mass_kg = between(field, 900.0, 1600.0);
    truth::Random random(seed, 20'000 + stream);
    truth::CarTruth car;
    car.mass_kg = class_mass_kg * between(random, 0.88, 1.12);
    car.mu = class_mu * between(random, 0.95, 1.05);
    // Milliken and Milliken 1995, fig. 2.9, and what handbooks say of lateral force over load: 0.7 to 0.9; slicks to 1.
    car.load_exponent = between(random, 0.72, 1.0);
    const bool winged = chance(random, 0.5);
    car.downforce_area_m2 = winged ? between(random, 1.0, 3.6) : between(random, -0.1, 0.5);
    car.drag_area_m2 = between(random, 0.55, 0.75) + std::max(0.0, car.downforce_area_m2) * between(random, 0.08, 0.2);
    car.power_w = car.mass_kg * class_power_w_per_kg * between(random, 0.85, 1.15);
    car.rolling_resistance = between(random, 0.010, 0.017);
    car.rotating_share = between(random, 0.02, 0.045);
    car.brake_efficiency = between(random, 0.90, 1.0);
    car.traction_share = between(random, 0.52, 0.85);
    car.shift_s = between(random, 0.05, 0.30);
    car.lifts_to_shift = chance(random, 0.5);
    car.redline_rpm = between(random, 5800.0, 8800.0);
    const double first = between(random, 18.0, 25.0);
    const double ratio =
        std::pow(between(random, 64.0, 86.0) / first, 0.2); // six gears up to any speed that is reached
    car.gear_top_mps.clear();
    for (int gear = 0; gear < 6; ++gear)
        car.gear_top_mps.push_back(first * std::pow(ratio, gear));
    if (chance(random, 0.6)) {
        const double low = between(random, 0.55, 0.85);
        car.power_curve = {{0.3 * car.redline_rpm, 0.7 * low},
                           {0.6 * car.redline_rpm, low},
                           {0.85 * car.redline_rpm, 1.0},
                           {car.redline_rpm, between(random, 0.93, 1.0)}};
    }
    return car;
}

truth::DriverTruth draw_driver(std::uint64_t seed, std::uint64_t stream, std::size_t corners) {
    truth::Random random(seed, 30'000 + stream);
    truth::DriverTruth driver;
    driver.style_seed = 2 * seed + stream;
    driver.grip_share = between(random, 0.92, 0.98);
    driver.grip_share_habit_sd = between(random, 0.008, 0.03);
    driver.grip_share_lap_sd = between_log(random, 0.003, 0.015);
    driver.brake_share = between(random, 0.80, 0.94);
    driver.brake_share_lap_sd = between_log(random, 0.006, 0.03);
    driver.exit_share = between(random, 0.88, 0.97);
    driver.line_half_width_m = between(random, 2.0, 4.5);
    driver.line_habit_sd_m = between(random, 0.15, 0.5);
    driver.line_lap_sd_m = between_log(random, 0.08, 0.4);
    driver.coast_s = between(random, 0.05, 0.3);
    driver.throttle_ramp_s = between(random, 0.2, 0.6);
    driver.response_s = between(random, 0.15, 0.3);
    driver.corner_factor.assign(corners, 1.0);
    for (double& factor : driver.corner_factor)
        if (chance(random, 0.12)) factor = between(random, 0.85, 0.96); // nerve, not tyres
    return driver;
}

truth::SessionPlan draw_outing(std::uint64_t seed, std::uint64_t stream, const truth::TrackShape& track) {
    truth::Random day(seed, 40'000);
    truth::SessionPlan plan;
    plan.air_density = between(day, 1.04, 1.27);
    const double wind_mps = chance(day, 0.5) ? between(day, 0.0, 5.0) : 0.0;
    const double wind_to = between(day, 0.0, 2.0 * std::numbers::pi);
    plan.wind_east_mps = wind_mps * std::cos(wind_to);
    plan.wind_north_mps = wind_mps * std::sin(wind_to);
    truth::Random random(seed, 41'000 + stream);
    plan.flying_laps = 3 + static_cast<int>(index_below(random, 7));
    if (chance(random, 0.1)) plan.flying_laps = 1; // one lap, and home
    plan.pit_lane = chance(random, 0.85);          // else the file begins and ends on the line at racing pace
    if (!plan.pit_lane) plan.start_speed_mps = between(random, 10.0, 25.0);
    if (chance(random, 0.5) && plan.flying_laps > 2)
        plan.traffic_lap = 1 + static_cast<int>(index_below(random, static_cast<std::size_t>(plan.flying_laps)));
    for (int lap = 1; lap <= plan.flying_laps; ++lap) {
        if (plan.flying_laps < 3 || lap == plan.traffic_lap || !chance(random, 0.12)) continue;
        const double from_m = between(random, 0.05, 0.85) * track.length_m();
        plan.mistakes.push_back(
            {lap, from_m, from_m + between(random, 80.0, 300.0), between(random, 0.5, 0.8), between(random, 0.2, 0.6)});
    }
    if (chance(random, 0.3)) plan.standing_s = between(random, 2.0, 60.0);
    if (plan.standing_s > 0.0) plan.start_speed_mps = 3.0; // nobody is at speed at once
    return plan;
}

Stated draw_stated(std::uint64_t seed, std::uint64_t stream, double mass_kg, double air_density) {
    constexpr double dry_air_j_per_kg_k = 287.05;
    constexpr double temperature_k = 293.15;
    truth::Random random(seed, 42'000 + stream);
    return {mass_kg + 10.0 * random.normal(), temperature_k + random.normal(),
            air_density * dry_air_j_per_kg_k * temperature_k + 200.0 * random.normal(),
            std::abs(0.1 * random.normal())};
}

} // namespace worlds
