// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/segment_figures.h"

#include "core/comparison/full_push.h"
#include "core/comparison/shifts.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace lapwright::comparison {
namespace {

using lap::LapTrace;
using recording::Meaning;

constexpr double braking_deceleration_mps2 = 2.5; // more than lifting off does in a club car
constexpr double brake_pedal_share = 0.05;
constexpr double throttle_closed_share = 0.05;
constexpr double throttle_open_share = 0.10;
constexpr double throttle_full_share = 0.95;
constexpr double throttle_lift_share = 0.80;
constexpr double merge_braking_m = 15.0;
constexpr double rolling_mps2 = -0.4;       // less drive than this is none
constexpr double derived_full_share = 0.91; // of the full push: noise and a tyre at its limit leave the rest open

using Condition =
    std::function<double(std::size_t)>; // positive where it holds; continuous, so that its root can be found

// Distance at which a condition changes sign between grid points i − 1 and i.
double change_at(const LapTrace& trace, const Condition& condition, std::size_t i) {
    const double before = condition(i - 1);
    const double here = condition(i);
    const double u = here == before ? 0.0 : std::clamp(-before / (here - before), 0.0, 1.0);
    return trace.distance_m[i - 1] + u * (trace.distance_m[i] - trace.distance_m[i - 1]);
}

// First place at or after `from` (up to `to`) where the condition becomes true; a condition that holds at `from`
// already is no beginning.
std::optional<double> first_begin(const LapTrace& trace, const Condition& holds, std::size_t from, std::size_t to) {
    for (std::size_t i = from + 1; i <= to; ++i)
        if (holds(i) > 0.0 && holds(i - 1) <= 0.0) return change_at(trace, holds, i);
    return std::nullopt;
}

// The last such place after `from` and up to `to`.
std::optional<double> last_begin(const LapTrace& trace, const Condition& holds, std::size_t from, std::size_t to) {
    for (std::size_t i = to; i > from; --i)
        if (holds(i) > 0.0 && holds(i - 1) <= 0.0) return change_at(trace, holds, i);
    return std::nullopt;
}

struct Span {
    double begin_m;
    double end_m;
};

// The stretches in which the condition holds between two indices; breaks shorter than merge_m do not end one.
std::vector<Span> stretches(const LapTrace& trace, const Condition& holds, std::size_t from, std::size_t to,
                            double merge_m) {
    std::vector<Span> all;
    std::size_t i = from + 1;
    while (i <= to) {
        if (holds(i) <= 0.0) {
            ++i;
            continue;
        }
        const double begin = holds(i - 1) <= 0.0 ? change_at(trace, holds, i) : trace.distance_m[i - 1];
        while (i <= to && holds(i) > 0.0)
            ++i;
        const double end = i <= to ? change_at(trace, holds, i) : trace.distance_m[to];
        if (!all.empty() && begin - all.back().end_m < merge_m)
            all.back().end_m = end;
        else
            all.push_back({begin, end});
    }
    return all;
}

double speed_lost(const LapTrace& trace, const Span& span) {
    return trace.speed_at(span.begin_m) - trace.speed_at(span.end_m);
}

// The braking that slows the car for the corner, not a dab before or behind it.
std::optional<Span> main_braking(const LapTrace& trace, const std::vector<Span>& all) {
    const auto most = std::ranges::max_element(all, {}, [&](const Span& span) { return speed_lost(trace, span); });
    return most == all.end() || speed_lost(trace, *most) <= 0.0 ? std::nullopt : std::optional(*most);
}

Condition channel_above(const lap::TraceChannel& channel, double threshold) {
    return [&channel, threshold](std::size_t i) {
        const double v = channel.values[i];
        return std::isfinite(v) ? v - threshold : -threshold;
    };
}

bool recorded(const lap::TraceChannel* channel, std::size_t from, std::size_t to) {
    if (!channel) return false;
    for (std::size_t i = from; i <= to; ++i)
        if (!std::isfinite(channel->values[i])) return false;
    return true;
}

MaybeFigure figure(std::optional<double> value, bool derived = false) {
    if (!value) return std::nullopt;
    return Figure{*value, std::nullopt, derived};
}

// The stretch in which a corner's braking, lift and throttle are sought.
struct Window {
    std::size_t approach; // start of the straight before, else the middle of the corner before
    std::size_t straight; // start of the straight before, else of the segment itself
    std::size_t slowest;
    std::size_t end;  // of the segment
    std::size_t exit; // end of the straight that the corner feeds
};

Window window(const LapTrace& trace, const std::vector<track::Segment>& segments, std::size_t index,
              double slowest_at_m) {
    const track::Segment& here = segments[index];
    const bool fed = index > 0 && segments[index - 1].kind == track::SegmentKind::straight;
    const double straight = fed ? segments[index - 1].start_m : here.start_m;
    const double from = index > 0 && !fed ? 0.5 * (segments[index - 1].start_m + segments[index - 1].end_m) : straight;
    const bool feeds = index + 1 < segments.size() && segments[index + 1].kind == track::SegmentKind::straight;
    return {trace.index_before(from), trace.index_before(straight), trace.index_before(slowest_at_m) + 1,
            trace.index_before(here.end_m) + 1,
            feeds ? trace.index_before(segments[index + 1].end_m) + 1 : trace.index_before(here.end_m) + 1};
}

// Whether the driver brakes: by the pedal, else by the pressure against the greatest of the lap.
struct BrakeUse {
    const lap::TraceChannel* channel = nullptr; // null: neither was recorded
    double threshold = 0.0;
};

BrakeUse brake_use(const LapTrace& trace, std::size_t from, std::size_t to) {
    if (const lap::TraceChannel* pedal = trace.find(Meaning::brake); recorded(pedal, from, to))
        return {pedal, brake_pedal_share};
    const lap::TraceChannel* pressure = trace.find(Meaning::brake_pressure);
    if (!recorded(pressure, from, to)) return {};
    double greatest = 0.0;
    for (const double value : pressure->values)
        if (std::isfinite(value)) greatest = std::max(greatest, value);
    return greatest > 0.0 ? BrakeUse{pressure, brake_pedal_share * greatest} : BrakeUse{};
}

void add_braking(SegmentFigures& f, const LapTrace& trace, const Window& w) {
    const BrakeUse brake = brake_use(trace, w.approach, w.slowest);
    const Condition slowing = [&](std::size_t i) { return -trace.longitudinal_mps2[i] - braking_deceleration_mps2; };
    const Condition braked = brake.channel ? channel_above(*brake.channel, brake.threshold) : slowing;
    const auto braking = main_braking(trace, stretches(trace, braked, w.approach, w.slowest, merge_braking_m));
    if (!braking) return;
    const double dt = trace.time_at(braking->end_m) - trace.time_at(braking->begin_m);
    if (dt <= 0.0) return;
    f.braking_point_m = figure(braking->begin_m, !brake.channel);
    f.braking_mps2 = figure(speed_lost(trace, *braking) / dt);
}

// What the figures of all segments share.
struct WholeLap {
    std::optional<FullPush> push; // where the throttle was not recorded all along
    std::vector<LapShift> shifts;
};

WholeLap whole_lap(const LapTrace& trace) {
    const bool has_throttle = recorded(trace.find(Meaning::throttle), 0, trace.size() - 1);
    return {has_throttle ? std::nullopt : full_push(trace), shifts_of_lap(trace, trace)};
}

// The place where the engine's full push is reached, and before it the one where there is some.
void derive_throttle(SegmentFigures& f, const LapTrace& trace, const std::optional<FullPush>& full, const Window& w) {
    if (!full) return;
    const auto share = [&](std::size_t i) { return full->share(trace.speed_mps[i], trace.longitudinal_mps2[i]); };
    const Condition all = [&](std::size_t i) { return share(i) - derived_full_share; };
    f.full_throttle_m = figure(first_begin(trace, all, w.slowest, w.exit), true);
    if (!f.full_throttle_m) return;
    const Condition some = [&](std::size_t i) { return share(i) - throttle_open_share; };
    f.throttle_opens_m =
        figure(last_begin(trace, some, w.approach, trace.index_before(f.full_throttle_m->value) + 1), true);
}

void add_throttle(SegmentFigures& f, const LapTrace& trace, const std::optional<FullPush>& full, const Window& w) {
    const lap::TraceChannel* throttle = trace.find(Meaning::throttle);
    if (recorded(throttle, w.approach, w.exit)) {
        const auto open =
            stretches(trace, channel_above(*throttle, throttle_lift_share), w.approach, w.slowest, merge_braking_m);
        if (!open.empty() && open.back().end_m < trace.distance_m[w.slowest]) f.lift_at_m = figure(open.back().end_m);
        const bool closed = open.empty() || f.lift_at_m;
        if (closed) {
            const std::size_t lift = f.lift_at_m ? trace.index_before(f.lift_at_m->value) : w.approach;
            f.full_throttle_m =
                figure(first_begin(trace, channel_above(*throttle, throttle_full_share), lift + 1, w.exit));
            // A foot that is full down opened it for good the last time; before that it blips or holds a little.
            const Condition opened = channel_above(*throttle, throttle_open_share);
            f.throttle_opens_m = figure(
                f.full_throttle_m ? last_begin(trace, opened, lift, trace.index_before(f.full_throttle_m->value) + 1)
                                  : first_begin(trace, opened, lift + 1, w.exit));
        }
        return;
    }
    if (f.braking_point_m) derive_throttle(f, trace, full, w);
}

// Seconds between two grid points while something holds.
double seconds_while(const LapTrace& trace, std::size_t from, std::size_t to,
                     const std::function<bool(std::size_t)>& holds) {
    double seconds = 0.0;
    for (std::size_t i = from; i < to; ++i)
        if (holds(i)) seconds += trace.time_s[i + 1] - trace.time_s[i];
    return seconds;
}

// Time with neither pedal pressed, from the start of the approach to the end of the segment, and to the braking point
// (the slowest place of a corner that is not braked for).  Without pedals the latter is the time in which the car slows
// down a little; how long it rolls between brakes and throttle, motion alone does not tell.
void add_coasting(SegmentFigures& f, const LapTrace& trace, const Window& w) {
    const lap::TraceChannel* throttle = trace.find(Meaning::throttle);
    const BrakeUse brake = brake_use(trace, w.straight, w.end);
    const std::size_t brakes = f.braking_point_m ? trace.index_before(f.braking_point_m->value) : w.slowest;
    if (recorded(throttle, w.straight, w.end) && brake.channel) {
        const auto neither = [&](std::size_t i) {
            return throttle->values[i] < throttle_closed_share && brake.channel->values[i] < brake.threshold;
        };
        f.coasting_s = figure(seconds_while(trace, w.straight, w.end, neither));
        f.lift_to_brakes_s = figure(seconds_while(trace, w.straight, brakes, neither));
        return;
    }
    if (f.braking_point_m && !f.braking_point_m->derived) return; // its own smoothing is not that of the motion
    const auto rolling = [&](std::size_t i) {
        return trace.longitudinal_mps2[i] < rolling_mps2 && trace.longitudinal_mps2[i] > -braking_deceleration_mps2;
    };
    f.lift_to_brakes_s = figure(seconds_while(trace, w.straight, brakes, rolling), true);
}

void add_shifts(SegmentFigures& f, const LapTrace& trace, const std::vector<LapShift>& of_lap,
                const track::Segment& here) {
    const auto shifts = shifts_between(of_lap, trace, here.start_m, here.end_m);
    if (!shifts) return;
    f.shifts = figure(shifts->count);
    f.shift_cost_s = figure(shifts->cost_s);
}

double peak_lateral(const LapTrace& trace, std::size_t from, std::size_t to) {
    double peak = 0.0;
    for (std::size_t i = from; i <= to; ++i)
        peak = std::max(peak, std::abs(trace.lateral_mps2[i]));
    return peak;
}

double driven_length(const LapTrace& trace, double from_m, double to_m) {
    const std::size_t first = trace.index_before(from_m);
    const std::size_t last = trace.index_before(to_m);
    double length = 0.0;
    for (std::size_t i = first; i <= last; ++i) {
        const double a = std::max(from_m, trace.distance_m[i]);
        const double b = std::min(to_m, trace.distance_m[i + 1]);
        if (b > a) length += 0.5 * (trace.speed_at(a) + trace.speed_at(b)) * (trace.time_at(b) - trace.time_at(a));
    }
    return length;
}

void add_corner(SegmentFigures& f, const LapTrace& trace, const WholeLap& whole,
                const std::vector<track::Segment>& segments, std::size_t index) {
    const track::Segment& here = segments[index];
    const Extreme slowest = lowest_speed(trace, here.start_m, here.end_m);
    f.min_speed_mps = figure(slowest.speed_mps);
    f.min_speed_at_m = figure(slowest.distance_m);
    const Window w = window(trace, segments, index, slowest.distance_m);
    add_braking(f, trace, w);
    add_throttle(f, trace, whole.push, w);
    add_coasting(f, trace, w);
    f.peak_lateral_mps2 = figure(peak_lateral(trace, trace.index_before(here.start_m), w.end));
}

SegmentFigures one_segment(const LapTrace& trace, const WholeLap& whole, const std::vector<track::Segment>& segments,
                           std::size_t index) {
    const track::Segment& here = segments[index];
    SegmentFigures f;
    f.time_s = trace.time_at(here.end_m) - trace.time_at(here.start_m);
    f.entry_speed_mps.value = trace.speed_at(here.start_m);
    f.exit_speed_mps.value = trace.speed_at(here.end_m);
    f.driven_length_m = figure(driven_length(trace, here.start_m, here.end_m));
    if (here.kind == track::SegmentKind::corner) {
        add_corner(f, trace, whole, segments, index);
    } else {
        const Extreme fastest = highest_speed(trace, here.start_m, here.end_m);
        f.top_speed_mps = figure(fastest.speed_mps);
        f.top_speed_at_m = figure(fastest.distance_m);
    }
    add_shifts(f, trace, whole.shifts, here);
    return f;
}

} // namespace

SegmentFigures segment_figures(const LapTrace& trace, const std::vector<track::Segment>& segments, std::size_t index) {
    return one_segment(trace, whole_lap(trace), segments, index);
}

std::vector<SegmentFigures> figures_of_lap(const LapTrace& trace, const std::vector<track::Segment>& segments) {
    const WholeLap whole = whole_lap(trace);
    std::vector<SegmentFigures> figures;
    for (std::size_t i = 0; i < segments.size(); ++i)
        figures.push_back(one_segment(trace, whole, segments, i));
    return figures;
}

} // namespace lapwright::comparison
