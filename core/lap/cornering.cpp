// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/cornering.h"

#include <algorithm>
#include <cmath>

namespace lapwright::lap {
namespace {

double speed_at(const motion::Path& path, std::size_t i) {
    return std::hypot(path.velocity_mps[i].east, path.velocity_mps[i].north);
}

std::vector<double> box(const std::vector<double>& values, std::size_t half_width) {
    const std::size_t n = values.size();
    const std::size_t window = 2 * half_width + 1;
    double sum = 0.0;
    for (std::size_t i = 0; i < window; ++i)
        sum += values[(i + n - half_width) % n];
    std::vector<double> result(n);
    for (std::size_t i = 0; i < n; ++i) {
        result[i] = sum / static_cast<double>(window);
        sum += values[(i + half_width + 1) % n] - values[(i + n - half_width) % n];
    }
    return result;
}

} // namespace

std::vector<double> integrated_distance(const motion::Path& path) {
    std::vector<double> distance(path.size(), 0.0);
    for (std::size_t i = 1; i < path.size(); ++i)
        distance[i] = distance[i - 1] +
                      0.5 * ((*path.time_s)[i] - (*path.time_s)[i - 1]) * (speed_at(path, i - 1) + speed_at(path, i));
    return distance;
}

double distance_at(const motion::Path& path, const std::vector<double>& distance_m, double time_s) {
    const std::size_t i = path.index_before(time_s);
    const double step = (*path.time_s)[i + 1] - (*path.time_s)[i];
    const double after = std::clamp(time_s - (*path.time_s)[i], 0.0, step);
    const double before_mps = speed_at(path, i);
    const double gained_mps = (speed_at(path, i + 1) - before_mps) * after / step;
    return distance_m[i] + after * (before_mps + 0.5 * gained_mps);
}

Cornering cornering_of(const motion::Path& path, const std::vector<double>& distance_m, double start_s, double end_s,
                       double length_m, std::size_t points) {
    const double from = distance_at(path, distance_m, start_s);
    constexpr double min_driven_m = 1.0; // a car that stood has no place to be scaled to
    const double scale = length_m / std::max(min_driven_m, distance_at(path, distance_m, end_s) - from);
    Cornering lap;
    lap.step_m = length_m / static_cast<double>(points);
    std::size_t i = path.index_before(start_s);
    for (std::size_t k = 0; k < points; ++k) {
        const double wanted = from + lap.step_m * static_cast<double>(k) / scale;
        while (i + 2 < path.size() && distance_m[i + 1] < wanted)
            ++i;
        const double rise = distance_m[i + 1] - distance_m[i];
        const double part = rise > 0.0 ? std::clamp((wanted - distance_m[i]) / rise, 0.0, 1.0) : 0.0;
        const double time = (*path.time_s)[i] + part * ((*path.time_s)[i + 1] - (*path.time_s)[i]);
        const motion::Moment moment = path.at(time, i);
        const double speed = moment.speed_mps();
        lap.speed_mps.push_back(scale * speed);
        lap.lateral_mps2.push_back(speed > 1.0 ? moment.lateral_mps2() : 0.0);
        lap.longitudinal_mps2.push_back(speed > 1.0 ? moment.longitudinal_mps2() : 0.0);
    }
    return lap;
}

std::vector<double> blurred(std::span<const double> closed_values, std::size_t half_width) {
    const std::vector<double> values(closed_values.begin(), closed_values.end());
    return half_width == 0 ? values : box(box(values, half_width), half_width);
}

} // namespace lapwright::lap
