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

} // namespace

double ReferenceLine::wrapped(double station_m) const {
    const double turns = std::floor(station_m / length_m);
    const double inside = station_m - turns * length_m;
    return inside >= length_m ? 0.0 : inside;
}

Vec2 ReferenceLine::position(double station_m) const {
    const auto [i, j, u] = locate(*this, station_m);
    const double a = (1.0 + 2.0 * u) * (1.0 - u) * (1.0 - u);
    const double b = u * (1.0 - u) * (1.0 - u) * step_m;
    const double c = u * u * (3.0 - 2.0 * u);
    const double d = u * u * (u - 1.0) * step_m;
    return {a * position_m[i].east + b * tangent[i].east + c * position_m[j].east + d * tangent[j].east,
            a * position_m[i].north + b * tangent[i].north + c * position_m[j].north + d * tangent[j].north};
}

Vec2 ReferenceLine::tangent_at(double station_m) const {
    const auto [i, j, u] = locate(*this, station_m);
    const double a = 6.0 * u * (u - 1.0) / step_m;
    const double b = (1.0 - u) * (1.0 - 3.0 * u);
    const double d = u * (3.0 * u - 2.0);
    const Vec2 slope{a * (position_m[i].east - position_m[j].east) + b * tangent[i].east + d * tangent[j].east,
                     a * (position_m[i].north - position_m[j].north) + b * tangent[i].north + d * tangent[j].north};
    const double length = std::hypot(slope.east, slope.north);
    return {slope.east / length, slope.north / length};
}

double ReferenceLine::curvature(double station_m) const {
    const auto [i, j, u] = locate(*this, station_m);
    return (1.0 - u) * curvature_per_m[i] + u * curvature_per_m[j];
}

} // namespace lapwright::track
