// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/course.h"

#include "core/base/check.h"

#include <algorithm>
#include <cmath>

namespace lapwright::causes {
namespace {

// Mean over laps of curvature and of path per station at each grid point or cell.
struct MeanLine {
    std::vector<double> curvature;
    std::vector<double> stretch;
};

MeanLine mean_line(const std::vector<lap::LapTrace>& laps) {
    const std::size_t points = laps.front().size();
    MeanLine mean{std::vector<double>(points, 0.0), std::vector<double>(points, 0.0)};
    const double share = 1.0 / static_cast<double>(laps.size());
    for (const lap::LapTrace& lap : laps) {
        base::check(lap.size() == points, "laps of a course lie on one grid");
        for (std::size_t i = 0; i < points; ++i) {
            const double v = std::max(2.0, lap.speed_mps[i]);
            mean.curvature[i] += share * lap.lateral_mps2[i] / (v * v);
            const std::size_t next = std::min(i + 1, points - 1);
            const std::size_t last = i == next ? i - 1 : i;
            const double ds = lap.distance_m[next] - lap.distance_m[last];
            const double dt = lap.time_s[next] - lap.time_s[last];
            mean.stretch[i] +=
                share * std::clamp(0.5 * (lap.speed_mps[last] + lap.speed_mps[next]) * dt / ds, 0.7, 1.4);
        }
    }
    return mean;
}

} // namespace

car::Course course_of(const std::vector<lap::LapTrace>& laps, const std::vector<track::Segment>& segments,
                      double step_m) {
    base::check(!laps.empty() && laps.front().size() > 8, "a course needs a lap");
    const MeanLine mean = mean_line(laps);
    const std::vector<double>& distance = laps.front().distance_m;
    const double length = distance.back();
    const auto nodes = static_cast<std::size_t>(std::max(8.0, std::round(length / step_m)));
    const double h = length / static_cast<double>(nodes);
    std::vector<double> curvature(nodes, 0.0);
    std::vector<double> curvature_count(nodes, 0.0);
    std::vector<double> stretch(nodes, 0.0);
    std::vector<double> stretch_count(nodes, 0.0);
    // A node takes the grid points nearest to it, a cell those inside it.
    for (std::size_t i = 0; i + 1 < distance.size(); ++i) {
        const auto node = static_cast<std::size_t>(std::round(distance[i] / h)) % nodes;
        curvature[node] += mean.curvature[i];
        curvature_count[node] += 1.0;
        const std::size_t cell = std::min(nodes - 1, static_cast<std::size_t>(distance[i] / h));
        stretch[cell] += mean.stretch[i];
        stretch_count[cell] += 1.0;
    }
    car::Course course;
    for (std::size_t i = 0; i < nodes; ++i) {
        base::check(curvature_count[i] > 0.0 && stretch_count[i] > 0.0, "the grid is coarser than the course");
        course.curvature_per_m.push_back(curvature[i] / curvature_count[i]);
        course.step_m.push_back(h * stretch[i] / stretch_count[i]);
    }
    for (const track::Segment& segment : segments)
        course.segment_starts.push_back(std::clamp(segment.start_m / h, 0.0, static_cast<double>(nodes)));
    course.segment_starts.front() = 0.0;
    return course;
}

} // namespace lapwright::causes
