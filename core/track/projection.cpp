// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/track/projection.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::track {
namespace {

// A tenth of a micrometre: far below what any receiver sees, reached in three or four steps.
constexpr double station_tolerance_m = 1e-7;
constexpr int max_steps = 30;
constexpr double near_hint_m = 4.0;

double dot(Vec2 a, Vec2 b) {
    return a.east * b.east + a.north * b.north;
}

struct Foot {
    double station_m;
    double along_m; // what is left of the distance along the tangent: 0 at the foot
    double offset_m;
    double curvature_per_m;
};

Foot foot_at(const ReferenceLine& line, Vec2 point, double station_m) {
    const auto [r, t, curvature] = line.at(station_m);
    const Vec2 d{point.east - r.east, point.north - r.north};
    return {station_m, dot(d, t), t.east * d.north - t.north * d.east, curvature};
}

double distance_squared_to_node(const ReferenceLine& line, Vec2 point, std::size_t node) {
    const Vec2 d{point.east - line.position_m[node].east, point.north - line.position_m[node].north};
    return dot(d, d);
}

// Newton on (p − r(s))·t(s) = 0, whose slope is −(1 − κn); the slope is held away from zero near the centre of
// curvature.
std::optional<Foot> refine(const ReferenceLine& line, Vec2 point, double start_m, double window_m) {
    Foot foot = foot_at(line, point, start_m);
    for (int step = 0; step < max_steps; ++step) {
        const double slope = std::max(0.2, 1.0 - foot.curvature_per_m * foot.offset_m);
        const double change = std::clamp(foot.along_m / slope, -window_m, window_m);
        if (std::abs(change) < station_tolerance_m) return foot;
        foot = foot_at(line, point, foot.station_m + change);
        if (std::abs(foot.station_m - start_m) > 2.0 * window_m) return std::nullopt;
    }
    return std::nullopt;
}

} // namespace

std::optional<Projection> project_near(const ReferenceLine& line, Vec2 point, double hint_m, double window_m) {
    // Most hints point within a few metres of the foot: it is there, and no search could find a nearer one that the
    // car drove to from its last place.
    const auto followed = refine(line, point, hint_m, std::min(window_m, near_hint_m));
    if (followed && std::abs(followed->station_m - hint_m) < near_hint_m &&
        std::abs(followed->curvature_per_m * followed->offset_m) < 0.5)
        return Projection{followed->station_m, followed->offset_m};
    const auto first = static_cast<long>(std::floor((hint_m - window_m) / line.step_m));
    const auto last = static_cast<long>(std::ceil((hint_m + window_m) / line.step_m));
    const auto n = static_cast<long>(line.size());
    long best = first;
    double best_distance = std::numeric_limits<double>::infinity();
    for (long k = first; k <= last; ++k) {
        const double distance = distance_squared_to_node(line, point, static_cast<std::size_t>(((k % n) + n) % n));
        if (distance < best_distance) {
            best_distance = distance;
            best = k;
        }
    }
    const auto found = refine(line, point, static_cast<double>(best) * line.step_m, window_m);
    if (!found || std::abs(found->station_m - hint_m) > window_m) return std::nullopt;
    return Projection{found->station_m, found->offset_m};
}

Projection project_anywhere(const ReferenceLine& line, Vec2 point) {
    std::size_t best = 0;
    double best_distance = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < line.size(); ++i) {
        const double distance = distance_squared_to_node(line, point, i);
        if (distance < best_distance) {
            best_distance = distance;
            best = i;
        }
    }
    const double station = static_cast<double>(best) * line.step_m;
    const auto found = refine(line, point, station, 4.0 * line.step_m);
    if (!found) {
        const Foot foot = foot_at(line, point, station);
        return {station, foot.offset_m};
    }
    return {line.wrapped(found->station_m), found->offset_m};
}

} // namespace lapwright::track
