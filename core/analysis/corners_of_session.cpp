// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/corners_of_session.h"

#include "core/analysis/chosen_lap.h"
#include "core/analysis/common_track.h"
#include "core/comparison/compare_laps.h"
#include "core/lap/trace_lap.h"

#include <algorithm>
#include <optional>

namespace lapwright::analysis {
namespace {

using comparison::MaybeFigure;

constexpr double corner_step_m = 1.0;

std::optional<double> figure_value(const MaybeFigure& figure) {
    return figure ? std::optional(figure->value) : std::nullopt;
}

std::optional<double> figure_spread(const MaybeFigure& figure) {
    return figure ? figure->sd : std::nullopt;
}

// A place on this session's line, on the record's.
std::optional<double> moved_place(const MaybeFigure& place, double by_m) {
    return place ? std::optional(place->value + by_m) : std::nullopt;
}

book::KeptCorner kept_corner(const comparison::SegmentFigures& figures, const track::Segment& recorded, double by_m) {
    book::KeptCorner corner;
    corner.segment = recorded.name;
    corner.start_m = recorded.start_m;
    corner.end_m = recorded.end_m;
    corner.time_s = figures.time_s;
    corner.entry_speed_mps = figures.entry_speed_mps.value;
    corner.entry_speed_sd_mps = figures.entry_speed_mps.sd;
    corner.min_speed_mps = figure_value(figures.min_speed_mps);
    corner.min_speed_sd_mps = figure_spread(figures.min_speed_mps);
    corner.min_speed_at_m = moved_place(figures.min_speed_at_m, by_m);
    corner.exit_speed_mps = figures.exit_speed_mps.value;
    corner.exit_speed_sd_mps = figures.exit_speed_mps.sd;
    corner.lift_at_m = moved_place(figures.lift_at_m, by_m);
    corner.braking_point_m = moved_place(figures.braking_point_m, by_m);
    corner.braking_point_sd_m = figure_spread(figures.braking_point_m);
    corner.braking_mps2 = figure_value(figures.braking_mps2);
    corner.throttle_opens_m = moved_place(figures.throttle_opens_m, by_m);
    corner.full_throttle_m = moved_place(figures.full_throttle_m, by_m);
    corner.full_throttle_sd_m = figure_spread(figures.full_throttle_m);
    corner.peak_lateral_mps2 = figure_value(figures.peak_lateral_mps2);
    corner.coasting_s = figure_value(figures.coasting_s);
    corner.driven_length_m = figure_value(figures.driven_length_m);
    return corner;
}

// The place in the book's laps of the one in whose middle this lap is.
std::optional<int> place_in_book(const std::vector<lap::Lap>& kept_laps, const lap::Lap& lap) {
    const auto found = std::ranges::find_if(kept_laps, [&](const lap::Lap& one) { return holds_middle(one, lap); });
    if (found == kept_laps.end() || found->kind != lap::LapKind::flying) return std::nullopt;
    return static_cast<int>(found - kept_laps.begin());
}

void add_corners_of_lap(std::vector<book::KeptCorner>& corners, int lap,
                        const std::vector<comparison::SegmentFigures>& figures,
                        const std::vector<track::Segment>& segments, const track::TrackRecord& record) {
    for (std::size_t i = 0; i < segments.size(); ++i) {
        if (segments[i].kind != track::SegmentKind::corner) continue;
        const auto recorded = std::ranges::find_if(record.segments, [&](const track::Segment& one) {
            return one.kind == track::SegmentKind::corner && one.name == segments[i].name;
        });
        if (recorded == record.segments.end()) continue;
        book::KeptCorner& corner =
            corners.emplace_back(kept_corner(figures[i], *recorded, recorded->start_m - segments[i].start_m));
        corner.lap = lap;
        corner.place = static_cast<int>(i);
    }
}

} // namespace

base::Result<std::vector<book::KeptCorner>> corners_of_session(std::shared_ptr<const Session> session,
                                                               const track::TrackRecord& record,
                                                               const std::vector<lap::Lap>& kept_laps) {
    auto together = place_together({std::move(session)}, record);
    if (!together) return together.error();
    const Placed& placed = together->sessions.front();
    const track::Track& track = together->track;
    std::vector<book::KeptCorner> corners;
    for (const lap::Lap& lap : placed.laps) {
        const auto place = lap.kind == lap::LapKind::flying ? place_in_book(kept_laps, lap) : std::nullopt;
        if (!place) continue;
        const auto ensemble =
            lap::trace_ensemble(*placed.motion, lap, track.gate, track.line, corner_step_m, *placed.session->recording);
        if (ensemble)
            add_corners_of_lap(corners, *place, comparison::measured_figures(*ensemble, track.segments), track.segments,
                               record);
    }
    return corners;
}

} // namespace lapwright::analysis
