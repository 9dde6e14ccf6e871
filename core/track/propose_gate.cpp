// SPDX-License-Identifier: GPL-3.0-or-later
// Notation: a spot is a point of the path, some metres behind the one before; d its distance driven.
#include "core/base/constants.h"
#include "core/base/translation.h"
#include "core/math/statistics.h"
#include "core/track/gate.h"

#include <algorithm>
#include <cmath>

namespace lapwright::track {
namespace {

using base::said;

constexpr double spot_spacing_m = 6.0;
constexpr double min_candidate_spacing_m = 25.0;
constexpr std::size_t max_candidates = 500;
constexpr double min_candidate_mps = 8.0;
constexpr double min_apart_s = 10.0;
constexpr double fastest_mps = 150.0; // what lies further apart was not driven
constexpr double alike = 0.06;        // laps of one track, in length
constexpr double nearly_all = 0.95;
constexpr double many_laps = 4.5;
// A passing's surroundings: how much speed and heading may change there before time suffers from where exactly the line
// was put.  Ours, no source.
constexpr double surroundings_m = 75.0;
constexpr double usual_speed_change = 0.1;
constexpr double usual_heading_change_rad = 0.1;

struct Spot {
    double time_s;
    Vec2 position_m;
    double speed_mps;
    double heading_rad;
    double driven_m;
    bool joined; // to the spot before
};

std::vector<Spot> spots_of(const motion::Path& path) {
    std::vector<Spot> spots;
    for (std::size_t i = 0; i < path.size(); ++i) {
        const Vec2 p = path.position_m[i];
        const Vec2 v = path.velocity_mps[i];
        Spot spot{(*path.time_s)[i], p, std::hypot(v.east, v.north), std::atan2(v.north, v.east), 0.0, false};
        if (!spots.empty()) {
            const Spot& last = spots.back();
            const double step_m = std::hypot(p.east - last.position_m.east, p.north - last.position_m.north);
            if (step_m < spot_spacing_m) continue;
            spot.joined = step_m < spot_spacing_m + fastest_mps * (spot.time_s - last.time_s);
            spot.driven_m = last.driven_m + (spot.joined ? step_m : 0.0);
        }
        spots.push_back(spot);
    }
    return spots;
}

// Distances at which a line square to a spot is passed.
std::vector<double> passings_m(const std::vector<Spot>& spots, const Spot& at, double half_width_m) {
    const double c = std::cos(at.heading_rad);
    const double s = std::sin(at.heading_rad);
    const auto along = [&](Vec2 p) { return c * (p.east - at.position_m.east) + s * (p.north - at.position_m.north); };
    const auto aside = [&](Vec2 p) { return c * (p.north - at.position_m.north) - s * (p.east - at.position_m.east); };
    std::vector<double> passings;
    double last_s = -min_apart_s;
    double before = along(spots.front().position_m);
    for (std::size_t i = 1; i < spots.size(); ++i) {
        const double here = along(spots[i].position_m);
        const bool passes = before < 0.0 && here >= 0.0 && spots[i].joined;
        if (passes && spots[i].time_s - last_s >= min_apart_s && std::abs(aside(spots[i].position_m)) <= half_width_m) {
            last_s = spots[i].time_s;
            passings.push_back(spots[i].driven_m - here);
        }
        before = here;
    }
    return passings;
}

// How much of the drive is laps of about the same length, and that length.
struct Explained {
    double sum_m = 0.0;
    double lap_m = 0.0;
};

Explained explained_by(const std::vector<double>& passings) {
    std::vector<double> lengths;
    for (std::size_t i = 1; i < passings.size(); ++i)
        lengths.push_back(passings[i] - passings[i - 1]);
    if (lengths.empty()) return {};
    const double usual = math::median(lengths);
    if (usual < shortest_lap_m || usual > longest_lap_m) return {};
    double sum = 0.0;
    for (const double length : lengths)
        if (std::abs(length / usual - 1.0) <= alike) sum += length;
    return {sum, usual};
}

// What a well timed line may see less of: of many laps one, that the recording begins or ends in.
double enough_m(const Explained& most) {
    const bool many = most.sum_m >= many_laps * most.lap_m;
    return many ? std::min(nearly_all * most.sum_m, most.sum_m - (1.0 + alike) * most.lap_m) : nearly_all * most.sum_m;
}

// A crossing's variance in time, up to a constant: position error over speed, and more where speed or heading change.
double cost_of(const std::vector<Spot>& spots, std::size_t at) {
    double slowest = spots[at].speed_mps;
    double fastest = spots[at].speed_mps;
    double turned = 0.0;
    const auto look = [&](std::size_t i) {
        slowest = std::min(slowest, spots[i].speed_mps);
        fastest = std::max(fastest, spots[i].speed_mps);
        turned =
            std::max(turned, std::abs(std::remainder(spots[i].heading_rad - spots[at].heading_rad, 2.0 * base::pi)));
    };
    for (std::size_t i = at; i-- > 0 && spots[at].driven_m - spots[i].driven_m < surroundings_m;)
        look(i);
    for (std::size_t i = at + 1; i < spots.size() && spots[i].driven_m - spots[at].driven_m < surroundings_m; ++i)
        look(i);
    const double speed_change = (fastest - slowest) / spots[at].speed_mps / usual_speed_change;
    const double heading_change = turned / usual_heading_change_rad;
    return (1.0 + speed_change * speed_change + heading_change * heading_change) / std::pow(spots[at].speed_mps, 2);
}

struct CandidateGate {
    std::size_t spot;
    Explained explained;
};

std::vector<CandidateGate> candidates(const std::vector<Spot>& spots, double half_width_m) {
    const double spacing_m =
        std::max(min_candidate_spacing_m, spots.back().driven_m / static_cast<double>(max_candidates));
    std::vector<CandidateGate> found;
    double next_m = 0.0;
    for (std::size_t i = 0; i < spots.size(); ++i) {
        if (spots[i].driven_m < next_m || spots[i].speed_mps < min_candidate_mps) continue;
        next_m = spots[i].driven_m + spacing_m;
        const Explained explained = explained_by(passings_m(spots, spots[i], half_width_m));
        if (explained.sum_m > 0.0) found.push_back({i, explained});
    }
    return found;
}

} // namespace

std::string proposed_origin() {
    return said("proposed by the program on a fast straight at steady speed");
}

std::optional<ProposedGate> propose_gate(const motion::Path& path) {
    const std::vector<Spot> spots = spots_of(path);
    const std::vector<CandidateGate> found = candidates(spots, Gate{}.half_width_m);
    if (found.empty()) return std::nullopt;
    const auto sum = [](const CandidateGate& one) { return one.explained.sum_m; };
    const double enough = enough_m(std::ranges::max(found, {}, sum).explained);
    const CandidateGate* best = nullptr;
    double min_cost = 0.0;
    for (const CandidateGate& one : found) {
        const double cost = cost_of(spots, one.spot);
        if (sum(one) < enough || (best && cost >= min_cost)) continue;
        best = &one;
        min_cost = cost;
    }
    const Spot& at = spots[best->spot];
    return ProposedGate{{at.position_m, at.heading_rad}, proposed_origin()};
}

} // namespace lapwright::track
