// SPDX-License-Identifier: GPL-3.0-or-later
// Where the laps touch the tyres' limit: one place a corner (the peak of lateral acceleration for its speed, found on
// the mean of the laps so that noise is not picked as a peak) and two halves a braking zone.  All in logarithms,
// because a driver's share multiplies.
#pragma once

#include "core/car/car_figures.h"
#include "core/car/driving_force.h"

#include <string>
#include <vector>

namespace lapwright::car {

struct LimitCorner {
    std::string corner;
    double speed_squared = 0.0; // mean over laps, m²/s²
    double log_lateral = 0.0;   // ln of m/s², mean over laps
    double error = 0.0;         // standard error of that mean
    // How far the mean over twice the window is below it, relative.  A top like a parabola is above the mean by a third
    // of that, a sharp one by all of it; a corner that is held loses nothing.
    double fall = 0.0;
    bool flat = false;             // full throttle there: the limit is somewhere above
    double chance_below = 0.1;     // prior chance that the driver stayed below the limit by choice
    std::vector<std::size_t> laps; // places in CarData::laps of those that follow
    std::vector<double> lap_speed_mps;
    std::vector<double> lap_lateral_mps2;
};

struct LimitZone {
    std::string corner; // that it leads to
    // Slower and faster half; a zone over too little speed has equal halves and says nothing of the slope.
    double slow_speed_squared = 0.0;
    double fast_speed_squared = 0.0;
    double slow_log = 0.0; // ln of the tyres' deceleration
    double fast_log = 0.0;
    double slow_error = 0.0;
    double fast_error = 0.0;
    std::size_t laps = 0;
};

struct LimitEvidence {
    std::vector<LimitCorner> corners;
    std::vector<LimitZone> zones;
};

[[nodiscard]] LimitEvidence limit_evidence(const CarData& data, const DrivingForce& driving);

// Share of the grip that accelerating out of slow corners puts down, against a limit as used of
// exp(log_limit) (1 + k v²/g)^n.
struct Traction {
    double share = 0.6;
    bool bound = false; // the engine was the limit wherever it was reached: the tyres could put down more
};

// What is put down, lap after lap, out of the corners that show most; absent where no corner shows any.
[[nodiscard]] std::optional<Traction> traction(const CarData& data, const DrivingForce& driving, double log_limit,
                                               double k, double load_exponent);

} // namespace lapwright::car
