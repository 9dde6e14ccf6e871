// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/joint_region.h"

#include "core/base/check.h"
#include "core/math/statistics.h"

#include <cmath>

namespace lapwright::car {
namespace {

constexpr std::size_t fewest_draws = 20;
constexpr int corners = 72; // of the outline
constexpr double share = 0.95;
constexpr double pi = 3.14159265358979323846;

} // namespace

JointRegion joint_region(std::span<const double> x, std::span<const double> y) {
    base::check(x.size() == y.size(), "equally many of both figures");
    if (x.size() < fewest_draws) return {};
    const double sd_x = math::standard_deviation(x);
    const double sd_y = math::standard_deviation(y);
    if (!(sd_x > 0.0 && sd_y > 0.0)) return {};
    JointRegion region;
    region.centre_x = math::mean(x);
    region.centre_y = math::mean(y);
    region.correlation = math::correlation(x, y);
    // Cholesky: x = sd_x u, y = sd_y (r u + s w) with u and w uncorrelated.
    const double r = region.correlation;
    const double s = std::sqrt(1.0 - r * r);
    if (!(s > 1e-6)) return {};
    std::vector<double> distances;
    for (std::size_t i = 0; i < x.size(); ++i) {
        const double u = (x[i] - region.centre_x) / sd_x;
        const double w = ((y[i] - region.centre_y) / sd_y - r * u) / s;
        distances.push_back(std::hypot(u, w));
    }
    const double radius = math::quantile(distances, share);
    for (int i = 0; i <= corners; ++i) {
        const double angle = 2.0 * pi * (i % corners) / corners;
        const double u = radius * std::cos(angle);
        const double w = radius * std::sin(angle);
        region.outline_x.push_back(region.centre_x + sd_x * u);
        region.outline_y.push_back(region.centre_y + sd_y * (r * u + s * w));
    }
    return region;
}

JointRegion grip_and_downforce(const CarFigures& figures, bool per_kilogram) {
    if (!figures.grip.told() || !figures.downforce_area_m2_per_kg.told()) return {};
    std::vector<double> grip;
    std::vector<double> area;
    for (const CarDraw& d : figures.draws) {
        const double kilograms = per_kilogram ? 1e3 / d.car.mass_kg : 1.0;
        grip.push_back(d.car.grip);
        area.push_back(2.0 * d.car.downforce_n_per_mps2 / d.density_kg_m3 * kilograms);
    }
    return joint_region(grip, area);
}

} // namespace lapwright::car
