// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: y_l the shift seen in lap l, d_l the shift of a draw's lap against the best path's, both relative to the
// level (mean over laps); C the covariance of true shifts, R that of what habits make of them; K = C (C + R)^-1.
#include "core/lap/align.h"

#include "core/base/parallel.h"
#include "core/lap/level_cases.h"
#include "core/lap/road_shift.h"
#include "core/math/normal_random.h"
#include "core/track/projection.h"

#include <Eigen/Dense>

#include <algorithm>
#include <cmath>
#include <optional>

namespace lapwright::lap {
namespace {

using Eigen::Vector2d;
using track::Vec2;

constexpr double sample_spacing_m = 8.0;
constexpr double furthest_tie_m = 25.0;
constexpr double min_cell_m = 20.0; // a lap is averaged in these
constexpr std::size_t min_cells = 16;
constexpr std::size_t max_cells = 300;
constexpr double widest_gap = 0.2; // share of the lap that may be missing
constexpr int min_rounds = 2;
constexpr double settled_sds = 0.5; // a round that moves each lap's drift by less has found it

// A stamp of the path beside the line.
struct Sample {
    std::size_t index;
    double station_m;
    Vector2d normal;
    double offset_m;
};

struct TracedLap {
    double start_s = 0.0;
    double end_s = 0.0;
    std::vector<Sample> samples;
};

std::vector<Sample> samples_of(const motion::Path& path, const Lap& lap, const track::ReferenceLine& line) {
    std::vector<Sample> samples;
    double hint = 0.0;
    double hint_time = lap.start_s;
    double covered = -sample_spacing_m;
    for (std::size_t i = path.index_before(lap.start_s) + 1; i < path.size() && (*path.time_s)[i] < lap.end_s; ++i) {
        const Vec2& v = path.velocity_mps[i];
        const double station = hint + std::hypot(v.east, v.north) * ((*path.time_s)[i] - hint_time);
        if (station - covered < sample_spacing_m) continue;
        const auto foot = track::project_near(line, path.position_m[i], station, 20.0 + 0.2 * (station - hint));
        if (!foot || std::fabs(foot->offset_m) > furthest_tie_m) continue;
        hint = foot->station_m;
        hint_time = (*path.time_s)[i];
        covered = hint;
        if (hint < 0.0 || hint >= line.length_m) continue;
        const Vec2 t = line.tangent_at(hint);
        samples.push_back({i, hint, {-t.north, t.east}, foot->offset_m});
    }
    return samples;
}

std::vector<TracedLap> traced_laps(const SessionOnRoad& session, const track::ReferenceLine& line) {
    std::vector<TracedLap> laps;
    const double whole = line.length_m / sample_spacing_m;
    for (const Lap& lap : session.laps) {
        if (lap.kind != LapKind::flying) continue;
        TracedLap traced{lap.start_s, lap.end_s, samples_of(session.motion->best, lap, line)};
        // Samples are up to a stamp's way further apart than asked for.
        if (static_cast<double>(traced.samples.size()) > (1.0 - widest_gap) * 0.6 * whole)
            laps.push_back(std::move(traced));
    }
    return laps;
}

// Offsets in cells along the line, NaN where there are none.
using Profile = std::vector<double>;

Profile profile(const std::vector<Sample>& samples, double length_m, std::size_t cells) {
    const double cell_m = length_m / static_cast<double>(cells);
    Profile sum(cells, 0.0);
    std::vector<double> count(cells, 0.0);
    for (const Sample& sample : samples) {
        const auto cell = std::min(cells - 1, static_cast<std::size_t>(sample.station_m / cell_m));
        sum[cell] += sample.offset_m;
        count[cell] += 1.0;
    }
    for (std::size_t i = 0; i < cells; ++i)
        sum[i] = count[i] > 0.0 ? sum[i] / count[i] : std::nan("");
    return sum;
}

Profile mean_profile(const std::vector<Profile>& profiles) {
    Profile mean(profiles.front().size(), std::nan(""));
    for (std::size_t i = 0; i < mean.size(); ++i) {
        std::vector<double> values;
        for (const Profile& one : profiles)
            if (!std::isnan(one[i])) values.push_back(one[i]);
        if (values.empty()) continue;
        const auto middle = values.begin() + static_cast<std::ptrdiff_t>(values.size() / 2);
        std::ranges::nth_element(values, middle);
        mean[i] = *middle;
    }
    return mean;
}

std::size_t cells_on(const track::ReferenceLine& line) {
    return std::clamp(static_cast<std::size_t>(line.length_m / min_cell_m), min_cells, max_cells);
}

RoadShift road_of(const track::ReferenceLine& line) {
    const std::size_t cells = cells_on(line);
    const double cell_m = line.length_m / static_cast<double>(cells);
    std::vector<Vector2d> normals(cells);
    for (std::size_t i = 0; i < cells; ++i) {
        const Vec2 t = line.tangent_at((static_cast<double>(i) + 0.5) * cell_m);
        normals[i] = {-t.north, t.east};
    }
    return {std::move(normals), cell_m};
}

Profile less(Profile from, const Profile& what) {
    for (std::size_t i = 0; i < from.size(); ++i)
        from[i] -= what[i];
    return from;
}

// Mean shift of a draw's lap against the best path's: the regression of their difference along the normals.
Vector2d draw_shift(const motion::Draw& draw, const TracedLap& lap) {
    Eigen::Matrix2d information = Eigen::Matrix2d::Zero();
    Vector2d vector = Vector2d::Zero();
    for (const Sample& sample : lap.samples) {
        const motion::Departure departure = draw[sample.index];
        const double off = sample.normal.dot(Vector2d{departure.east_m, departure.north_m});
        information += sample.normal * sample.normal.transpose();
        vector += off * sample.normal;
    }
    return information.ldlt().solve(vector);
}

// Rows: laps; columns: east, north.
using PlaceShifts = Eigen::MatrixX2d;

// What one session shows.
struct Seen {
    std::vector<double> middle_s;
    Shift level;
    PlaceShifts drift;              // y
    Eigen::VectorXd drift_variance; // R, diagonal
    std::vector<Vector2d> draw_level;
    std::vector<PlaceShifts> draw_drift; // d
    DrawnLevel drawn_level;
    double walk_variance = 0.0; // from lap to lap
    base::FitOutcome outcome;
};

// The usual line is that of the laps once each has its own drift taken off, which is known against the usual line.
Profile find_drift(Seen& seen, const std::vector<Profile>& profiles, const RoadShift& road, int max_rounds) {
    const auto n = static_cast<Eigen::Index>(profiles.size());
    Profile usual = mean_profile(profiles);
    seen.drift = PlaceShifts::Zero(n, 2);
    seen.drift_variance = Eigen::VectorXd::Ones(n);
    seen.outcome = {base::FitStatus::not_converged, 0, profiles.size()};
    Eigen::VectorXd moved_variance;
    while (seen.outcome.rounds < max_rounds && !(seen.outcome.converged() && seen.outcome.rounds >= min_rounds)) {
        const PlaceShifts before = seen.drift;
        for (Eigen::Index l = 0; l < n; ++l) {
            const Shift shift = road.of(less(profiles[static_cast<std::size_t>(l)], usual));
            seen.drift.row(l) = shift.value.transpose();
            seen.drift_variance[l] = shift.variance() + 1e-6;
        }
        seen.drift.rowwise() -= seen.drift.colwise().mean().eval();
        std::vector<Profile> undrifted;
        for (Eigen::Index l = 0; l < n; ++l)
            undrifted.push_back(
                less(profiles[static_cast<std::size_t>(l)], road.offsets(seen.drift.row(l).transpose())));
        usual = mean_profile(undrifted);
        moved_variance = 0.5 * (seen.drift - before).rowwise().squaredNorm();
        const bool settled = (moved_variance.array() <= std::pow(settled_sds, 2) * seen.drift_variance.array()).all();
        seen.outcome.status = settled ? base::FitStatus::converged : base::FitStatus::not_converged;
        ++seen.outcome.rounds;
    }
    if (!seen.outcome.converged()) seen.drift_variance += moved_variance;
    return usual;
}

Seen look_at(const motion::MotionEstimate& motion, const std::vector<TracedLap>& laps, const track::ReferenceLine& line,
             const RoadShift& road, int max_rounds) {
    const std::size_t cells = cells_on(line);
    const auto n = static_cast<Eigen::Index>(laps.size());
    Seen seen;
    seen.drawn_level.span_s = laps.back().end_s - laps.front().start_s;
    std::vector<Profile> profiles;
    for (const TracedLap& lap : laps) {
        seen.middle_s.push_back(0.5 * (lap.start_s + lap.end_s));
        profiles.push_back(profile(lap.samples, line.length_m, cells));
    }
    seen.level = road.of(find_drift(seen, profiles, road, max_rounds));
    for (const motion::Draw& draw : motion.draws) {
        PlaceShifts shifts(n, 2);
        for (Eigen::Index l = 0; l < n; ++l)
            shifts.row(l) = draw_shift(draw, laps[static_cast<std::size_t>(l)]).transpose();
        const Vector2d level = shifts.colwise().mean().transpose();
        seen.draw_level.push_back(level);
        seen.draw_drift.push_back(shifts.rowwise() - level.transpose());
        seen.drawn_level.variance += 0.5 * level.squaredNorm() / static_cast<double>(motion.draws.size());
        for (Eigen::Index l = 0; l + 1 < n; ++l)
            seen.walk_variance += 0.5 * (shifts.row(l + 1) - shifts.row(l)).squaredNorm() /
                                  static_cast<double>(motion.draws.size() * static_cast<std::size_t>(n - 1));
    }
    return seen;
}

// K for the drift: a random walk over laps, its mean taken out.
Eigen::MatrixXd drift_gain(const Seen& seen) {
    const auto n = static_cast<Eigen::Index>(seen.middle_s.size());
    Eigen::MatrixXd walk(n, n);
    for (Eigen::Index i = 0; i < n; ++i)
        for (Eigen::Index j = 0; j < n; ++j)
            walk(i, j) = seen.walk_variance * static_cast<double>(std::min(i, j));
    const Eigen::MatrixXd centre =
        Eigen::MatrixXd::Identity(n, n) - Eigen::MatrixXd::Constant(n, n, 1.0 / static_cast<double>(n));
    const Eigen::MatrixXd c = centre * walk * centre;
    const Eigen::MatrixXd sum = c + Eigen::MatrixXd(seen.drift_variance.asDiagonal());
    return sum.ldlt().solve(c).transpose();
}

motion::Drift drift_of(const Seen& seen, const PlaceShifts& shifts) {
    motion::Drift drift{seen.middle_s, {}};
    for (const auto& shift : shifts.rowwise())
        drift.shift_m.push_back({shift[0], shift[1]});
    return drift;
}

PlaceShifts noise(Eigen::Index rows, math::NormalStream& normals) {
    PlaceShifts z(rows, 2);
    for (Eigen::Index i = 0; i < rows; ++i)
        z.row(i) << normals.next(), normals.next();
    return z;
}

// Student's t: the spread itself is known from few blocks.
Vector2d drawn_habit(const Shift& shift, math::NormalStream& normals) {
    const Eigen::Matrix2d factor = (shift.covariance + 1e-12 * Eigen::Matrix2d::Identity()).llt().matrixL();
    double squares = 0.0;
    const int degrees_of_freedom = static_cast<int>(shift.degrees_of_freedom);
    for (int i = 0; i < degrees_of_freedom; ++i)
        squares += std::pow(normals.next(), 2);
    const double scale = std::sqrt(degrees_of_freedom / std::max(squares, 1e-6));
    return scale * (factor * noise(1, normals).transpose());
}

// What is to be taken off a draw so that it lies on the first session's map.
Vector2d level_of_draw(const Seen& own, const Vector2d& map, std::size_t draw, const LevelCase& one,
                       const Vector2d& habit) {
    const Vector2d apart = one.own_scale * own.draw_level[draw] - one.first_scale * map;
    return own.draw_level[draw] - apart + one.gain * (own.level.value + apart + habit);
}

// The first session defines the map: its level is taken off its draws, and no shift off its best path but the drift.
motion::MotionEstimate shifted(const motion::MotionEstimate& motion, const Seen& own, const Seen& first, bool is_first,
                               std::uint64_t seed) {
    motion::MotionEstimate result = motion;
    const Eigen::MatrixXd gain = drift_gain(own);
    const std::vector<LevelCase> cases = level_cases(own.drawn_level, first.drawn_level, own.level);
    const double level_gain = is_first ? 0.0 : mean_gain(cases);
    const auto with_level = [](PlaceShifts drift, const Vector2d& level) {
        drift.rowwise() += level.transpose();
        return drift;
    };
    const PlaceShifts best_shift = with_level(gain * own.drift, level_gain * own.level.value);
    motion::take_off(result.best, drift_of(own, best_shift));
    const Eigen::VectorXd drift_sd = own.drift_variance.cwiseSqrt();
    const auto count = static_cast<double>(result.draws.size());
    for (std::size_t d = 0; d < result.draws.size(); ++d) {
        math::NormalStream normals(seed, (1U << 21U) + d);
        const Vector2d habit = drawn_habit(own.level, normals);
        const PlaceShifts habits = drift_sd.asDiagonal() * noise(own.drift.rows(), normals);
        const Vector2d map = d < first.draw_level.size() ? first.draw_level[d] : Vector2d::Zero();
        const Vector2d level =
            is_first ? map : level_of_draw(own, map, d, case_at(cases, (static_cast<double>(d) + 0.5) / count), habit);
        const PlaceShifts shift = with_level(gain * (own.drift + own.draw_drift[d] + habits), level);
        result.draws[d].drift = drift_of(own, shift - best_shift); // the best path's is taken off already
    }
    return result;
}

} // namespace

std::vector<Aligned> aligned(std::span<const SessionOnRoad> sessions, const track::ReferenceLine& line,
                             std::uint64_t seed, int max_rounds) {
    const RoadShift road = road_of(line);
    std::vector<std::optional<Seen>> seen(sessions.size());
    base::parallel_for(sessions.size(), 0, [&](std::size_t i) {
        const motion::MotionEstimate& motion = *sessions[i].motion;
        if (motion.draws.empty() || motion.source == motion::PositionSource::dead_reckoning) return;
        const std::vector<TracedLap> laps = traced_laps(sessions[i], line);
        if (!laps.empty()) seen[i] = look_at(motion, laps, line, road, max_rounds);
    });
    std::vector<Aligned> result(sessions.size());
    base::parallel_for(sessions.size(), 0, [&](std::size_t i) {
        const motion::MotionEstimate& motion = *sessions[i].motion;
        const bool is_first = motion.best.time_s == sessions.front().motion->best.time_s;
        if (seen[i] && seen.front())
            result[i] = {shifted(motion, *seen[i], *seen.front(), is_first, seed + (is_first ? 0 : i)),
                         seen[i]->outcome};
        else
            result[i] = {motion, {}};
    });
    return result;
}

} // namespace lapwright::lap
