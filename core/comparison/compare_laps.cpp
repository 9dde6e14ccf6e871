// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/compare_laps.h"

#include "core/base/check.h"
#include "core/base/parallel.h"
#include "core/base/wording.h"
#include "core/comparison/gears.h"
#include "core/comparison/segment_figures.h"
#include "core/comparison/shifts.h"
#include "core/math/statistics.h"

#include <array>
#include <cmath>
#include <numeric>
#include <utility>

namespace lapwright::comparison {
namespace {

using lap::LapEnsemble;
using lap::LapTrace;

std::size_t pairs_of_draws(const LapEnsemble& a, const LapEnsemble& b) {
    const std::size_t pairs = std::min(a.draws.size(), b.draws.size());
    return pairs < 2 ? 0 : pairs;
}

std::vector<double> gap(const LapTrace& a, const LapTrace& b) {
    std::vector<double> result(a.size());
    for (std::size_t i = 0; i < result.size(); ++i)
        result[i] = b.time_s[i] - a.time_s[i];
    return result;
}

GapTrace gap_trace(const LapEnsemble& a, const LapEnsemble& b) {
    GapTrace trace{a.best.distance_m, gap(a.best, b.best), {}, {}, {}};
    const std::size_t pairs = pairs_of_draws(a, b);
    if (pairs == 0) return trace;
    std::vector<double> values(pairs);
    for (std::size_t i = 0; i < trace.gap_s.size(); ++i) {
        for (std::size_t k = 0; k < pairs; ++k)
            values[k] = b.draws[k].time_s[i] - a.draws[k].time_s[i];
        trace.sd_s.push_back(math::standard_uncertainty(values));
        const double half = base::half_width_95(trace.sd_s.back());
        trace.low_s.push_back(trace.gap_s[i] - half);
        trace.high_s.push_back(trace.gap_s[i] + half);
    }
    return trace;
}

// Everything of SegmentFigures that the ensemble carries an uncertainty for.
constexpr std::array maybe_figures{
    &SegmentFigures::min_speed_mps,    &SegmentFigures::min_speed_at_m,   &SegmentFigures::top_speed_mps,
    &SegmentFigures::top_speed_at_m,   &SegmentFigures::braking_point_m,  &SegmentFigures::braking_mps2,
    &SegmentFigures::throttle_opens_m, &SegmentFigures::full_throttle_m,  &SegmentFigures::peak_lateral_mps2,
    &SegmentFigures::driven_length_m,  &SegmentFigures::lift_to_brakes_s,
};

// Draws carry no channels: only figures that are derived from
// motion in the estimate too may take their spread from them.
bool from_motion(const Figure& figure, MaybeFigure SegmentFigures::* member) {
    return figure.derived ||
           (member != &SegmentFigures::braking_point_m && member != &SegmentFigures::braking_mps2 &&
            member != &SegmentFigures::throttle_opens_m && member != &SegmentFigures::full_throttle_m &&
            member != &SegmentFigures::lift_to_brakes_s);
}

// What motion cannot tell of the pedal, whatever its noise (standard uncertainty; from the simulator, see the tests).
double derived_error_m(MaybeFigure SegmentFigures::* member) {
    if (member == &SegmentFigures::full_throttle_m) return derived_full_throttle_sd_m;
    if (member == &SegmentFigures::throttle_opens_m) return derived_opening_sd_m;
    return 0.0;
}

std::optional<double> spread_of(const std::vector<double>& values) {
    return values.size() < 2 ? std::nullopt : std::optional(math::standard_uncertainty(values));
}

// What each draw of a lap makes of its segments, and of its shifts: where the gear changes is the recording's, what it
// costs, each draw's.
struct DrawnLap {
    std::vector<SegmentFigures> figures;
    std::vector<LapShift> shifts;
};

std::vector<DrawnLap> drawn_laps(const LapEnsemble& lap, const LapTrace& recorded,
                                 const std::vector<track::Segment>& segments) {
    std::vector<DrawnLap> drawn(lap.draws.size());
    base::parallel_for(drawn.size(), 0, [&](std::size_t i) {
        drawn[i] = {figures_of_lap(lap.draws[i], segments), shifts_of_lap(lap.draws[i], recorded)};
    });
    return drawn;
}

std::optional<double> shift_cost_spread(const std::vector<DrawnLap>& drawn, const LapTrace& recorded,
                                        const track::Segment& segment) {
    std::vector<double> values;
    for (const DrawnLap& draw : drawn) {
        const auto shifts = shifts_between(draw.shifts, recorded, segment.start_m, segment.end_m);
        if (shifts && shifts->cost_s) values.push_back(*shifts->cost_s);
    }
    return spread_of(values);
}

void add_spread(SegmentFigures& figures, const std::vector<DrawnLap>& drawn, std::size_t index) {
    std::vector<double> entry;
    std::vector<double> exit;
    for (const DrawnLap& draw : drawn) {
        entry.push_back(draw.figures[index].entry_speed_mps.value);
        exit.push_back(draw.figures[index].exit_speed_mps.value);
    }
    figures.entry_speed_mps.sd = spread_of(entry);
    figures.exit_speed_mps.sd = spread_of(exit);
    for (const auto member : maybe_figures) {
        MaybeFigure& figure = figures.*member;
        if (!figure || !from_motion(*figure, member)) continue;
        std::vector<double> values;
        for (const DrawnLap& draw : drawn)
            if (draw.figures[index].*member) values.push_back((draw.figures[index].*member)->value);
        figure->sd = spread_of(values);
        if (figure->sd && figure->derived) figure->sd = std::hypot(*figure->sd, derived_error_m(member));
    }
}

// recorded: the lap's estimate with its channels.
std::vector<SegmentFigures> figures_with_spread(const LapEnsemble& lap, const LapTrace& recorded,
                                                const std::vector<track::Segment>& segments) {
    const std::vector<DrawnLap> drawn = drawn_laps(lap, recorded, segments);
    std::vector<SegmentFigures> figures = figures_of_lap(recorded, segments);
    for (std::size_t i = 0; i < segments.size(); ++i) {
        add_spread(figures[i], drawn, i);
        if (figures[i].shift_cost_s) figures[i].shift_cost_s->sd = shift_cost_spread(drawn, recorded, segments[i]);
    }
    return figures;
}

LapTrace with_gears(LapTrace trace) {
    if (auto gears = gears_from_engine_speed(trace)) trace.channels.push_back(std::move(*gears));
    return trace;
}

std::optional<double> slowest(const SegmentFigures& a, const SegmentFigures& b) {
    if (!a.min_speed_at_m || !b.min_speed_at_m) return std::nullopt;
    return 0.5 * (a.min_speed_at_m->value + b.min_speed_at_m->value);
}

Figure gain(const LapEnsemble& a, const LapEnsemble& b, const track::Segment& segment) {
    const auto one = [&](const LapTrace& trace_a, const LapTrace& trace_b) {
        return (trace_b.time_at(segment.end_m) - trace_a.time_at(segment.end_m)) -
               (trace_b.time_at(segment.start_m) - trace_a.time_at(segment.start_m));
    };
    Figure figure{one(a.best, b.best), std::nullopt, false};
    std::vector<double> values;
    for (std::size_t k = 0; k < pairs_of_draws(a, b); ++k)
        values.push_back(one(a.draws[k], b.draws[k]));
    figure.sd = spread_of(values);
    return figure;
}

} // namespace

std::vector<SegmentFigures> measured_figures(const LapEnsemble& lap, const std::vector<track::Segment>& segments) {
    return figures_with_spread(lap, with_gears(lap.best), segments);
}

std::vector<double> boundary_times(const LapTrace& trace, const std::vector<track::Segment>& segments) {
    std::vector<double> times{0.0};
    for (const track::Segment& segment : segments)
        times.push_back(trace.time_at(segment.end_m));
    return times;
}

std::vector<double> segment_times(const LapTrace& trace, const std::vector<track::Segment>& segments) {
    std::vector<double> times = boundary_times(trace, segments);
    std::adjacent_difference(times.begin(), times.end(), times.begin());
    times.erase(times.begin());
    return times;
}

Comparison compare_laps(const LapEnsemble& a, const LapEnsemble& b, const std::vector<track::Segment>& segments) {
    base::check(a.best.size() == b.best.size() && a.best.size() > 1, "two laps on different grids");
    Comparison result;
    result.gap = gap_trace(a, b);
    result.gap_at_end_s.value = result.gap.gap_s.back();
    if (!result.gap.sd_s.empty()) result.gap_at_end_s.sd = result.gap.sd_s.back();
    const auto figures_a = measured_figures(a, segments);
    const auto figures_b = measured_figures(b, segments);
    result.line = line_difference(a, b);
    for (std::size_t i = 0; i < segments.size(); ++i)
        result.segments.push_back({segments[i], gain(a, b, segments[i]), figures_a[i], figures_b[i],
                                   line_figures(result.line, segments[i], slowest(figures_a[i], figures_b[i]))});
    return result;
}

std::vector<double> winning_rate(const GapTrace& gap, double window_m) {
    const std::size_t n = gap.gap_s.size();
    const double step = gap.distance_m.back() / static_cast<double>(n - 1);
    const auto half = static_cast<std::size_t>(std::max(1L, std::lround(0.5 * window_m / step)));
    std::vector<double> rate(n);
    for (std::size_t i = 0; i < n; ++i) {
        const std::size_t from = i > half ? i - half : 0;
        const std::size_t to = std::min(n - 1, i + half);
        rate[i] = (gap.gap_s[to] - gap.gap_s[from]) / (gap.distance_m[to] - gap.distance_m[from]);
    }
    return rate;
}

} // namespace lapwright::comparison
