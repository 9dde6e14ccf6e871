// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/playing.h"

#include <algorithm>
#include <cmath>

namespace lapwright::workspace {
namespace {

double time_at(const analysis::Side& side, double place_m) {
    return side.lap.start_s + side.trace.best.time_at(place_m);
}

// Linear between grid points, as time_at is.
double place_at(const lap::LapTrace& trace, double since_start_s) {
    const auto later = std::ranges::upper_bound(trace.time_s, since_start_s);
    if (later == trace.time_s.begin()) return trace.distance_m.front();
    if (later == trace.time_s.end()) return trace.distance_m.back();
    const auto i = static_cast<std::size_t>(later - trace.time_s.begin());
    const double share = (since_start_s - trace.time_s[i - 1]) / (trace.time_s[i] - trace.time_s[i - 1]);
    return std::lerp(trace.distance_m[i - 1], trace.distance_m[i], share);
}

} // namespace

PlayedMoment at_place(const analysis::Pairing& pairing, double place_m) {
    return {place_m, time_at(pairing.a, place_m), time_at(pairing.b, place_m)};
}

PlayedMoment at_time_of(const analysis::Pairing& pairing, Side side, double time_s) {
    const analysis::Side& own = side == Side::a ? pairing.a : pairing.b;
    const double since_start_s = std::clamp(time_s - own.lap.start_s, 0.0, own.trace.best.lap_time_s());
    PlayedMoment moment = at_place(pairing, place_at(own.trace.best, since_start_s));
    (side == Side::a ? moment.time_a_s : moment.time_b_s) = own.lap.start_s + since_start_s;
    return moment;
}

PlayedMoment on_one_clock(const analysis::Pairing& pairing, double from_m, double time_a_s) {
    PlayedMoment moment = at_time_of(pairing, Side::a, time_a_s);
    moment.time_b_s = time_at(pairing.b, from_m) + moment.time_a_s - time_at(pairing.a, from_m);
    return moment;
}

double stretch_of_b(const analysis::Pairing& pairing, double place_m) {
    return pairing.a.trace.best.speed_at(place_m) / pairing.b.trace.best.speed_at(place_m);
}

} // namespace lapwright::workspace
