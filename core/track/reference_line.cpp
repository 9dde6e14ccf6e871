// SPDX-License-Identifier: GPL-3.0-or-later
// Evaluation of the closed line between its nodes: cubic Hermite on arc length, so that the position's derivative at
// the nodes is the unit tangent.
#include "core/track/track.h"

#include <algorithm>
#include <cmath>

namespace lapwright::track {
namespace {

struct Place {
    std::size_t node;
    std::size_t next;
    double part;
};

Place locate(const ReferenceLine& line, double station_m) {
    const double in_nodes = line.wrapped(station_m) / line.step_m;
    const auto node = std::min(static_cast<std::size_t>(in_nodes), line.size() - 1);
    return {node, (node + 1) % line.size(), in_nodes - static_cast<double>(node)};
}

Vec2 position_in(const ReferenceLine& line, std::size_t i, std::size_t j, double u) {
    const double a = (1.0 + 2.0 * u) * (1.0 - u) * (1.0 - u);
    const double b = u * (1.0 - u) * (1.0 - u) * line.step_m;
    const double c = u * u * (3.0 - 2.0 * u);
    const double d = u * u * (u - 1.0) * line.step_m;
    const Vec2 &p = line.position_m[i], &q = line.position_m[j];
    const Vec2 &s = line.tangent[i], &t = line.tangent[j];
    return {a * p.east + b * s.east + c * q.east + d * t.east, a * p.north + b * s.north + c * q.north + d * t.north};
}

Vec2 tangent_in(const ReferenceLine& line, std::size_t i, std::size_t j, double u) {
    const double a = 6.0 * u * (u - 1.0) / line.step_m;
    const double b = (1.0 - u) * (1.0 - 3.0 * u);
    const double d = u * (3.0 * u - 2.0);
    const Vec2 &p = line.position_m[i], &q = line.position_m[j];
    const Vec2 &s = line.tangent[i], &t = line.tangent[j];
    const Vec2 slope{a * (p.east - q.east) + b * s.east + d * t.east,
                     a * (p.north - q.north) + b * s.north + d * t.north};
    const double length = std::sqrt(slope.east * slope.east + slope.north * slope.north);
    return {slope.east / length, slope.north / length};
}

double curvature_in(const ReferenceLine& line, std::size_t i, std::size_t j, double u) {
    return (1.0 - u) * line.curvature_per_m[i] + u * line.curvature_per_m[j];
}

} // namespace

double ReferenceLine::wrapped(double station_m) const {
    if (station_m >= 0.0 && station_m < length_m) return station_m;
    const double turns = std::floor(station_m / length_m);
    const double inside = station_m - turns * length_m;
    return inside >= length_m ? 0.0 : inside;
}

LinePoint ReferenceLine::at(double station_m) const {
    const auto [i, j, u] = locate(*this, station_m);
    return {position_in(*this, i, j, u), tangent_in(*this, i, j, u), curvature_in(*this, i, j, u)};
}

Vec2 ReferenceLine::position(double station_m) const {
    const auto [i, j, u] = locate(*this, station_m);
    return position_in(*this, i, j, u);
}

Vec2 ReferenceLine::tangent_at(double station_m) const {
    const auto [i, j, u] = locate(*this, station_m);
    return tangent_in(*this, i, j, u);
}

double ReferenceLine::curvature(double station_m) const {
    const auto [i, j, u] = locate(*this, station_m);
    return curvature_in(*this, i, j, u);
}

} // namespace lapwright::track
