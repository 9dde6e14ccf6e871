// SPDX-License-Identifier: GPL-3.0-or-later
// Rounds of: project every lap on the line, move the line to the middle of the laps, smooth, space the nodes evenly.
#include "core/track/build_line.h"

#include "core/base/parallel.h"
#include "core/math/periodic_smoother.h"
#include "core/math/statistics.h"
#include "core/track/projection.h"

#include <algorithm>
#include <cmath>

namespace lapwright::track {
namespace {

constexpr double node_spacing_m = 1.0;
constexpr double worst_closure_m = 60.0;
constexpr double furthest_offset_m = 30.0;
constexpr double sampling_m = 2.0; // along a lap; the offset changes slowly
constexpr double followed_m = 6.0; // how far a sample may lie from where the last one points
constexpr double overlap_s = 0.5;
constexpr double sought_m = 20.0; // the same when it was lost

double distance(Vec2 a, Vec2 b) {
    return std::hypot(a.east - b.east, a.north - b.north);
}

// Points along the stretch at most half a metre apart, the end included.
std::vector<Vec2> dense_points(const Stretch& lap) {
    std::vector<Vec2> points;
    double t = lap.start_s;
    std::size_t stamp = lap.path->index_before(t);
    while (t < lap.end_s) {
        stamp = lap.path->index_before(t, stamp);
        const motion::Moment moment = lap.path->at(t, stamp);
        points.push_back(moment.position_m);
        t += 0.5 / std::max(2.0, moment.speed_mps());
    }
    points.push_back(lap.path->at(lap.end_s).position_m);
    return points;
}

// Evenly spaced points along a polygon; closed: the last piece leads back to the first point.
std::vector<Vec2> evenly_spaced(std::span<const Vec2> points, std::size_t count, bool closed) {
    std::vector<double> along(points.size() + (closed ? 1 : 0), 0.0);
    for (std::size_t i = 1; i < along.size(); ++i)
        along[i] = along[i - 1] + distance(points[i % points.size()], points[i - 1]);
    std::vector<Vec2> result(count);
    std::size_t piece = 0;
    for (std::size_t k = 0; k < count; ++k) {
        const double wanted = along.back() * static_cast<double>(k) / static_cast<double>(count);
        while (piece + 2 < along.size() && along[piece + 1] < wanted)
            ++piece;
        const Vec2 a = points[piece];
        const Vec2 b = points[(piece + 1) % points.size()];
        const double length = along[piece + 1] - along[piece];
        const double u = length > 0.0 ? (wanted - along[piece]) / length : 0.0;
        result[k] = {a.east + u * (b.east - a.east), a.north + u * (b.north - a.north)};
    }
    return result;
}

// A stretch that jumps about is not worth its millions of points.
bool is_too_long(const Stretch& lap) {
    double length = 0.0;
    for (std::size_t i = lap.path->index_before(lap.start_s);
         i + 1 < lap.path->size() && (*lap.path->time_s)[i] < lap.end_s; ++i)
        length += distance(lap.path->position_m[i + 1], lap.path->position_m[i]);
    return length > 1.1 * longest_lap_m;
}

double polygon_length(std::span<const Vec2> points) {
    double length = 0.0;
    for (std::size_t i = 1; i < points.size(); ++i)
        length += distance(points[i], points[i - 1]);
    return length;
}

struct Coordinates {
    std::vector<double> east;
    std::vector<double> north;
};

Coordinates coordinates(std::span<const Vec2> points) {
    Coordinates c;
    for (const Vec2 p : points) {
        c.east.push_back(p.east);
        c.north.push_back(p.north);
    }
    return c;
}

std::vector<Vec2> points_of(const Coordinates& c) {
    std::vector<Vec2> points(c.east.size());
    for (std::size_t i = 0; i < points.size(); ++i)
        points[i] = {c.east[i], c.north[i]};
    return points;
}

std::vector<Vec2> smoothed(std::span<const Vec2> points, double spacing_m, double cutoff_wave_m) {
    const double lambda = math::lambda_for_cutoff(std::max(2.5, cutoff_wave_m / spacing_m));
    const Coordinates c = coordinates(points);
    math::SmoothedPair smooth = math::smooth_periodic_pair(c.east, c.north, lambda);
    return points_of({std::move(smooth.first), std::move(smooth.second)});
}

// Tangents, curvature and length of a smooth closed curve from its nodes, then the nodes moved so that arc length
// between them is even: the parameter's speed |r'| is integrated along the nodes and inverted.
ReferenceLine line_from_nodes(std::vector<Vec2> nodes) {
    ReferenceLine line;
    const std::size_t n = nodes.size();
    for (int pass = 0; pass < 3; ++pass) {
        const Coordinates c = coordinates(nodes);
        const auto de = math::first_derivative_periodic(c.east, 1.0);
        const auto dn = math::first_derivative_periodic(c.north, 1.0);
        const auto dde = math::second_derivative_periodic(c.east, 1.0);
        const auto ddn = math::second_derivative_periodic(c.north, 1.0);
        std::vector<double> speed(n);
        for (std::size_t i = 0; i < n; ++i)
            speed[i] = std::hypot(de[i], dn[i]);
        const auto dspeed = math::first_derivative_periodic(speed, 1.0);
        // Corrected trapezium (Euler–Maclaurin): fourth order, and exact closure on a periodic curve.
        std::vector<double> along(n + 1, 0.0);
        for (std::size_t i = 0; i < n; ++i) {
            const std::size_t j = (i + 1) % n;
            along[i + 1] = along[i] + 0.5 * (speed[i] + speed[j]) + (dspeed[i] - dspeed[j]) / 12.0;
        }
        line.length_m = along[n];
        line.step_m = along[n] / static_cast<double>(n);
        line.position_m = nodes;
        line.tangent.resize(n);
        line.curvature_per_m.resize(n);
        for (std::size_t i = 0; i < n; ++i) {
            line.tangent[i] = {de[i] / speed[i], dn[i] / speed[i]};
            line.curvature_per_m[i] = (de[i] * ddn[i] - dn[i] * dde[i]) / (speed[i] * speed[i] * speed[i]);
        }
        if (pass == 2) break;
        // The node for station k·step: parameter i + u with along(i + u) = k·step, then Hermite in the parameter.
        std::vector<Vec2> moved(n);
        std::size_t i = 0;
        for (std::size_t k = 0; k < n; ++k) {
            const double wanted = line.step_m * static_cast<double>(k);
            while (i + 1 < n && along[i + 1] <= wanted)
                ++i;
            const std::size_t j = (i + 1) % n;
            const double u = (wanted - along[i]) / (along[i + 1] - along[i]);
            const double a = (1 + 2 * u) * (1 - u) * (1 - u);
            const double b = u * (1 - u) * (1 - u);
            const double d = u * u * (u - 1);
            moved[k] = {a * nodes[i].east + b * de[i] + (1 - a) * nodes[j].east + d * de[j],
                        a * nodes[i].north + b * dn[i] + (1 - a) * nodes[j].north + d * dn[j]};
        }
        nodes = std::move(moved);
    }
    return line;
}

// Offset of each node from one lap; weight 0 where the lap was not seen.
struct Offsets {
    std::vector<double> value_m;
    std::vector<bool> seen;
};

Offsets offsets_of(const ReferenceLine& line, const Stretch& lap) {
    Offsets offsets{std::vector<double>(line.size(), 0.0), std::vector<bool>(line.size(), false)};
    // Begun before the gate and ended behind it: a node that only some laps saw would be placed by those alone.
    const double from_s = std::max(lap.path->start_s(), lap.start_s - overlap_s);
    const double to_s = std::min(lap.path->end_s(), lap.end_s + overlap_s);
    double hint = -(lap.start_s - from_s) * lap.path->at(from_s).speed_mps();
    std::optional<Projection> before;
    double t = from_s;
    std::size_t stamp = lap.path->index_before(t);
    while (t <= to_s) {
        stamp = lap.path->index_before(t, stamp);
        const motion::Moment moment = lap.path->at(t, stamp);
        const double pace = sampling_m / std::max(2.0, moment.speed_mps());
        const auto here = project_near(line, moment.position_m, hint, before ? followed_m : sought_m);
        if (here && std::abs(here->offset_m) < furthest_offset_m) {
            if (before && here->station_m > before->station_m &&
                here->station_m - before->station_m < 4.0 * sampling_m) {
                const auto first = static_cast<long>(std::ceil(before->station_m / line.step_m));
                const auto last = static_cast<long>(std::floor(here->station_m / line.step_m));
                for (long k = std::max(0L, first); k <= std::min(last, static_cast<long>(line.size()) - 1); ++k) {
                    const double u = (static_cast<double>(k) * line.step_m - before->station_m) /
                                     (here->station_m - before->station_m);
                    const auto node = static_cast<std::size_t>(k);
                    offsets.value_m[node] = before->offset_m + u * (here->offset_m - before->offset_m);
                    offsets.seen[node] = true;
                }
            }
            before = here;
            hint = here->station_m;
        } else {
            before.reset();
        }
        hint += sampling_m;
        t += pace;
    }
    return offsets;
}

// A lap's position drifts: its ends at the gate do not meet.  Left in, the step would look like a corner at the gate,
// so it is spread over the lap.
void close(std::vector<double>& offsets) {
    const std::size_t n = offsets.size();
    const std::size_t span = std::min<std::size_t>(30, n / 8);
    std::vector<double> first(offsets.begin(), offsets.begin() + static_cast<std::ptrdiff_t>(span));
    std::vector<double> last(offsets.end() - static_cast<std::ptrdiff_t>(span), offsets.end());
    const double step = math::median(last) - math::median(first);
    for (std::size_t i = 0; i < n; ++i)
        offsets[i] -= step * (static_cast<double>(i) / static_cast<double>(n) - 0.5);
}

// The line moved sideways to the middle of the laps.
std::vector<Vec2> moved_to_middle(const ReferenceLine& line, std::span<const Stretch> laps) {
    std::vector<Offsets> all(laps.size());
    base::parallel_for(laps.size(), 0, [&](std::size_t i) { all[i] = offsets_of(line, laps[i]); });
    std::vector<double> middle(line.size(), 0.0);
    std::vector<double> here;
    for (std::size_t i = 0; i < line.size(); ++i) {
        here.clear();
        for (const Offsets& offsets : all)
            if (offsets.seen[i]) here.push_back(offsets.value_m[i]);
        if (!here.empty())
            middle[i] = math::median(here);
        else if (i > 0)
            middle[i] = middle[i - 1];
    }
    close(middle);
    std::vector<Vec2> nodes = line.position_m;
    for (std::size_t i = 0; i < nodes.size(); ++i) {
        nodes[i].east -= middle[i] * line.tangent[i].north;
        nodes[i].north += middle[i] * line.tangent[i].east;
    }
    return nodes;
}

// The seed's end brought onto its start, the difference spread along the lap.
std::vector<Vec2> closed(std::vector<Vec2> points) {
    const Vec2 miss{points.back().east - points.front().east, points.back().north - points.front().north};
    const auto last = static_cast<double>(points.size() - 1);
    for (std::size_t i = 0; i < points.size(); ++i) {
        const double part = static_cast<double>(i) / last - 0.5;
        points[i].east -= part * miss.east;
        points[i].north -= part * miss.north;
    }
    points.pop_back();
    return points;
}

// Station 0 where the line passes the gate.
ReferenceLine starting_at(const ReferenceLine& line, const Gate& gate) {
    const double start = project_anywhere(line, gate.centre_m).station_m;
    std::vector<Vec2> nodes(line.size());
    for (std::size_t i = 0; i < nodes.size(); ++i)
        nodes[i] = line.position(start + static_cast<double>(i) * line.step_m);
    return line_from_nodes(std::move(nodes));
}

} // namespace

ReferenceLine line_through(std::span<const Vec2> closed_points, double step_m, double cutoff_wave_m) {
    std::vector<Vec2> ring(closed_points.begin(), closed_points.end());
    ring.push_back(ring.front());
    const double length = polygon_length(ring);
    const auto count = std::max<std::size_t>(16, static_cast<std::size_t>(std::lround(length / step_m)));
    const auto even = evenly_spaced(closed_points, count, true);
    return line_from_nodes(smoothed(even, length / static_cast<double>(count), cutoff_wave_m));
}

std::optional<ReferenceLine> build_line(std::span<const Stretch> laps, const Gate& gate, int rounds) {
    if (laps.empty() || is_too_long(laps.front())) return std::nullopt;
    std::vector<Vec2> seed = dense_points(laps.front());
    const double length = polygon_length(seed);
    if (length < shortest_lap_m || length > longest_lap_m) return std::nullopt;
    if (distance(seed.front(), seed.back()) > worst_closure_m) return std::nullopt;
    ReferenceLine line = line_through(closed(std::move(seed)), node_spacing_m);
    for (int round = 0; round < rounds; ++round) {
        const auto nodes = moved_to_middle(line, laps);
        line = line_from_nodes(smoothed(nodes, line.step_m, line_cutoff_wave_m));
    }
    return starting_at(line, gate);
}

} // namespace lapwright::track
