// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: u the unwrapped station, lap l from start_m + l·length on; d a lap's own distance, 0..length.
#include "core/lap/place_on_line.h"

#include "core/lap/cornering.h"
#include "core/lap/warp.h"
#include "core/math/periodic_smoother.h"
#include "core/math/statistics.h"
#include "core/track/line_from_curvature.h"

#include <algorithm>
#include <cmath>

namespace lapwright::lap {
namespace {

using motion::Path;
using motion::Vec2;

constexpr double grid_m = 2.0;
constexpr double odd_length = 0.06;     // a lap whose distance is so far from the middle one's is not like the others
constexpr double line_error_sd = 0.002; // driven length against the line's, a lap; ours, no source
constexpr double cutoff_wave_m = 25.0;  // shorter waves of a curvature are noise, as in track/build_line.h
constexpr double min_agreement = 0.6;   // of two drives round one track
constexpr double clearly_better = 0.05; // of agreement, for another timing line than the line's own
constexpr double same_place_m = 25.0;

std::size_t points_for(double length_m) {
    return std::max<std::size_t>(64, static_cast<std::size_t>(std::lround(length_m / grid_m)));
}

// Curvature on so many places from a station on.
std::vector<double> curvature_on(const track::ReferenceLine& line, double start_m, std::size_t points) {
    std::vector<double> values(points);
    for (std::size_t i = 0; i < points; ++i)
        values[i] = line.curvature(start_m + line.length_m * static_cast<double>(i) / static_cast<double>(points));
    return values;
}

// The session's laps by its own distance.
struct Laps {
    std::vector<double> distance_m; // at the path's stamps
    std::vector<double> passing_m;  // distance at the passings
    double middle_m = 0.0;          // median lap
    std::size_t middle = 0;

