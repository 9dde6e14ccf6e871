// SPDX-License-Identifier: GPL-3.0-or-later
// What two drivers do differently in one segment.  Every difference is positive where it usually favours A: later on
// the brakes, earlier on the throttle, less time rolling, less time lost in shifts.
#pragma once

#include "core/comparison/comparison.h"

namespace lapwright::comparison {

// Each is absent where either side has not got it, and derived where either side's is; uncertainties of the two laps
// add in quadrature where both are known.
struct DriverDifference {
    MaybeFigure brakes_later_m;
    MaybeFigure opens_earlier_m; // the throttle
    MaybeFigure full_earlier_m;
    // Absent too where one side's is from the pedals and the other's from motion, which reads some hundredths more.
    MaybeFigure brakes_sooner_after_lift_s;
    MaybeFigure coasts_less_s;
    MaybeFigure shifts_cost_less_s;
};

[[nodiscard]] DriverDifference driver_difference(const SegmentFigures& a, const SegmentFigures& b);

// From the braking point to the slowest place of the same lap, along the reference line.
[[nodiscard]] MaybeFigure braking_before_slowest_m(const SegmentFigures& figures);

} // namespace lapwright::comparison
