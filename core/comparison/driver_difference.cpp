// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/driver_difference.h"

#include <cmath>

namespace lapwright::comparison {
namespace {

// More of `first` than of `second`.
MaybeFigure more(const MaybeFigure& first, const MaybeFigure& second) {
    if (!first || !second) return std::nullopt;
    Figure difference{first->value - second->value, std::nullopt, first->derived || second->derived};
    if (first->sd && second->sd) difference.sd = std::hypot(*first->sd, *second->sd);
    return difference;
}

} // namespace

DriverDifference driver_difference(const SegmentFigures& a, const SegmentFigures& b) {
    DriverDifference d;
    d.brakes_later_m = more(a.braking_point_m, b.braking_point_m);
    d.opens_earlier_m = more(b.throttle_opens_m, a.throttle_opens_m);
    d.full_earlier_m = more(b.full_throttle_m, a.full_throttle_m);
    if (a.lift_to_brakes_s && b.lift_to_brakes_s && a.lift_to_brakes_s->derived == b.lift_to_brakes_s->derived)
        d.brakes_sooner_after_lift_s = more(b.lift_to_brakes_s, a.lift_to_brakes_s);
    d.coasts_less_s = more(b.coasting_s, a.coasting_s);
    d.shifts_cost_less_s = more(b.shift_cost_s, a.shift_cost_s);
    return d;
}

MaybeFigure braking_before_slowest_m(const SegmentFigures& figures) {
    return more(figures.min_speed_at_m, figures.braking_point_m);
}

} // namespace lapwright::comparison
