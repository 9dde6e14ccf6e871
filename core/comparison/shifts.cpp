// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/shifts.h"

#include "core/comparison/full_push.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <vector>

namespace lapwright::comparison {
namespace {

using lap::LapTrace;
using recording::Meaning;

// Common practice, no source.
constexpr double reach_s = 0.55;       // a shift and what smoothing makes of it, to either side
constexpr double other_reach_s = 0.60; // of a shift before or after, whose missing push is not summed up here
constexpr double beside_s = 1.00;      // from there to here the push is undisturbed
constexpr double min_beside_s = 0.15;  // less says nothing of the push
constexpr double min_push_mps2 = 0.4;  // a car that hardly gains speed loses nothing that can be seen
constexpr double open_share = 0.95;    // less is a car held back by its tyres, whose push is not the engine's
constexpr double slowing_mps2 = -0.5;  // the end of an acceleration

struct Change {
    std::size_t at = 0; // first grid point in the new gear
    bool up = false;
};

std::vector<Change> changes(const std::vector<double>& gear) {
    std::vector<Change> found;
    double last = 0.0; // neutral is no gear
    for (std::size_t i = 0; i < gear.size(); ++i) {
        const double now = std::round(gear[i]);
        if (now > 0.0 && last > 0.0 && now != last) found.push_back({i, now > last});
        if (now > 0.0) last = now;
    }
    return found;
}

// The throttle, where it was recorded, and what of it counts as fully open: a channel need not reach 100 %.
struct Throttle {
    const lap::TraceChannel* channel = nullptr;
    double open = 0.0;

