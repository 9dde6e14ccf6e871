// SPDX-License-Identifier: GPL-3.0-or-later
// The lap simulation, coasting, against the times of 40 CFR 86.529-98 (see README.md).
#include "core/car/lap_simulation.h"

#include "core/base/constants.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <vector>

using namespace lapwright;

namespace {

// Seconds from 70 to 60 km/h: a bend holds the start at 72 km/h, then nothing drives.
double coast_s(double mass_kg, double a_n, double c_n_per_kmh2) {
    constexpr double g = base::standard_gravity_mps2;
    car::SimulatedCar car;
    car.grip = 1.0;
    car.mass_kg = mass_kg;
    car.power_w = 60e3;
    car.drag_n_per_mps2 = c_n_per_kmh2 * 3.6 * 3.6;
    car.rolling_resistance = a_n / (mass_kg * g);
    car::Course course;
    course.step_m.assign(2400, 0.25);
    course.curvature_per_m.assign(2400, 0.0);
    course.curvature_per_m[1600] = g / (20.0 * 20.0);
    course.segment_starts = {0.0, 1600.0};
    const car::SimulatedLap lap = car::simulate_lap(car, course, {{1.0, 1.0}, {1.0, 1e-9}});
    const double from = 70.0 / 3.6;
    const double to = 60.0 / 3.6;
    double time = 0.0;
    for (std::size_t i = 1600; i + 1 < lap.speed_mps.size(); ++i) {
        const double fast = lap.speed_mps[i];
        const double slow = lap.speed_mps[i + 1];
        if (slow >= from || fast <= to) continue;
        // The first and the last cell count in part.
        const double share = (std::min(fast, from) - std::max(slow, to)) / (fast - slow);
        time += share * 2.0 * 0.25 / (fast + slow);
    }
    return time;
}

} // namespace

TEST(CoastDown, MotorcycleTable) {
    const double rows[7][4] = {{100, 0.0, .0224, 2.95},  {120, 1.70, .0230, 3.39},  {150, 4.32, .0238, 3.99},
                               {200, 8.69, .0252, 4.85}, {250, 13.06, .0266, 5.57}, {300, 17.43, .0279, 6.18},
                               {340, 20.92, .0290, 6.60}};
    for (const auto& row : rows)
        EXPECT_NEAR(coast_s(row[0], row[1], row[2]) / row[3], 1.0, 0.003) << row[0] << " kg";
}
