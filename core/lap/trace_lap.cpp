// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/trace_lap.h"

#include "core/base/parallel.h"
#include "core/track/gate.h"
#include "core/track/projection.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lapwright::lap {
namespace {

constexpr double furthest_offset_m = 40.0;
constexpr double min_advance_m = 1e-4; // a stamp that does not move on along the line carries no time
constexpr double nearest_m = 0.5;      // stations nearer than this say nothing new
constexpr double lost_after_m = 120.0; // this much of the lap may pass without a usable projection

// s(t) at one stamp.
struct Station {
    double time_s;
    double station_m;
    double rate_mps;
};

Station station_of(const motion::Moment& m, const track::Projection& p, const track::ReferenceLine& line) {
    const track::LinePoint there = line.at(p.station_m);
    const double forward = m.velocity_mps.east * there.tangent.east + m.velocity_mps.north * there.tangent.north;
    return {m.time_s, p.station_m, forward / std::max(0.2, 1.0 - there.curvature_per_m * p.offset_m)};
}

// The lap's stamps as increasing stations from 0 to the line's length.
std::vector<Station> stations(const motion::Path& path, double start_s, double end_s,
                              const track::ReferenceLine& line) {
    std::vector<Station> result;
    const motion::Moment first = path.at(start_s);
    result.push_back({start_s, 0.0, first.speed_mps()});
    if (const auto p = track::project_near(line, first.position_m, 0.0, 15.0))
        result.front().rate_mps = station_of(first, *p, line).rate_mps;
    double hint = 0.0;
    double advance = 0.0; // driven since the hint
    double before_s = start_s;
    for (std::size_t i = path.index_before(start_s) + 1; i < path.size() && (*path.time_s)[i] < end_s; ++i) {
        const motion::Moment m{(*path.time_s)[i], path.position_m[i], path.velocity_mps[i], path.acceleration_mps2[i]};
        if (m.time_s <= start_s) continue;
        advance += m.speed_mps() * (m.time_s - before_s);
        before_s = m.time_s;
        if (advance < nearest_m) continue;
        const auto p = track::project_near(line, m.position_m, hint + advance, 15.0 + 0.2 * advance);
        if (!p || std::abs(p->offset_m) > furthest_offset_m) {
            if (advance > lost_after_m) return {};
            continue;
        }
        hint = p->station_m;
        advance = 0.0;
        const Station here = station_of(m, *p, line);
        if (here.station_m > result.back().station_m + min_advance_m &&
            here.station_m < line.length_m - min_advance_m && here.rate_mps > 0.0)
            result.push_back(here);
    }
    const motion::Moment last = path.at(end_s);
    if (line.length_m - result.back().station_m > lost_after_m) return {};
    Station end{end_s, line.length_m, last.speed_mps()};
    if (const auto p = track::project_near(line, last.position_m, line.length_m, 15.0))
        end.rate_mps = station_of(last, *p, line).rate_mps;
    result.push_back(end);
    return result;
}

// A cubic whose end slopes are at most three times the mean slope is monotone (Fritsch and Carlson 1980).
double limited(double rate, double mean) {
    return std::clamp(rate, 0.0, 3.0 * mean);
}

// Time at which the cubic between two stamps reaches a station (safeguarded Newton on the share u of the interval).
double time_between(const Station& a, const Station& b, double station_m) {
    const double h = b.time_s - a.time_s;
    const double rise = b.station_m - a.station_m;
    const double ra = limited(a.rate_mps, rise / h) * h;
    const double rb = limited(b.rate_mps, rise / h) * h;
    double low = 0.0;
    double high = 1.0;
    double u = (station_m - a.station_m) / rise;
    for (int step = 0; step < 60; ++step) {
        const double value =
            ((((ra + rb - 2.0 * rise) * u + (3.0 * rise - 2.0 * ra - rb)) * u) + ra) * u - (station_m - a.station_m);
        if (std::abs(value) < 1e-10) break;
        (value < 0.0 ? low : high) = u;
        const double slope = (3.0 * (ra + rb - 2.0 * rise) * u + 2.0 * (3.0 * rise - 2.0 * ra - rb)) * u + ra;
        const double next = slope > 0.0 ? u - value / slope : -1.0;
        u = next > low && next < high ? next : 0.5 * (low + high);
    }
    return a.time_s + u * h;
}

// The line at the stations of a trace, worked out once for all draws of a lap.
struct Grid {
    std::vector<double> station_m;
    std::vector<track::LinePoint> line;
};

Grid grid_on(const track::ReferenceLine& line, double step_m) {
    const auto intervals = static_cast<std::size_t>(std::max(2L, std::lround(line.length_m / step_m)));
    Grid grid;
    for (std::size_t i = 0; i <= intervals; ++i) {
        grid.station_m.push_back(line.length_m * static_cast<double>(i) / static_cast<double>(intervals));
        grid.line.push_back(line.at(grid.station_m.back()));
    }
    return grid;
}

double signed_offset(const motion::Moment& m, const track::LinePoint& there) {
    return there.tangent.east * (m.position_m.north - there.position_m.north) -
           there.tangent.north * (m.position_m.east - there.position_m.east);
}

// Trapezium over the trace's own points, whose speeds are already there.
double driven_length(const LapTrace& trace) {
    double length = 0.0;
    for (std::size_t i = 1; i < trace.size(); ++i)
        length += 0.5 * (trace.speed_mps[i - 1] + trace.speed_mps[i]) * (trace.time_s[i] - trace.time_s[i - 1]);
    return length;
}

// A car without positions was somewhere across the road; 0 would be a claim.
void blank_unknown(LapTrace& trace, const motion::MotionEstimate& motion) {
    if (motion.source == motion::PositionSource::dead_reckoning)
        std::ranges::fill(trace.offset_m, std::numeric_limits<double>::quiet_NaN());
}

LapTrace with_room(const Grid& grid) {
    LapTrace trace;
    trace.distance_m = grid.station_m;
    for (auto* values :
         {&trace.time_s, &trace.speed_mps, &trace.longitudinal_mps2, &trace.lateral_mps2, &trace.offset_m})
        values->resize(grid.station_m.size());
    return trace;
}

std::optional<LapTrace> trace_on(const Grid& grid, const motion::Path& path, double start_s, double end_s,
                                 const track::ReferenceLine& line) {
    if (!(end_s > start_s)) return std::nullopt;
    const std::vector<Station> known = stations(path, start_s, end_s, line);
    if (known.size() < 3) return std::nullopt;
    LapTrace trace = with_room(grid);
    std::size_t k = 0;
    std::size_t stamp = path.index_before(start_s);
    for (std::size_t i = 0; i < grid.station_m.size(); ++i) {
        const double station = grid.station_m[i];
        while (k + 2 < known.size() && known[k + 1].station_m < station)
            ++k;
        double t = time_between(known[k], known[k + 1], station);
        if (i == 0) t = start_s;
        if (i + 1 == grid.station_m.size()) t = end_s;
        stamp = path.index_before(t, stamp);
        const motion::Moment m = path.at(t, stamp);
        trace.time_s[i] = t - start_s;
        trace.speed_mps[i] = m.speed_mps();
        trace.longitudinal_mps2[i] = m.longitudinal_mps2();
        trace.lateral_mps2[i] = m.lateral_mps2();
        trace.offset_m[i] = signed_offset(m, grid.line[i]);
    }
    trace.driven_length_m = driven_length(trace);
    return trace;
}

} // namespace

