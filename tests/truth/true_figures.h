// SPDX-License-Identifier: GPL-3.0-or-later
// The true figures of a corner on one lap, read off the continuous truth (stations in metres from the gate, m/s).
#pragma once

#include <optional>

#include "tests/truth/session.h"

namespace truth {

struct CornerTruth {
    double entry_mps = 0.0; // at the corner's start and end as TrackShape::segments() has them
    double exit_mps = 0.0;
    double min_mps = 0.0; // the bottom of the speed curve inside the corner, and where
    double min_at_m = 0.0;
    double max_lateral_mps2 = 0.0;    // magnitude
    std::optional<double> brake_at_m; // the brake passes 5 % for the last time before the slowest point, and has
                                      // passed 20 % after it; absent where the car does not brake
    std::optional<double> full_throttle_at_m; // the throttle passes 98 % after the slowest point
};

/// Braking is looked for from the end of the corner before, throttle up to 300 m after its slowest point.
[[nodiscard]] CornerTruth corner_truth(const Session& session, int lap, const TrackSegment& corner);

/// The gap t_B(s) - t_A(s) since each lap's start: positive, A is ahead.
[[nodiscard]] double true_gap_s(const Session& a, int lap_a, const Session& b, int lap_b, double station_m);

} // namespace truth
