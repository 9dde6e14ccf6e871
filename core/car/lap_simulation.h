// SPDX-License-Identifier: GPL-3.0-or-later
// Quasi-steady-state lap of a point mass: corner limit, backward for braking, forward for traction and power, under one
// friction ellipse, closed over start and finish (method: Siegler, Deakin and Crolla 2000; Brayshaw and Harrison 2005,
// from memory).  Along the path:  (1 + rotating) a = tyre − D v²/m − (c_rr + slope) g;  in one direction the tyres give
// at most  μ g (1 + L v²/(m g))^n  with L = ρ ClA / 2 and D = ρ CdA / 2.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace lapwright::car {

// How an engine's power at full throttle changes with the car's speed, gears in it: shares of its mean at 0, 1, 2 …
// steps, linear between them; empty where it is the same at all speeds.
struct PowerShares {
    static constexpr double step_mps = 2.5;
    std::vector<double> of_power;

    [[nodiscard]] double at(double speed_mps) const {
        if (of_power.empty()) return 1.0;
        const double place = speed_mps / step_mps;
        const auto i = static_cast<std::size_t>(place);
        if (i + 1 >= of_power.size()) return of_power.back();
        return of_power[i] + (place - static_cast<double>(i)) * (of_power[i + 1] - of_power[i]);
    }
};

// Forces of a car; a mass of 1 makes everything per kilogram.
struct SimulatedCar {
    double grip = 1.2;                 // μ
    double load_exponent = 1.0;        // n: 1 where friction does not depend on load
    double downforce_n_per_mps2 = 0.0; // L, N/(m/s)²
    double drag_n_per_mps2 = 0.0;      // D, N/(m/s)²
    double rolling_resistance = 0.0;   // c_rr
    double power_w = 1e5;              // at the wheels, mean
    PowerShares power_shares = {};     // of power_w, by speed
    double mass_kg = 1.0;
    double rotating_share = 0.0;
    double braking_share = 1.0;  // of the grip, that full braking uses
    double traction_share = 1.0; // of the grip, that the driven wheels can put down
};

// A closed path: cell i leads from node i to node i + 1, the last back to node 0.
struct Course {
    std::vector<double> step_m;          // length of cell i, > 0
    std::vector<double> curvature_per_m; // at node i; the sign does not matter
    std::vector<double> slope;           // d height / d path in cell i; empty: flat
    // Where segments begin, in nodes and fractions of cells, increasing, the first 0; segment k ends where k + 1
    // begins, the last at size().
    std::vector<double> segment_starts;

    [[nodiscard]] std::size_t size() const { return step_m.size(); }
    [[nodiscard]] std::size_t segments() const { return segment_starts.size(); }
};

// How much of the car the driver uses, one factor a segment: `grip` scales the tyres;
// `drive` below 1 is the share of time that engine and tyres push (shifts and a late
// foot take the rest), above 1 it scales the engine.  Empty means 1 everywhere.
struct DriverUse {
    std::vector<double> grip;
    std::vector<double> drive;
};

struct SimulatedLap {
    double lap_time_s = 0.0;
    std::vector<double> segment_time_s;
    std::vector<double> speed_mps; // at the nodes
};

// Deterministic, O(nodes).  Uses are > 0; the power and mass are > 0.
[[nodiscard]] SimulatedLap simulate_lap(const SimulatedCar& car, const Course& course, const DriverUse& use = {});

// The same of each car.  Neighbours that differ in drag, power or inertia alone share their corners and are simulated
// side by side: in that order a lap costs half.
[[nodiscard]] std::vector<SimulatedLap> simulate_laps(std::span<const SimulatedCar> cars, const Course& course,
                                                      const DriverUse& use = {});

// Where corner grip limits nothing, speed is still held under this.
inline constexpr double simulation_ceiling_mps = 130.0;

} // namespace lapwright::car
