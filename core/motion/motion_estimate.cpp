// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/motion/motion_estimate.h"

#include "core/base/check.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::motion {
namespace {

constexpr double standstill_mps = 1e-9;

struct AxisState {
    double position = 0.0;
    double velocity = 0.0;
    double acceleration = 0.0;
};

// The quintic from `start` to `end` over `step` seconds (`rate`: their reciprocal), at the part u (0..1) of the way.
AxisState quintic(const AxisState& start, const AxisState& end, double step, double rate, double u) {
    const double c1 = start.velocity * step;
    const double c2 = 0.5 * start.acceleration * step * step;
    const double position_rest = end.position - (start.position + c1 + c2);
    const double velocity_rest = end.velocity * step - (c1 + 2.0 * c2);
    const double acceleration_rest = end.acceleration * step * step - 2.0 * c2;
    const double c3 = 10.0 * position_rest - 4.0 * velocity_rest + 0.5 * acceleration_rest;
    const double c4 = -15.0 * position_rest + 7.0 * velocity_rest - acceleration_rest;
    const double c5 = 6.0 * position_rest - 3.0 * velocity_rest + 0.5 * acceleration_rest;
    return {start.position + u * (c1 + u * (c2 + u * (c3 + u * (c4 + u * c5)))),
            (c1 + u * (2.0 * c2 + u * (3.0 * c3 + u * (4.0 * c4 + u * 5.0 * c5)))) * rate,
            (2.0 * c2 + u * (6.0 * c3 + u * (12.0 * c4 + u * 20.0 * c5))) * (rate * rate)};
}

AxisState line(const AxisState& start, const AxisState& end, double u) {
    const auto mixed = [u](double a, double b) { return a + u * (b - a); };
    return {mixed(start.position, end.position), mixed(start.velocity, end.velocity),
            mixed(start.acceleration, end.acceleration)};
}

Vec2 moved(const Vec2& from, float east, float north) {
    return {from.east + static_cast<double>(east), from.north + static_cast<double>(north)};
}

// The draw at `stamps`, which are the best path's from `first` on.
Path stretch_of(const Path& best, const Draw& draw, std::shared_ptr<const std::vector<double>> stamps,
                std::size_t first) {
    const std::size_t count = stamps->size();
    Path path{std::move(stamps), std::vector<Vec2>(count), std::vector<Vec2>(count), std::vector<Vec2>(count),
              best.between};
    for (std::size_t i = 0; i < count; ++i) {
        const Departure off = draw[first + i];
        path.position_m[i] = moved(best.position_m[first + i], off.east_m, off.north_m);
        path.velocity_mps[i] = moved(best.velocity_mps[first + i], off.east_mps, off.north_mps);
        path.acceleration_mps2[i] = moved(best.acceleration_mps2[first + i], off.east_mps2, off.north_mps2);
    }
    take_off(path, draw.drift);
    return path;
}

} // namespace

double Moment::longitudinal_mps2() const {
    const double speed = speed_mps();
    if (speed < standstill_mps) return std::numeric_limits<double>::quiet_NaN();
    return (velocity_mps.east * acceleration_mps2.east + velocity_mps.north * acceleration_mps2.north) / speed;
}

double Moment::lateral_mps2() const {
    const double speed = speed_mps();
    if (speed < standstill_mps) return std::numeric_limits<double>::quiet_NaN();
    return (velocity_mps.east * acceleration_mps2.north - velocity_mps.north * acceleration_mps2.east) / speed;
}

Moment Path::at(double moment_s) const {
    return at(moment_s, index_before(moment_s));
}

Moment Path::at(double moment_s, std::size_t index) const {
    base::check(index + 1 < size(), "moment behind the end of a path");
    const double start = (*time_s)[index];
    const double step = (*time_s)[index + 1] - start;
    const double clamped = std::clamp(moment_s, start, start + step);
    const double u = (clamped - start) / step;
    const double rate = 1.0 / step;
    const auto axis = [&](double Vec2::* part) {
        const AxisState before{position_m[index].*part, velocity_mps[index].*part, acceleration_mps2[index].*part};
        const AxisState after{position_m[index + 1].*part, velocity_mps[index + 1].*part,
                              acceleration_mps2[index + 1].*part};
        return between == Between::linear ? line(before, after, u) : quintic(before, after, step, rate, u);
    };
    const AxisState east = axis(&Vec2::east);
    const AxisState north = axis(&Vec2::north);
    return {clamped,
            {east.position, north.position},
            {east.velocity, north.velocity},
            {east.acceleration, north.acceleration}};
}

std::size_t Path::index_before(double moment_s) const {
    base::check(size() >= 2 && time_s && time_s->size() == size(), "a path of fewer than two stamps");
    const auto after = std::ranges::upper_bound(*time_s, moment_s);
    const auto count = static_cast<std::size_t>(after - time_s->begin());
    return std::min(count > 0 ? count - 1 : 0, size() - 2);
}

std::size_t Path::index_before(double moment_s, std::size_t from) const {
    while (from + 2 < size() && (*time_s)[from + 1] <= moment_s)
        ++from;
    return from;
}

Draw departures(const Path& draw, const Path& best) {
    auto result = std::make_shared<Departures>(best.size(), 1);
    for (std::size_t i = 0; i < best.size(); ++i) {
        float* figure = result->at(i);
        for (const auto part : {&Path::position_m, &Path::velocity_mps, &Path::acceleration_mps2})
            for (const auto axis : {&Vec2::east, &Vec2::north})
                *figure++ = static_cast<float>((draw.*part)[i].*axis - (best.*part)[i].*axis);
    }
    return {std::move(result), 0, {}};
}

void take_off(Path& path, const Drift& drift) {
    const std::vector<double>& moment_s = drift.time_s;
    std::size_t at = 0;
    for (std::size_t i = 0; i < path.size() && !moment_s.empty(); ++i) {
        const double t = (*path.time_s)[i];
        while (at + 1 < moment_s.size() && moment_s[at + 1] <= t)
            ++at;
        const Vec2& from = drift.shift_m[at];
        const bool within = t > moment_s[at] && at + 1 < moment_s.size();
        const Vec2& to = drift.shift_m[within ? at + 1 : at];
        const double per_s = within ? 1.0 / (moment_s[at + 1] - moment_s[at]) : 0.0;
        const Vec2 rate{(to.east - from.east) * per_s, (to.north - from.north) * per_s};
        const double since = t - moment_s[at];
        path.position_m[i].east -= from.east + since * rate.east;
        path.position_m[i].north -= from.north + since * rate.north;
        path.velocity_mps[i].east -= rate.east;
        path.velocity_mps[i].north -= rate.north;
    }
}

Path drawn_path(const MotionEstimate& motion, std::size_t draw) {
    return stretch_of(motion.best, motion.draws[draw], motion.best.time_s, 0);
}

std::vector<Path> drawn_paths(const MotionEstimate& motion, double from_s, double to_s) {
    const Path& best = motion.best;
    const std::size_t first = best.index_before(from_s);
    const std::size_t end = std::min(best.index_before(to_s, first) + 2, best.size());
    const auto begin = best.time_s->begin() + static_cast<std::ptrdiff_t>(first);
    const auto stamps =
        std::make_shared<const std::vector<double>>(begin, begin + static_cast<std::ptrdiff_t>(end - first));
    std::vector<Path> paths;
    paths.reserve(motion.draws.size());
    for (const Draw& draw : motion.draws)
        paths.push_back(stretch_of(best, draw, stamps, first));
    return paths;
}

} // namespace lapwright::motion
