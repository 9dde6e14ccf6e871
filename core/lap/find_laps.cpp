// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/lap/find_laps.h"

#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/math/statistics.h"
#include "core/track/gate.h"
#include "core/track/track.h"

#include <algorithm>
#include <cmath>

namespace lapwright::lap {
namespace {

using base::said;
using motion::Vec2;

constexpr double slow_mps = 14.0; // leaving or entering the pit lane
// A hole is bridged where it is short, or where the draws agree on how the car went through it.
constexpr double longest_bridge_s = 2.0;
constexpr double longest_known_bridge_s = 10.0;
constexpr double known_bridge_sd_m = 2.0;
// Ours, no source: a walk is slower, and no road turns so much on so little room.
constexpr double slowest_lap_mps = 3.0;
constexpr double smallest_reach_m = 20.0;
constexpr double smallest_reach_share = 0.04;

// Where the draws are furthest apart in a hole: near its middle.
double spread_within_m(const motion::MotionEstimate& motion, const motion::Bridge& bridge) {
    double widest = 0.0;
    for (const double part : {0.3, 0.5, 0.7}) {
        const double time_s = bridge.from_s + part * (bridge.to_s - bridge.from_s);
        const Vec2 best = motion.best.at(time_s).position_m;
        double squares = 0.0;
        for (const motion::Path& draw : motion::drawn_paths(motion, time_s, time_s)) {
            const Vec2 p = draw.at(time_s).position_m;
            squares += std::pow(p.east - best.east, 2) + std::pow(p.north - best.north, 2);
        }
        widest = std::max(widest, std::sqrt(squares / static_cast<double>(motion.draws.size())));
    }
    return widest;
}

bool is_known_through(const motion::MotionEstimate& motion, const motion::Bridge& bridge) {
    const double length_s = bridge.to_s - bridge.from_s;
    if (length_s <= longest_bridge_s) return true;
    return length_s <= longest_known_bridge_s && !motion.draws.empty() &&
           spread_within_m(motion, bridge) < known_bridge_sd_m;
}

bool interrupted(double from_s, double to_s, const motion::MotionEstimate& motion,
                 const recording::Recording& recording) {
    const bool jumped = std::ranges::any_of(recording.splits_s, [&](double t) { return t > from_s && t < to_s; });
    const bool bridged = std::ranges::any_of(motion.bridges, [&](const motion::Bridge& b) {
        return std::min(b.to_s, to_s) - std::max(b.from_s, from_s) > longest_bridge_s && !is_known_through(motion, b);
    });
    return jumped || bridged;
}

double slowest_within(const motion::Path& path, double from_s, double to_s) {
    double least = path.at(from_s).speed_mps();
    for (std::size_t i = path.index_before(from_s); i < path.size() && (*path.time_s)[i] <= to_s; ++i)
        least = std::min(least, std::hypot(path.velocity_mps[i].east, path.velocity_mps[i].north));
    return least;
}

struct Driven {
    double length_m = 0.0;
    double furthest_m = 0.0; // from where it began
};

Driven driven(const motion::Path& path, const Lap& lap) {
    const Vec2 start = path.at(lap.start_s).position_m;
    Driven result;
    Vec2 before = start;
    const auto go_to = [&](Vec2 p) {
        result.length_m += std::hypot(p.east - before.east, p.north - before.north);
        result.furthest_m = std::max(result.furthest_m, std::hypot(p.east - start.east, p.north - start.north));
        before = p;
    };
    for (std::size_t i = path.index_before(lap.start_s) + 1; i < path.size() && (*path.time_s)[i] < lap.end_s; ++i)
        go_to(path.position_m[i]);
    go_to(path.at(lap.end_s).position_m);
    return result;
}

double integrated_speed_m(const motion::Path& path, const Lap& lap) {
    double length = 0.0;
    const double step_s = lap.time_s() / 500.0;
    for (double t = lap.start_s + 0.5 * step_s; t < lap.end_s; t += step_s)
        length += step_s * path.at(t).speed_mps();
    return length;
}

// What speaks against a stretch between two passings being a lap of a car; empty where nothing does.  Without positions
// the map is a sketch, and only speed counts.
std::string why_no_lap(const motion::MotionEstimate& motion, const Lap& lap) {
    const motion::Path& path = motion.best;
    const bool sketched = motion.source == motion::PositionSource::dead_reckoning;
    const Driven way = sketched ? Driven{integrated_speed_m(path, lap), 0.0} : driven(path, lap);
    if (way.length_m < track::shortest_lap_m) return said("too short to be a lap");
    if (way.length_m > track::longest_lap_m) return said("too long to be a lap");
    if (way.length_m < slowest_lap_mps * lap.time_s()) return said("too slow to be a lap");
    if (sketched) return {};
    // A receiver at rest wanders: a long way that leads nowhere.
    if (way.furthest_m < std::max(smallest_reach_m, smallest_reach_share * way.length_m)) return said("leads nowhere");
    return {};
}

LapKind end_kind(const motion::Path& path, const Lap& lap, double slow_from, double slow_to, LapKind slow_kind) {
    const bool long_enough = lap.time_s() > 3.0;
    return long_enough && slowest_within(path, slow_from, slow_to) < slow_mps ? slow_kind : LapKind::incomplete;
}

std::vector<Lap> pieces(const motion::Path& path, const std::vector<double>& passings) {
    std::vector<Lap> laps;
    const auto add = [&](double from, double to, LapKind kind) {
        Lap lap;
        lap.kind = kind;
        lap.start_s = from;
        lap.end_s = to;
        laps.push_back(lap);
    };
    constexpr double min_piece_s = 0.5;
    if (passings.front() - path.start_s() > min_piece_s) {
        add(path.start_s(), passings.front(), LapKind::out);
        laps.back().kind =
            end_kind(path, laps.back(), path.start_s(), std::min(passings.front(), path.start_s() + 5.0), LapKind::out);
    }
    for (std::size_t i = 0; i + 1 < passings.size(); ++i)
        add(passings[i], passings[i + 1], LapKind::flying);
    if (path.end_s() - passings.back() > min_piece_s) {
        add(passings.back(), path.end_s(), LapKind::in);
        laps.back().kind =
            end_kind(path, laps.back(), std::max(passings.back(), path.end_s() - 5.0), path.end_s(), LapKind::in);
    }
    return laps;
}

// The file's number in the middle of each lap, when these grow from lap to lap.
std::vector<int> file_numbers(const std::vector<Lap>& laps, const recording::Recording& recording) {
    const recording::Channel* channel = recording.find(recording::Meaning::lap_number);
    std::vector<int> numbers;
    if (!channel) return numbers;
    for (const Lap& lap : laps) {
        const double middle = 0.5 * (lap.start_s + lap.end_s);
        const auto after = std::ranges::upper_bound(*channel->time_s, middle);
        if (after == channel->time_s->begin()) return {};
        const double value = channel->values[static_cast<std::size_t>(after - channel->time_s->begin()) - 1];
        if (!(std::abs(value) < 100000.0)) return {};
        const int number = static_cast<int>(std::lround(value));
        if (!numbers.empty() && number <= numbers.back()) return {};
        numbers.push_back(number);
    }
    return numbers;
}

void number_laps(std::vector<Lap>& laps, const recording::Recording& recording) {
    const std::vector<int> from_file = file_numbers(laps, recording);
    int own = !laps.empty() && laps.front().kind != LapKind::flying ? 0 : 1;
    for (std::size_t i = 0; i < laps.size(); ++i, ++own)
        laps[i].number = from_file.empty() ? own : from_file[i];
}

std::vector<std::optional<double>> drawn_passings(const motion::MotionEstimate& motion, const track::Gate& gate,
                                                  double near_s) {
    std::vector<std::optional<double>> times;
    for (const motion::Path& draw :
         motion::drawn_paths(motion, near_s - track::crossing_search_s, near_s + track::crossing_search_s))
        times.push_back(track::crossing_near(draw, gate, near_s));
    return times;
}

// From one passing to the next, over the draws.
std::optional<double> time_sd(const std::vector<std::optional<double>>& starts,
                              const std::vector<std::optional<double>>& ends) {
    std::vector<double> times;
    for (std::size_t d = 0; d < starts.size(); ++d)
        if (starts[d] && ends[d]) times.push_back(*ends[d] - *starts[d]);
    if (times.size() < 2) return std::nullopt;
    return math::standard_uncertainty(times);
}

} // namespace

std::vector<Lap> find_laps(const motion::MotionEstimate& motion, const track::Gate& gate,
                           const recording::Recording& recording) {
    return laps_between(track::crossings(motion.best, gate), motion, gate, recording);
}

std::vector<Lap> laps_between(const std::vector<double>& passings, const motion::MotionEstimate& motion,
                              const track::Gate& gate, const recording::Recording& recording) {
    if (passings.empty()) return {};
    std::vector<Lap> laps = pieces(motion.best, passings);
    std::vector<std::vector<std::optional<double>>> drawn(passings.size());
    base::parallel_for(passings.size(), 0,
                       [&](std::size_t i) { drawn[i] = drawn_passings(motion, gate, passings[i]); });
    const auto drawn_at = [&](double passing_s) -> const std::vector<std::optional<double>>& {
        return drawn[static_cast<std::size_t>(std::ranges::find(passings, passing_s) - passings.begin())];
    };
    for (Lap& lap : laps) {
        if (lap.kind != LapKind::flying) continue;
        if (interrupted(lap.start_s, lap.end_s, motion, recording)) {
            lap.kind = LapKind::incomplete;
            lap.why_not_clean = said("the recording has a hole in it");
            continue;
        }
        lap.why_not_clean = why_no_lap(motion, lap);
        if (!lap.why_not_clean.empty()) {
            lap.kind = LapKind::incomplete;
            continue;
        }
        lap.time_sd_s = time_sd(drawn_at(lap.start_s), drawn_at(lap.end_s));
    }
    number_laps(laps, recording);
    return laps;
}

} // namespace lapwright::lap
