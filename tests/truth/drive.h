// SPDX-License-Identifier: GPL-3.0-or-later
// Drives a whole session: out lap from the pit lane, flying laps (one of them in traffic, some with a mistake), in lap.
#pragma once

#include <cstdint>
#include <memory>
#include <vector>

#include "tests/truth/session.h"

namespace truth {

/// A stretch of one lap that is driven with less than the driver's usual share.
struct Slowing {
    int lap = 1;
    double from_m = 0.0; // stations on that lap
    double to_m = 0.0;
    double grip_factor = 1.0;
    double throttle_limit = 1.0;
};

struct SessionPlan {
    int flying_laps = 7; // all laps between out lap and in lap
    int traffic_lap = 0; // 0: none; behind a slower car from 30 % to 75 % of the lap
    std::vector<Slowing> mistakes;
    double air_density = 1.2;   // kg/m^3
    double wind_east_mps = 0.0; // where it blows to
    double wind_north_mps = 0.0;
    bool pit_lane = true;    // false: out and in lap start and end at the gate, on the line, at racing pace
    double standing_s = 0.0; // the logger runs so long before the car rolls (it then starts at start_speed_mps at once)
    double start_speed_mps = 3.0;
    double grid_step_m = 1.0;
};

[[nodiscard]] Session drive_session(const std::shared_ptr<const TrackShape>& track, const CarTruth& car,
                                    const DriverTruth& driver, const SessionPlan& plan, std::uint64_t seed);
[[nodiscard]] Session drive_session(const TrackShape& track, const CarTruth& car, const DriverTruth& driver,
                                    const SessionPlan& plan, std::uint64_t seed);

/// The grip share of each corner (index as TrackShape::corners()) that a driver keeps over all laps.
[[nodiscard]] std::vector<double> habitual_grip_shares(const TrackShape& track, const DriverTruth& driver);

} // namespace truth