    [[nodiscard]] bool is_open(std::size_t i) const { return channel == nullptr || channel->values[i] > open; }
};

Throttle throttle_of(const LapTrace& recorded) {
    Throttle throttle{recorded.find(Meaning::throttle), 0.0};
    if (throttle.channel == nullptr) return throttle;
    std::vector<double> values;
    std::ranges::copy_if(throttle.channel->values, std::back_inserter(values), [](double x) { return !std::isnan(x); });
    if (values.empty()) return {throttle.channel, 1.0};
    const auto top = values.begin() + static_cast<std::ptrdiff_t>(0.98 * static_cast<double>(values.size() - 1));
    std::ranges::nth_element(values, top);
    throttle.open = open_share * *top;
    return throttle;
}

// Mean push (acceleration times speed) and mean time of the grid points between two times.
struct Push {
    double mean_w_per_kg = 0.0;
    double time_s = 0.0;
};

std::optional<Push> push_between(const LapTrace& motion, const Throttle& throttle, double from_s, double to_s) {
    if (from_s < 0.0 || to_s > motion.lap_time_s() || to_s - from_s < min_beside_s) return std::nullopt;
    Push push;
    double weight = 0.0;
    const auto first = std::ranges::lower_bound(motion.time_s, from_s) - motion.time_s.begin();
    for (auto i = static_cast<std::size_t>(first); i + 1 < motion.size() && motion.time_s[i] <= to_s; ++i) {
        if (motion.longitudinal_mps2[i] < min_push_mps2) return std::nullopt;
        if (!throttle.is_open(i)) return std::nullopt;
        const double dt = motion.time_s[i + 1] - motion.time_s[i];
        push.mean_w_per_kg += motion.longitudinal_mps2[i] * motion.speed_mps[i] * dt;
        push.time_s += motion.time_s[i] * dt;
        weight += dt;
    }
    if (weight < 0.5 * min_beside_s) return std::nullopt;
    push.mean_w_per_kg /= weight;
    push.time_s /= weight;
    return push;
}

// Tells a delay from the time without drive, by a tenth at 30 m/s.
double resistance_mps2(double speed_mps) {
    return usual_drag_per_m * speed_mps * speed_mps + usual_rolling_mps2;
}

// One shift that was judged: τ, and for how long there was no drive.
struct Judged {
    double delay_s = 0.0;
    double no_drive_s = 0.0;
};

std::optional<Judged> judged(const LapTrace& motion, const Throttle& throttle, std::size_t at, double free_from_s,
                             double free_to_s) {
    const double shift_s = motion.time_s[at];
    const auto before = push_between(motion, throttle, std::max(free_from_s, shift_s - beside_s), shift_s - reach_s);
    const auto after = push_between(motion, throttle, shift_s + reach_s, std::min(free_to_s, shift_s + beside_s));
    if (!before || !after) return std::nullopt;
    const double slope = (after->mean_w_per_kg - before->mean_w_per_kg) / (after->time_s - before->time_s);
    const auto expected = [&](std::size_t i) {
        return (before->mean_w_per_kg + slope * (motion.time_s[i] - before->time_s)) / motion.speed_mps[i];
    };
    double missing_mps = 0.0;
    const auto first = std::ranges::lower_bound(motion.time_s, shift_s - reach_s) - motion.time_s.begin();
    for (auto i = static_cast<std::size_t>(first); i + 1 < motion.size() && motion.time_s[i] < shift_s + reach_s; ++i)
        missing_mps += (expected(i) - motion.longitudinal_mps2[i]) * (motion.time_s[i + 1] - motion.time_s[i]);
    const double a = expected(at);
    return Judged{missing_mps / a, missing_mps / (a + resistance_mps2(motion.speed_mps[at]))};
}

// Where an acceleration ends, with the highest speed before the car slows down again, not looking at the shift itself;
// over the line it goes on as the lap began.
std::size_t end_of_acceleration(const LapTrace& motion, std::size_t from) {
    std::size_t highest = from;
    for (std::size_t n = 0; n < motion.size(); ++n) {
        const std::size_t i = (from + n) % motion.size();
        const bool past = i < from || motion.time_s[i] > motion.time_s[from] + reach_s;
        if (past && motion.longitudinal_mps2[i] < slowing_mps2) break;
        if (motion.speed_mps[i] > motion.speed_mps[highest]) highest = i;
    }
    return highest;
}

// Acceleration just before it ends, clear of the shifts and of the rounding by the smoothed motion; 0 where none is.
double last_acceleration(const LapTrace& motion, std::size_t end, const std::vector<Change>& all) {
    const double end_s = motion.time_s[end];
    double sum = 0.0;
    double count = 0.0;
    for (std::size_t i = end; i-- > 0 && motion.time_s[i] > end_s - beside_s;) {
        const bool shifting = std::ranges::any_of(
            all, [&](const Change& c) { return std::abs(motion.time_s[c.at] - motion.time_s[i]) < reach_s; });
        if (shifting || motion.time_s[i] > end_s - reach_s) continue;
        sum += motion.longitudinal_mps2[i];
        count += 1.0;
    }
    return count > 0.0 ? std::max(0.0, sum / count) : 0.0;
}

// All upward shifts of a lap with their delays; those that cannot be judged by themselves by the median of the others.
struct Delayed {
    std::size_t at = 0;
    std::optional<double> delay_s;
};

std::vector<Delayed> upward(const LapTrace& motion, const Throttle& throttle, const std::vector<Change>& all) {
    std::vector<Delayed> shifts;
    std::vector<double> no_drive;
    for (std::size_t k = 0; k < all.size(); ++k) {
        if (!all[k].up) continue;
        const double free_from_s = k > 0 ? motion.time_s[all[k - 1].at] + other_reach_s : 0.0;
        const double free_to_s =
            k + 1 < all.size() ? motion.time_s[all[k + 1].at] - other_reach_s : motion.lap_time_s();
        const auto one = judged(motion, throttle, all[k].at, free_from_s, free_to_s);
        shifts.push_back({all[k].at, one ? std::optional(one->delay_s) : std::nullopt});
        if (one) no_drive.push_back(one->no_drive_s);
    }
    if (no_drive.empty()) return shifts;
    const double usual_s = math::median(no_drive);
    for (Delayed& shift : shifts) {
        if (shift.delay_s) continue;
        const std::size_t after =
            motion.index_before(motion.distance_m[static_cast<std::size_t>(std::min<std::ptrdiff_t>(
                std::ranges::lower_bound(motion.time_s, motion.time_s[shift.at] + reach_s) - motion.time_s.begin(),
                std::ssize(motion.time_s) - 1))]);
        const double a = std::max(1.0, motion.longitudinal_mps2[after]);
        shift.delay_s = usual_s * (1.0 + resistance_mps2(motion.speed_mps[shift.at]) / a);
    }
    return shifts;
}

} // namespace

std::vector<LapShift> shifts_of_lap(const LapTrace& motion, const LapTrace& recorded) {
    const lap::TraceChannel* gear = recorded.find(Meaning::gear);
    if (gear == nullptr) return {};
    const std::vector<Change> all = changes(gear->values);
    const std::vector<Delayed> delayed = upward(motion, throttle_of(recorded), all);
    std::map<std::size_t, double> behind_m; // by the end of the acceleration: τ v₀ of all its shifts
    for (const Delayed& one : delayed)
        behind_m[end_of_acceleration(motion, one.at)] += one.delay_s.value_or(0.0) * motion.speed_mps[one.at];
    std::map<std::size_t, double> costs_s;
    for (const Delayed& one : delayed) {
        if (!one.delay_s) continue;
        const std::size_t end = end_of_acceleration(motion, one.at);
        const double end_mps = motion.speed_mps[end];
        const double mean_mps = end_mps + 0.5 * last_acceleration(motion, end, all) * behind_m[end] / end_mps;
        costs_s[one.at] = *one.delay_s * (1.0 - motion.speed_mps[one.at] / mean_mps);
    }
    std::vector<LapShift> shifts;
    for (const Change& change : all) {
        const auto cost = costs_s.find(change.at);
        shifts.push_back({recorded.distance_m[change.at],
                          change.up && cost != costs_s.end() ? std::optional(cost->second) : std::nullopt});
    }
    return shifts;
}

std::optional<Shifts> shifts_between(const std::vector<LapShift>& of_lap, const LapTrace& recorded, double from_m,
                                     double to_m) {
    const lap::TraceChannel* gear = recorded.find(Meaning::gear);
    if (gear == nullptr) return std::nullopt;
    for (std::size_t i = recorded.index_before(from_m); i <= recorded.index_before(to_m) + 1; ++i)
        if (!std::isfinite(gear->values[i])) return std::nullopt;
    Shifts shifts;
    for (const LapShift& one : of_lap) {
        if (one.at_m < from_m || one.at_m >= to_m) continue;
        shifts.count += 1.0;
        if (one.cost_s) shifts.cost_s = shifts.cost_s.value_or(0.0) + *one.cost_s;
    }
    return shifts;
}

std::optional<Shifts> shifts_between(const LapTrace& motion, const LapTrace& recorded, double from_m, double to_m) {
    return shifts_between(shifts_of_lap(motion, recorded), recorded, from_m, to_m);
}

} // namespace lapwright::comparison