    [[nodiscard]] std::size_t count() const { return passing_m.size() - 1; }
    [[nodiscard]] double length_m(std::size_t l) const { return passing_m[l + 1] - passing_m[l]; }
    [[nodiscard]] bool odd(std::size_t l) const { return std::abs(length_m(l) / middle_m - 1.0) > odd_length; }
};

Laps laps_of(const Path& path, const std::vector<double>& passings_s) {
    Laps laps;
    laps.distance_m = integrated_distance(path);
    for (const double t : passings_s)
        laps.passing_m.push_back(distance_at(path, laps.distance_m, t));
    std::vector<double> lengths;
    for (std::size_t l = 0; l < laps.count(); ++l)
        lengths.push_back(laps.length_m(l));
    laps.middle_m = math::median(lengths);
    for (std::size_t l = 1; l < laps.count(); ++l)
        if (std::abs(lengths[l] - laps.middle_m) < std::abs(lengths[laps.middle] - laps.middle_m)) laps.middle = l;
    return laps;
}

Cornering cornering(const DeadReckoned& session, const Laps& laps, std::size_t l, double length_m) {
    return cornering_of(session.motion->best, laps.distance_m, session.passings_s[l], session.passings_s[l + 1],
                        length_m, points_for(length_m));
}

// What every lap needs to be placed.
struct Placing {
    const track::ReferenceLine& line;
    double start_m;
    Laps laps;
    std::vector<Warp> warps; // one a lap
    std::vector<double> passings_s;
    double sign = 1.0;
};

// Which lap a stamp is in: -1 before the first passing, the count of laps behind the last.
long lap_at(const std::vector<double>& passings_s, double time_s) {
    return static_cast<long>(std::ranges::upper_bound(passings_s, time_s) - passings_s.begin()) - 1;
}

// Shifts of one drawn (or the best) path: at each lap's knots, and at each passing.
struct Shifts {
    std::vector<std::vector<double>> knots;
    std::vector<double> passings;
};

double unwrapped_station(const Placing& placing, const Shifts& shifts, double time_s, double distance_m) {
    const Laps& laps = placing.laps;
    const long l = lap_at(placing.passings_s, time_s);
    const double length = placing.line.length_m;
    const double outside = 0.98 * length; // out and in lap never reach the line's start again
    const double scale = length / laps.middle_m;
    if (l < 0)
        return placing.start_m + shifts.passings.front() -
               std::min(outside, scale * (laps.passing_m.front() - distance_m));
    const auto lap = static_cast<std::size_t>(l);
    const double before = placing.start_m + length * static_cast<double>(l);
    const double since = distance_m - laps.passing_m[lap];
    if (lap >= laps.count()) return before + shifts.passings.back() + std::min(outside, scale * since);
    const double d = laps.length_m(lap) > 0.0 ? length * since / laps.length_m(lap) : 0.0;
    return before + d + shift_at(placing.warps[lap], shifts.knots[lap], d);
}

std::vector<double> stations(const Placing& placing, const Shifts& shifts, const Path& path) {
    constexpr double min_advance_m = 1e-6;
    std::vector<double> result(path.size());
    for (std::size_t i = 0; i < path.size(); ++i) {
        result[i] = unwrapped_station(placing, shifts, (*path.time_s)[i], placing.laps.distance_m[i]);
        if (i > 0) result[i] = std::max(result[i], result[i - 1] + min_advance_m);
    }
    return result;
}

// Factor on the speeds of a path in each lap: its own distance against the line's length, where the wheels roll.
std::vector<double> scales(const Placing& placing, const Path& path, const Shifts& shifts) {
    const std::vector<double> distance = integrated_distance(path);
    const double usual = placing.line.length_m / placing.laps.middle_m;
    std::vector<double> result;
    for (std::size_t l = 0; l < placing.laps.count(); ++l) {
        const double driven =
            distance_at(path, distance, placing.passings_s[l + 1]) - distance_at(path, distance, placing.passings_s[l]);
        const bool known = !placing.laps.odd(l) && driven > 0.0;
        result.push_back(known ? placing.line.length_m / driven * rolling_scale(placing.warps[l], shifts.knots[l])
                               : usual);
    }
    return result;
}

// The path on the line: places from the stations, speed and accelerations its own, turned along the line.
Path on_line(const Placing& placing, const Path& path, const std::vector<double>& station_m,
             const std::vector<double>& scale) {
    Path placed = path;
    placed.between = motion::Between::linear;
    const double usual = placing.line.length_m / placing.laps.middle_m;
    for (std::size_t i = 0; i < path.size(); ++i) {
        const long l = lap_at(placing.passings_s, (*path.time_s)[i]);
        const bool in_lap = l >= 0 && static_cast<std::size_t>(l) < scale.size();
        const double factor = in_lap ? scale[static_cast<std::size_t>(l)] : usual;
        const motion::Moment moment{0.0, path.position_m[i], path.velocity_mps[i], path.acceleration_mps2[i]};
        const Vec2 t = placing.line.tangent_at(station_m[i]);
        const double speed = moment.speed_mps();
        const bool moves = speed > 1e-6;
        const double along = moves ? factor * moment.longitudinal_mps2() : 0.0;
        const double left = moves ? placing.sign * factor * moment.lateral_mps2() : 0.0;
        placed.position_m[i] = placing.line.position(station_m[i]);
        placed.velocity_mps[i] = {factor * speed * t.east, factor * speed * t.north};
        placed.acceleration_mps2[i] = {along * t.east - left * t.north, along * t.north + left * t.east};
    }
    return placed;
}

// Times at which the stations reach whole laps.
std::vector<double> passings_of_line(const Placing& placing, const Path& path, const std::vector<double>& station_m) {
    if (placing.start_m == 0.0) return placing.passings_s;
    std::vector<double> times;
    const double length = placing.line.length_m;
    for (std::size_t i = 1; i < station_m.size(); ++i) {
        const double whole = length * std::floor(station_m[i] / length);
        if (station_m[i - 1] >= whole) continue;
        const double part = (whole - station_m[i - 1]) / (station_m[i] - station_m[i - 1]);
        times.push_back((*path.time_s)[i - 1] + part * ((*path.time_s)[i] - (*path.time_s)[i - 1]));
    }
    return times;
}

Shifts best_shifts(const Placing& placing) {
    Shifts shifts{{}, std::vector<double>(placing.passings_s.size(), 0.0)};
    for (const Warp& warp : placing.warps)
        shifts.knots.push_back(warp.shift_m);
    return shifts;
}

// The file's stamps of the passings are off by up to half a sample, evenly; the rest is the warps' own.
Shifts drawn_shifts(const Placing& placing, const DeadReckoned& session, double start_sd_m,
                    math::NormalStream& normals) {
    Shifts shifts;
    const Path& best = session.motion->best;
    const double start_m = start_sd_m * normals.next();
    const double usual = placing.line.length_m / placing.laps.middle_m;
    for (std::size_t p = 0; p < placing.passings_s.size(); ++p) {
        const double even = std::erf(normals.next() / std::sqrt(2.0)); // -1..1
        const double error_s = p < session.error_s.size() ? session.error_s[p] : 0.0;
        shifts.passings.push_back(start_m + even * error_s * usual * best.at(placing.passings_s[p]).speed_mps());
    }
    for (std::size_t l = 0; l < placing.warps.size(); ++l)
        shifts.knots.push_back(drawn_shift(placing.warps[l], shifts.passings[l], shifts.passings[l + 1], normals));
    return shifts;
}

Placing fitted(const DeadReckoned& session, const track::ReferenceLine& line, double start_m) {
    Placing placing{line, start_m, laps_of(session.motion->best, session.passings_s), {}, session.passings_s};
    const std::vector<double> curvature = curvature_on(line, start_m, points_for(line.length_m));
    for (std::size_t l = 0; l < placing.laps.count(); ++l) {
        const Cornering lap = cornering(session, placing.laps, l, line.length_m);
        placing.warps.push_back(placing.laps.odd(l) ? unfitted_warp(lap) : fit_warp(lap, curvature));
    }
    placing.sign = placing.warps[placing.laps.middle].gain < 0.0 ? -1.0 : 1.0;
    return placing;
}

std::size_t laps_not_placed(const Placing& placing) {
    return static_cast<std::size_t>(std::ranges::count(placing.warps, base::FitStatus::not_converged,
                                                       [](const Warp& warp) { return warp.outcome.status; }));
}

// Curvature of the track from all laps brought onto the middle one, the fast ones counting more (their lateral
// acceleration says more of it).
std::vector<double> common_curvature(const DeadReckoned& session, const Laps& laps, double length_m) {
    const Cornering middle = cornering(session, laps, laps.middle, length_m);
    const std::size_t n = middle.size();
    std::vector<double> first(n);
    for (std::size_t i = 0; i < n; ++i)
        first[i] = middle.lateral_mps2[i] / std::pow(std::max(5.0, middle.speed_mps[i]), 2);
    const auto smooth = [&](const std::vector<double>& values, const std::vector<double>& weights) {
        const double lambda = math::lambda_for_cutoff(std::max(2.5, cutoff_wave_m / middle.step_m));
        return math::smooth_periodic(values, weights, lambda);
    };
    first = smooth(first, std::vector<double>(n, 1.0));
    std::vector<double> sum(n, 0.0);
    std::vector<double> weights(n, 0.0);
    for (std::size_t l = 0; l < laps.count(); ++l) {
        if (laps.odd(l)) continue;
        const Cornering lap = cornering(session, laps, l, length_m);
        const Warp warp = fit_warp(lap, first);
        if (!warp.outcome.converged()) continue;
        for (std::size_t i = 0; i < n; ++i) {
            const double d = static_cast<double>(i) * lap.step_m;
            const double station = d + shift_at(warp, warp.shift_m, d);
            const auto node = static_cast<std::size_t>(std::lround(std::max(0.0, station) / lap.step_m)) % n;
            const double square = std::pow(std::max(5.0, lap.speed_mps[i]), 2);
            sum[node] += square * lap.lateral_mps2[i];
            weights[node] += square * square;
        }
    }
    for (std::size_t i = 0; i < n; ++i)
        sum[i] = weights[i] > 0.0 ? sum[i] / weights[i] : 0.0;
    // Noise of the curvature goes with 1/v², but a slow corner must not be smoothed away: places seen count alike.
    for (double& weight : weights)
        weight = weight > 0.0 ? 1.0 : 0.0;
    return smooth(sum, weights);
}

} // namespace

OnLine placed_on_line(const DeadReckoned& session, const track::ReferenceLine& line, const motion::LocalFrame& frame,
                      const Start& start, std::uint64_t seed, double length_sd) {
    constexpr std::uint64_t lengths_seed = 0x1E26; // any: the same in every session
    const Placing placing = fitted(session, line, start.station_m);
    const motion::MotionEstimate& from = *session.motion;
    const Shifts best = best_shifts(placing);
    const std::vector<double> best_station = stations(placing, best, from.best);
    OnLine placed{from, passings_of_line(placing, from.best, best_station),
                  std::abs(placing.warps[placing.laps.middle].correlation), placing.sign < 0.0,
                  laps_not_placed(placing)};
    placed.motion.frame = frame;
    placed.motion.best = on_line(placing, from.best, best_station, scales(placing, from.best, best));
    for (std::size_t d = 0; d < from.draws.size(); ++d) {
        math::NormalStream normals(seed, (1U << 22U) + d);
        const double length = std::exp(length_sd * math::NormalStream(lengths_seed, d).next());
        const Shifts shifts = drawn_shifts(placing, session, start.sd_m, normals);
        const Path drawn = motion::drawn_path(from, d);
        std::vector<double> scale = scales(placing, drawn, shifts);
        const std::vector<double> station = stations(placing, shifts, drawn);
        for (double& factor : scale)
            factor *= length * (1.0 + line_error_sd * normals.next());
        placed.motion.draws[d] = motion::departures(on_line(placing, drawn, station, scale), placed.motion.best);
    }
    return placed;
}

std::optional<Start> start_on_line(const DeadReckoned& session, const track::ReferenceLine& line) {
    const Laps laps = laps_of(session.motion->best, session.passings_s);
    if (laps.middle_m < track::shortest_lap_m) return std::nullopt;
    const Cornering middle = cornering(session, laps, laps.middle, line.length_m);
    const Offset offset = best_offset(middle, curvature_on(line, 0.0, middle.size()));
    if (offset.agreement < min_agreement) return std::nullopt;
    Start start{offset.offset_m, 0.0,
                std::abs(offset.offset_m) < same_place_m ||
                    offset.agreement - offset.agreement_at_zero < clearly_better};
    for (int round = 0; round < 3; ++round) {
        const Warp warp = fit_warp(middle, curvature_on(line, start.station_m, middle.size()));
        start.station_m += warp.start_m;
        start.sd_m = warp.start_sd_m;
    }
    return start;
}

std::optional<track::ReferenceLine> dead_reckoned_line(const DeadReckoned& session, std::optional<double> length_m) {
    const Laps laps = laps_of(session.motion->best, session.passings_s);
    const double length = length_m.value_or(laps.middle_m);
    if (!(length >= track::shortest_lap_m && length <= track::longest_lap_m)) return std::nullopt;
    return track::line_from_curvature(common_curvature(session, laps, length), length);
}

} // namespace lapwright::lap
