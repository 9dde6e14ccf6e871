// SPDX-License-Identifier: GPL-3.0-or-later
// How much of the car the driver uses, so that simulating the car gives back the measured segment times: one factor a
// segment, on the grip in corners and on the engine's push on straights.
#pragma once

#include "core/car/lap_simulation.h"
#include "core/track/track.h"

#include <span>
#include <vector>

namespace lapwright::causes {

struct FittedUse {
    car::DriverUse use;
    std::vector<double> segment_s; // simulated with it
    double worst_misfit_s = 0.0;   // greatest difference to a measured segment time
};

// measured_s: one time a segment.  start: empty, or factors to begin from.  rounds: each is one simulated lap.
[[nodiscard]] FittedUse fit_use(const car::SimulatedCar& car, const car::Course& course,
                                const std::vector<track::Segment>& segments, std::span<const double> measured_s,
                                const car::DriverUse& start, int rounds);

} // namespace lapwright::causes
