// SPDX-License-Identifier: GPL-3.0-or-later
// The true driver: how much of the grip is used in each corner and braking zone (the same lap after lap, with a small
// spread), the line, and the pedals. Shares are of what the car's tyres could give, 0..1.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace truth {

struct DriverTruth {
    std::string name = "driver";
    std::uint64_t style_seed = 1; // fixes the habits below that carry a "_habit_sd"

    double grip_share = 0.965;
    double grip_share_habit_sd = 0.015; // corner to corner, constant over laps
    double grip_share_lap_sd = 0.006;   // lap to lap in one corner
    std::vector<double> corner_factor; // multiplies a corner's grip share (index as TrackShape::corners()); missing: 1.
                                       // A figure well below 1 is a corner taken below its limit.
    double brake_share = 0.90;
    double brake_share_habit_sd = 0.03;
    double brake_share_lap_sd = 0.012;
    double exit_share = 0.95; // of the combined grip when putting power down

    double line_half_width_m = 3.4; // the line uses the track's centre +- this
    double line_habit_sd_m = 0.3;   // departure from the line of least curvature, constant over laps
    double line_lap_sd_m = 0.18;    // lap to lap

    double coast_s = 0.12;         // between the foot leaving the throttle and the brake
    double throttle_ramp_s = 0.35; // from closed to open throttle
    double response_s = 0.20;      // half width of the smoothing kernel in time; 0 leaves kinks of a grid step
};

} // namespace truth
