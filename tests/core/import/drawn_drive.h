// SPDX-License-Identifier: GPL-3.0-or-later
// A drive round an invented closed road, row by row, with everything that a logger could measure of it: the truth
// behind the drawn tables.  SI; lateral acceleration and yaw rate positive to the left, course clockwise from north.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <numbers>
#include <random>
#include <tuple>
#include <utility>
#include <vector>

namespace lapwright::import::drawn {

struct DriveRow {
    double time_s = 0.0;
    double latitude = 0.0;
    double longitude = 0.0;
    double east_m = 0.0;
    double north_m = 0.0;
    double altitude_m = 0.0;
    double speed_mps = 0.0;
    double course = 0.0;
    double longitudinal_mps2 = 0.0;
    double lateral_mps2 = 0.0;
    double yaw_rate = 0.0;
    double distance_m = 0.0;
    double lap = 0.0;
    double throttle = 0.0;
    double brake_pa = 0.0;
    double engine_hz = 0.0;
};

struct Drive {
    double rate_hz = 10.0;
    double start_unix_s = 0.0;
    std::vector<DriveRow> rows;
};

inline double between(std::mt19937_64& engine, double low, double high) {
    return low + (high - low) * static_cast<double>(engine() >> 11U) * 0x1.0p-53;
}

// The road is r(u) = R (1 + a cos 2u + b sin 3u), driven with v(u) = V (1 + c sin (2u + d)).
inline Drive drive(std::mt19937_64& engine, double rate_hz, double duration_s) {
    constexpr double earth_m = 6371008.8;
    const double radius = between(engine, 150.0, 350.0);
    const double a = between(engine, 0.05, 0.2);
    const double b = between(engine, 0.02, 0.1);
    const double mean = between(engine, 18.0, 40.0);
    const double swing = between(engine, 0.15, 0.35);
    const double phase = between(engine, 0.0, 6.0);
    const double latitude0 = between(engine, -55.0, 58.0) * std::numbers::pi / 180.0;
    const double longitude0 = between(engine, -170.0, 170.0) * std::numbers::pi / 180.0;
    const auto place = [&](double u) {
        const double r = radius * (1.0 + a * std::cos(2.0 * u) + b * std::sin(3.0 * u));
        return std::pair{r * std::cos(u), r * std::sin(u)};
    };
    const auto speed = [&](double u) { return mean * (1.0 + swing * std::sin(2.0 * u + phase)); };
    const auto pace = [&](double u) { // metres a radian
        const auto [x0, y0] = place(u - 1e-5);
        const auto [x1, y1] = place(u + 1e-5);
        return std::hypot(x1 - x0, y1 - y0) / 2e-5;
    };
    const auto heading = [&](double u) {
        const auto [x0, y0] = place(u - 1e-4);
        const auto [x1, y1] = place(u + 1e-4);
        return std::atan2(y1 - y0, x1 - x0);
    };
    Drive result;
    result.rate_hz = rate_hz;
    result.start_unix_s = std::floor(between(engine, 1.6e9, 1.9e9));
    double u = between(engine, 0.0, 6.0);
    const double u0 = u;
    double distance = 0.0;
    const auto rows = static_cast<std::size_t>(duration_s * rate_hz);
    for (std::size_t i = 0; i < rows; ++i) {
        DriveRow row;
        row.time_s = static_cast<double>(i) / rate_hz;
        std::tie(row.east_m, row.north_m) = place(u);
        row.latitude = latitude0 + row.north_m / earth_m;
        row.longitude = longitude0 + row.east_m / (earth_m * std::cos(latitude0));
        row.altitude_m = 120.0 + 15.0 * std::sin(u);
        row.speed_mps = speed(u);
        const double turn_a_radian =
            std::remainder(heading(u + 1e-3) - heading(u - 1e-3), 2.0 * std::numbers::pi) / 2e-3;
        const double u_rate = row.speed_mps / pace(u);
        row.yaw_rate = turn_a_radian * u_rate;
        row.lateral_mps2 = row.speed_mps * row.yaw_rate;
        row.longitudinal_mps2 = (speed(u + 1e-4) - speed(u - 1e-4)) / 2e-4 * u_rate;
        row.course = std::fmod(2.5 * std::numbers::pi - heading(u), 2.0 * std::numbers::pi);
        row.distance_m = distance;
        row.lap = std::floor((u - u0) / (2.0 * std::numbers::pi)) + 1.0;
        row.throttle = std::clamp(0.4 + 0.15 * row.longitudinal_mps2, 0.0, 1.0);
        row.brake_pa = std::max(0.0, -row.longitudinal_mps2) * 8e5;
        row.engine_hz = 25.0 + 2.2 * row.speed_mps;
        result.rows.push_back(row);
        // Fine enough that distance is the integral of speed to a millimetre.
        for (int k = 0; k < 20; ++k) {
            const double step_s = 1.0 / rate_hz / 20.0;
            distance += speed(u) * step_s;
            u += speed(u) / pace(u) * step_s;
        }
    }
    return result;
}

} // namespace lapwright::import::drawn
