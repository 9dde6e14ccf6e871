// SPDX-License-Identifier: GPL-3.0-or-later
// Closed curves and drives round them with formulas of their own, for tests of track and lap.
#pragma once

#include "core/motion/motion_estimate.h"

#include <cmath>
#include <memory>
#include <numbers>
#include <vector>

namespace lapwright::test {

inline constexpr double pi = std::numbers::pi;

// Points of an ellipse, evenly spaced in the parameter, counter-clockwise from (a, 0).
inline std::vector<motion::Vec2> ellipse_points(double a_m, double b_m, std::size_t count) {
    std::vector<motion::Vec2> points(count);
    for (std::size_t i = 0; i < count; ++i) {
        const double phi = 2.0 * pi * static_cast<double>(i) / static_cast<double>(count);
        points[i] = {a_m * std::cos(phi), b_m * std::sin(phi)};
    }
    return points;
}

// Steady drive round a circle at constant speed from angle 0, sampled at a rate, for some seconds.
inline motion::Path circle_drive(double radius_m, double speed_mps, double rate_hz, double seconds,
                                 double start_rad = 0.0) {
    motion::Path path;
    std::vector<double> time_s;
    const double omega = speed_mps / radius_m;
    for (int i = 0; i <= static_cast<int>(seconds * rate_hz); ++i) {
        const double t = i / rate_hz;
        const double c = std::cos(start_rad + omega * t);
        const double s = std::sin(start_rad + omega * t);
        time_s.push_back(t);
        path.position_m.push_back({radius_m * c, radius_m * s});
        path.velocity_mps.push_back({-speed_mps * s, speed_mps * c});
        path.acceleration_mps2.push_back({-speed_mps * omega * c, -speed_mps * omega * s});
    }
    path.time_s = std::make_shared<const std::vector<double>>(std::move(time_s));
    return path;
}

} // namespace lapwright::test
