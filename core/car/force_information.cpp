// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/force_information.h"

#include <cmath>

namespace lapwright::car {
namespace {

constexpr double g = base::standard_gravity_mps2;

} // namespace

Unknowns columns(const ThrottleSample& s, const std::optional<CurveScale>& scale) {
    Unknowns x = Unknowns::Zero(curve_at + (scale ? scale->term_count() : 0));
    x[0] = 1.0 / s.speed_mps;
    x[1] = -s.speed_mps * s.speed_mps;
    x[wind_at] = -2.0 * s.speed_mps * std::cos(s.course_rad);
    x[wind_at + 1] = -2.0 * s.speed_mps * std::sin(s.course_rad);
    if (!scale) return x;
    x.tail(scale->term_count()) = scale->terms(s) / s.speed_mps;
    return x;
}

std::map<std::size_t, Straight> straights_of(const std::vector<ThrottleSample>& samples, const Eigen::VectorXd& weights,
                                             const std::optional<CurveScale>& scale) {
    std::map<std::size_t, Straight> straights;
    for (std::size_t i = 0; i < samples.size(); ++i) {
        const ThrottleSample& s = samples[i];
        const Unknowns x = columns(s, scale);
        Straight& sums = straights.try_emplace(s.segment, x.size()).first->second;
        const double w = weights[static_cast<Eigen::Index>(i)];
        sums.normal += w * x * x.transpose();
        sums.acceleration += w * s.acceleration_mps2 * x;
        sums.slope += w * s.slope * g * x;
        sums.one += w * x;
        sums.acceleration_sum += w * s.acceleration_mps2;
        sums.slope_sum += w * s.slope * g;
        sums.weight += w;
    }
    return straights;
}

ForceInformation information_of(const std::map<std::size_t, Straight>& straights, const ForceNoise& noise) {
    const Eigen::Index unknowns = straights.begin()->second.one.size();
    ForceInformation sum{Normal::Zero(unknowns, unknowns), Unknowns::Zero(unknowns), Unknowns::Zero(unknowns),
                         Unknowns::Zero(unknowns)};
    for (const auto& [segment, s] : straights) {
        const double shared = 1.0 / (noise.variance / noise.straight_variance + s.weight);
        sum.matrix += (s.normal - shared * s.one * s.one.transpose()) / noise.variance;
        sum.acceleration += (s.acceleration - shared * s.acceleration_sum * s.one) / noise.variance;
        sum.slope += (s.slope - shared * s.slope_sum * s.one) / noise.variance;
        sum.one += (1.0 - shared * s.weight) / noise.variance * s.one;
    }
    return sum;
}

} // namespace lapwright::car