std::optional<LapTrace> trace_lap(const motion::Path& path, double start_s, double end_s,
                                  const track::ReferenceLine& line, double step_m) {
    return trace_on(grid_on(line, step_m), path, start_s, end_s, line);
}

std::optional<LapTrace> trace_lap(const motion::MotionEstimate& motion, double start_s, double end_s,
                                  const track::ReferenceLine& line, double step_m) {
    auto trace = trace_lap(motion.best, start_s, end_s, line, step_m);
    if (trace) blank_unknown(*trace, motion);
    return trace;
}

std::optional<LapEnsemble> trace_ensemble(const motion::MotionEstimate& motion, const Lap& lap, const track::Gate& gate,
                                          const track::ReferenceLine& line, double step_m,
                                          const recording::Recording& recording) {
    const Grid grid = grid_on(line, step_m);
    auto best = trace_on(grid, motion.best, lap.start_s, lap.end_s, line);
    if (!best) return std::nullopt;
    blank_unknown(*best, motion);
    LapEnsemble ensemble{with_channels(std::move(*best), lap.start_s, recording), {}};
    const std::vector<motion::Path> paths =
        motion::drawn_paths(motion, lap.start_s - track::crossing_search_s, lap.end_s + track::crossing_search_s);
    std::vector<std::optional<LapTrace>> traces(paths.size());
    base::parallel_for(paths.size(), 0, [&](std::size_t i) {
        const auto start = track::crossing_near(paths[i], gate, lap.start_s);
        const auto end = track::crossing_near(paths[i], gate, lap.end_s);
        if (start && end) traces[i] = trace_on(grid, paths[i], *start, *end, line);
    });
    for (std::optional<LapTrace>& trace : traces) {
        if (!trace) continue;
        blank_unknown(*trace, motion);
        ensemble.draws.push_back(std::move(*trace));
    }
    return ensemble;
}

} // namespace lapwright::lap
