// SPDX-License-Identifier: GPL-3.0-or-later
// Lap traces from a formula for the speed along the lap.
#pragma once

#include "core/lap/lap.h"

#include <cmath>
#include <functional>

namespace lapwright::test {

// Grid of 1 m; time from the trapezium rule on 1/v, acceleration from v dv/ds.
inline lap::LapTrace lap_from_speed(double length_m, const std::function<double(double)>& speed_mps) {
    lap::LapTrace trace;
    const auto n = static_cast<int>(length_m);
    double t = 0.0;
    for (int i = 0; i <= n; ++i) {
        const double s = i;
        const double v = speed_mps(s);
        if (i > 0) t += 0.5 * (1.0 / speed_mps(s - 1.0) + 1.0 / v);
        trace.distance_m.push_back(s);
        trace.time_s.push_back(t);
        trace.speed_mps.push_back(v);
        trace.longitudinal_mps2.push_back(v * (speed_mps(s + 0.5) - speed_mps(s - 0.5)));
        trace.lateral_mps2.push_back(0.0);
        trace.offset_m.push_back(0.0);
    }
    trace.driven_length_m = length_m;
    return trace;
}

} // namespace lapwright::test
