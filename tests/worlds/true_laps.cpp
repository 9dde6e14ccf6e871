// SPDX-License-Identifier: GPL-3.0-or-later
// The true laps of an outing, timed at any line, and which of them nothing spoiled.
#include <algorithm>
#include <cmath>

#include "tests/worlds/score_world.h"

namespace worlds {
namespace {

struct Stretch {
    double from_m;
    double to_m;
};

// Unwrapped stations on which the car is not driven as usual, with what it takes to be quick again.
std::vector<Stretch> spoiled(const Entry& entry) {
    const double length = entry.session->track().length_m();
    const double recovery = 0.08 * length;
    const truth::SessionPlan& plan = entry.plan;
    std::vector<Stretch> all{{-length, plan.pit_lane ? 0.80 * length + recovery : 0.25 * length}};
    const double end = length * (plan.flying_laps + 1);
    all.push_back({plan.pit_lane ? end + 0.05 * length : end + 0.99 * length, end + 2.0 * length});
    if (plan.traffic_lap > 0) {
        const double start = length * plan.traffic_lap;
        all.push_back({start + 0.30 * length, start + 0.75 * length + recovery});
    }
    for (const truth::Slowing& mistake : plan.mistakes)
        all.push_back(
            {length * mistake.lap + mistake.from_m - 0.03 * length, length * mistake.lap + mistake.to_m + recovery});
    return all;
}

std::vector<double> clean_lap_times(const Entry& entry, double station_m) {
    const double length = entry.session->track().length_m();
    const std::vector<Stretch> bad = spoiled(entry);
    std::vector<double> times;
    for (int lap = 0; lap <= entry.plan.flying_laps + 1; ++lap) {
        const double from = length * lap + station_m;
        const bool clean =
            std::ranges::none_of(bad, [&](const Stretch& s) { return s.from_m < from + length && s.to_m > from; });
        if (clean)
            times.push_back(entry.session->time_at_unwrapped(from + length) - entry.session->time_at_unwrapped(from));
    }
    return times;
}

} // namespace

std::optional<double> fastest_clean_s(const Entry& entry, double station_m) {
    const std::vector<double> times = clean_lap_times(entry, station_m);
    if (times.empty()) return std::nullopt;
    return *std::ranges::min_element(times);
}

bool any_clean_lap(const Entry& entry) {
    return fastest_clean_s(entry, 0.0).has_value();
}

std::string kind_of(const LoggerPlan& logger) {
    if (!logger.has_positions) return "no positions";
    return logger.has_speed ? "positions and speed" : "positions alone";
}

} // namespace worlds
