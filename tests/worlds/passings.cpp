// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/worlds/passings.h"

#include <cmath>
#include <numbers>

namespace worlds {

using namespace lapwright;

Vec2 true_place(const Entry& entry, const motion::LocalFrame& frame, double true_time_s) {
    constexpr double degree = std::numbers::pi / 180.0;
    const truth::GeodeticOrigin& origin = entry.session->track().origin();
    const motion::LocalFrame own{{origin.latitude_deg * degree, origin.longitude_deg * degree, origin.height_m}, true};
    const truth::TruthSample s = entry.session->at_time(true_time_s);
    const auto at = motion::to_local(frame, motion::to_geodetic(own, {s.x_m, s.y_m, 0.0}));
    return {at.east_m, at.north_m};
}

Vec2 shift_of(const Entry& entry, const track::Track& track, const analysis::Side& side) {
    Vec2 sum;
    double count = 0.0;
    const lap::LapTrace& trace = side.trace.best;
    for (std::size_t i = 0; i < trace.size(); i += 20) {
        if (std::isnan(trace.offset_m[i])) continue;
        const Vec2 t = track.line.tangent_at(trace.distance_m[i]);
        const Vec2 r = track.line.position(trace.distance_m[i]);
        const Vec2 seen{r.east - t.north * trace.offset_m[i], r.north + t.east * trace.offset_m[i]};
        const Vec2 truly = true_place(entry, track.frame, entry.true_time_s(side.lap.start_s + trace.time_s[i]));
        sum = {sum.east + truly.east - seen.east, sum.north + truly.north - seen.north};
        count += 1.0;
    }
    return count > 0.0 ? Vec2{sum.east / count, sum.north / count} : sum;
}

Map map_of(const World& world, const analysis::Pairing& pairing) {
    Map map{pairing.track.frame, {}};
    double sides = 0.0;
    for (const auto& [entry, side] : {std::pair(&world.a, &pairing.a), std::pair(&world.b, &pairing.b)}) {
        if (!entry->logger.has_positions) continue;
        const Vec2 shift = shift_of(*entry, pairing.track, *side);
        map.shift_m = {map.shift_m.east + shift.east, map.shift_m.north + shift.north};
        sides += 1.0;
    }
    if (sides > 0.0) map.shift_m = {map.shift_m.east / sides, map.shift_m.north / sides};
    return map;
}

std::optional<double> passing(const Entry& entry, const Map& map, const Vec2& place, const Vec2& direction,
                              double guess_true_s) {
    const auto beyond = [&](double time_s) {
        const Vec2 p = true_place(entry, map.frame, time_s);
        return (p.east - place.east - map.shift_m.east) * direction.east +
               (p.north - place.north - map.shift_m.north) * direction.north;
    };
    double low = guess_true_s - 0.6;
    double high = guess_true_s + 0.6;
    if (beyond(low) > 0.0 || beyond(high) < 0.0) return std::nullopt;
    for (int i = 0; i < 36; ++i) {
        const double middle = 0.5 * (low + high);
        (beyond(middle) < 0.0 ? low : high) = middle;
    }
    return 0.5 * (low + high);
}

} // namespace worlds
