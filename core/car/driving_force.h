// SPDX-License-Identifier: GPL-3.0-or-later
// Power and drag per kilogram from acceleration at full throttle, out of shifts:
//   (1 + rotating) a + (c_rr + slope) g = p / v − d v²,   p = P/m,  d = ρ CdA / 2m.
// p follows engine speed, or the car's own where that was not recorded (power_curve.h), and how far it goes up and down
// is learned with it (a hierarchical prior: Gelman et al. 2013, ch. 5); the figure is its mean over the samples, each
// weighted by the speed it gives.  A wind that is the same all around the lap makes d v² into d (v + w)², w with or
// against the straight: two more unknowns, 0 ± 1.8 m/s each.  Robust regression (Tukey's biweight) finds the samples
// that count; the posterior of a linear model with an offset of its own for each straight is then drawn exactly, under
// proper priors and within what cars can be, and with what no lap can tell: rolling resistance 0.014 ± 0.003, rotating
// parts 3 ± 1 %, a tilt of the power over speed of ± 1.2 %, ± 2.5 % where shifts are not seen (stated priors; common
// practice, no source).
#pragma once

#include "core/base/fit_outcome.h"
#include "core/car/car_figures.h"

#include <array>
#include <optional>
#include <vector>

namespace lapwright::car {

struct DrivingForceDraw {
    double power_per_kg = 0.0; // W/kg
    double drag_per_kg = 0.0;  // 1/m
    double rolling_resistance = 0.0;
    double rotating_share = 0.0;
    PowerShares power_shares = {};
};

// What the samples show of the engine's curve: its range, and the power at the least and at the best of it over p.
struct PowerCurveSeen {
    double slowest_rev_s = 0.0;
    double fastest_rev_s = 0.0;
    double min_share = 1.0;
    double max_share = 1.0;
};

// Variance of power, covariance, variance of drag: of p and d as they are per kilogram.
using PushErrors = std::array<double, 3>;

struct DrivingForce {
    base::FitOutcome outcome; // rests on straights
    DrivingForceDraw best;
    double power_sd = 0.0; // of the draws
    double drag_sd = 0.0;
    PushErrors straight_errors{}; // the part that hills nobody measured make: the same whenever the car drives there
    PushErrors car_errors{};      // the part of rolling resistance, rotating parts and tilt: the same in every outing
    std::vector<DrivingForceDraw> draws;
    std::vector<DrivingEvidence> evidence;
    std::optional<PowerCurveSeen> curve; // absent where one power had to do
};

// Where the data say little; standard deviations of a normal that is cut to what cars can be.
struct DrivingPrior {
    double power_per_kg = 200.0; // so wide that any car's straights outweigh it
    double power_sd = 200.0;
    double drag_per_kg = 0.0;
    double drag_sd = 0.0;
};

// Failed with too few samples, or where no car that may be fits them; not
// converged where which samples count is still undecided after all rounds.
[[nodiscard]] DrivingForce fit_driving_force(const CarData& data, const DrivingPrior& prior, std::size_t draws,
                                             std::uint64_t seed);

} // namespace lapwright::car
