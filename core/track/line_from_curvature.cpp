// SPDX-License-Identifier: GPL-3.0-or-later
// Heading counter-clockwise from north here, so that a positive curvature turns it to the left.
#include "core/track/line_from_curvature.h"

#include "core/base/check.h"
#include "core/base/constants.h"
#include "core/math/periodic_smoother.h"

#include <cmath>
#include <vector>

namespace lapwright::track {
namespace {

constexpr double min_turned_rad = 1.0;

double turned_in_all(std::span<const double> curvature_per_m, double step_m) {
    double sum = 0.0;
    for (const double curvature : curvature_per_m)
        sum += step_m * std::abs(curvature);
    return sum;
}

// At the nodes, and once more at the end.
std::vector<double> headings(std::span<const double> curvature_per_m, double step_m) {
    const std::size_t n = curvature_per_m.size();
    std::vector<double> heading(n + 1, 0.0);
    for (std::size_t i = 0; i < n; ++i)
        heading[i + 1] = heading[i] + 0.5 * step_m * (curvature_per_m[i] + curvature_per_m[(i + 1) % n]);
    constexpr double turn = 2.0 * base::pi;
    double whole = turn * std::round(heading[n] / turn);
    // A figure of eight turns as much to either side; a lap that nobody saw turn at all is drawn as a circle.
    if (whole == 0.0 && turned_in_all(curvature_per_m, step_m) < min_turned_rad) whole = turn;
    const double miss = heading[n] - whole;
    for (std::size_t i = 0; i <= n; ++i)
        heading[i] -= miss * static_cast<double>(i) / static_cast<double>(n);
    return heading;
}

std::vector<Vec2> closed_path(const std::vector<double>& heading, double step_m) {
    const std::size_t n = heading.size() - 1;
    std::vector<Vec2> points(n + 1);
    for (std::size_t i = 0; i < n; ++i) {
        const double middle = 0.5 * (heading[i] + heading[i + 1]);
        points[i + 1] = {points[i].east - step_m * std::sin(middle), points[i].north + step_m * std::cos(middle)};
    }
    const Vec2 miss = points[n];
    for (std::size_t i = 0; i <= n; ++i) {
        const double part = static_cast<double>(i) / static_cast<double>(n);
        points[i] = {points[i].east - part * miss.east, points[i].north - part * miss.north};
    }
    points.pop_back();
    return points;
}

} // namespace

ReferenceLine line_from_curvature(std::span<const double> curvature_per_m, double length_m) {
    const std::size_t n = curvature_per_m.size();
    base::check(n >= 16 && length_m > 0.0, "a line of too few nodes");
    ReferenceLine line;
    line.length_m = length_m;
    line.step_m = length_m / static_cast<double>(n);
    line.position_m = closed_path(headings(curvature_per_m, line.step_m), line.step_m);
    line.curvature_per_m.assign(curvature_per_m.begin(), curvature_per_m.end());
    std::vector<double> east(n);
    std::vector<double> north(n);
    for (std::size_t i = 0; i < n; ++i) {
        east[i] = line.position_m[i].east;
        north[i] = line.position_m[i].north;
    }
    const std::vector<double> de = math::first_derivative_periodic(east, line.step_m);
    const std::vector<double> dn = math::first_derivative_periodic(north, line.step_m);
    for (std::size_t i = 0; i < n; ++i) {
        const double length = std::hypot(de[i], dn[i]);
        line.tangent.push_back({de[i] / length, dn[i] / length});
    }
    return line;
}

} // namespace lapwright::track
