// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/in_frame.h"

#include "core/base/translation.h"

#include <cmath>

namespace lapwright::motion {
namespace {

using base::said;

constexpr double farthest_m = 100e3;

// Position on the map of `to` of a position on the map of `from`: the point at the height of the origin whose east and
// north are given is found by two steps of fixed point (the surface drops by d²/2R under the plane).
Vec2 moved(const Vec2& position, const LocalFrame& from, const LocalFrame& to) {
    Geodetic point;
    double up = 0.0;
    for (int step = 0; step < 3; ++step) {
        point = to_geodetic(from, {position.east, position.north, up});
        up -= point.height_m - from.origin.height_m;
    }
    const EastNorthUp local = to_local(to, {point.latitude_rad, point.longitude_rad, to.origin.height_m});
    return {local.east_m, local.north_m};
}

// Columns are the images of east and north.
struct Jacobian {
    Vec2 east;
    Vec2 north;
};

Jacobian jacobian_at(const Vec2& position, const LocalFrame& from, const LocalFrame& to) {
    constexpr double reach_m = 100.0;
    const auto slope = [&](const Vec2& step) {
        const Vec2 ahead = moved({position.east + step.east, position.north + step.north}, from, to);
        const Vec2 behind = moved({position.east - step.east, position.north - step.north}, from, to);
        return Vec2{(ahead.east - behind.east) / (2.0 * reach_m), (ahead.north - behind.north) / (2.0 * reach_m)};
    };
    return {slope({reach_m, 0.0}), slope({0.0, reach_m})};
}

Vec2 turned(const Jacobian& jacobian, const Vec2& v) {
    return {jacobian.east.east * v.east + jacobian.north.east * v.north,
            jacobian.east.north * v.east + jacobian.north.north * v.north};
}

void turn_rates(Path& path, const Jacobian& jacobian) {
    for (Vec2& velocity : path.velocity_mps)
        velocity = turned(jacobian, velocity);
    for (Vec2& acceleration : path.acceleration_mps2)
        acceleration = turned(jacobian, acceleration);
}

} // namespace

bool same_frame(const LocalFrame& a, const LocalFrame& b) {
    if (a.on_earth != b.on_earth) return false;
    if (!a.on_earth) return true;
    return a.origin.latitude_rad == b.origin.latitude_rad && a.origin.longitude_rad == b.origin.longitude_rad &&
           a.origin.height_m == b.origin.height_m;
}

base::Result<MotionEstimate> in_frame(MotionEstimate motion, const LocalFrame& frame) {
    if (same_frame(motion.frame, frame)) return motion;
    const auto refused = [](const std::string& what, const std::string& remedy) {
        return base::Error{base::ErrorCode::different_tracks, {}, what, remedy};
    };
    if (motion.frame.on_earth != frame.on_earth)
        return refused(
            said("one session has positions by latitude and longitude, the other none or in metres of its own"),
            said("compare sessions that were recorded the same way"));
    const EastNorthUp apart = to_local(frame, motion.frame.origin);
    if (std::hypot(apart.east_m, apart.north_m) > farthest_m)
        return refused(said("the sessions were driven at different tracks"),
                       said("choose two sessions at the same track"));

    const Jacobian jacobian = jacobian_at(motion.best.position_m[motion.best.size() / 2], motion.frame, frame);
    Path best = motion.best;
    for (Vec2& position : best.position_m)
        position = moved(position, motion.frame, frame);
    turn_rates(best, jacobian);
    for (std::size_t d = 0; d < motion.draws.size(); ++d) {
        Path draw = drawn_path(motion, d);
        for (std::size_t i = 0; i < draw.size(); ++i) {
            const Vec2& from = motion.best.position_m[i];
            const Vec2 off =
                turned(jacobian, {draw.position_m[i].east - from.east, draw.position_m[i].north - from.north});
            draw.position_m[i] = {best.position_m[i].east + off.east, best.position_m[i].north + off.north};
        }
        turn_rates(draw, jacobian);
        motion.draws[d] = departures(draw, best);
    }
    motion.best = std::move(best);
    motion.frame = frame;
    return motion;
}

} // namespace lapwright::motion
