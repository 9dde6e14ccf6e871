// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/common_track.h"

#include "core/analysis/dead_reckoned_session.h"
#include "core/analysis/known_track.h"
#include "core/analysis/stages.h"
#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/lap/align.h"
#include "core/lap/find_laps.h"
#include "core/lap/judged_by_hand.h"
#include "core/lap/place_on_line.h"
#include "core/motion/estimate_motion.h"
#include "core/motion/in_frame.h"
#include "core/track/find_segments.h"
#include "core/track/gate.h"

#include <algorithm>
#include <cmath>
#include <filesystem>
#include <iterator>
#include <numeric>
#include <utility>

namespace lapwright::analysis {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;

constexpr double gate_half_width_m = 25.0;

Error about(const Session& session, ErrorCode code, const std::string& what, const std::string& remedy) {
    return {code, {session.recording->source_file, {}, {}}, what, remedy};
}

Result<Placed> in_common_frame(const std::shared_ptr<const Session>& session, const motion::LocalFrame& frame) {
    if (motion::same_frame(session->motion->frame, frame)) return Placed{session, session->motion, {}};
    auto motion = motion::in_frame(*session->motion, frame);
    if (!motion) {
        Error error = motion.error();
        error.place.file = session->recording->source_file;
        return error;
    }
    return Placed{session, std::make_shared<const motion::MotionEstimate>(std::move(motion).value()), {}};
}

bool gate_was_proposed(const Session& session) {
    return session.gate_origin == track::proposed_origin();
}

track::Gate gate_in_frame(const motion::Geodetic& place, double heading_rad, double half_width_m,
                          const motion::LocalFrame& frame) {
    const motion::EastNorthUp centre = motion::to_local(frame, place);
    return {{centre.east_m, centre.north_m}, heading_rad, half_width_m};
}

// The gate of the first session whose own file knows it, else of the first; a track file beats all.
track::Gate common_gate(const std::vector<Placed>& sessions, const motion::LocalFrame& frame,
                        const std::optional<track::TrackRecord>& record) {
    if (record) return gate_in_frame(record->gate.position, record->gate.heading_rad, record->gate.half_width_m, frame);
    const auto knows = std::ranges::find_if(sessions, [](const Placed& p) { return !gate_was_proposed(*p.session); });
    const Session& from = *(knows == sessions.end() ? sessions.front() : *knows).session;
    if (motion::same_frame(from.motion->frame, frame)) return from.gate;
    const motion::EastNorthUp centre{from.gate.centre_m.east, from.gate.centre_m.north, 0.0};
    return gate_in_frame(motion::to_geodetic(from.motion->frame, centre), from.gate.heading_rad, from.gate.half_width_m,
                         frame);
}

std::string track_name(const std::vector<Placed>& sessions, const std::optional<track::TrackRecord>& record) {
    if (record && !record->name.empty()) return record->name;
    for (const Placed& placed : sessions)
        if (!placed.session->recording->track.empty()) return placed.session->recording->track;
    return {};
}

// All cars place the line, so that none drives on its own.
std::vector<track::Stretch> all_stretches(const std::vector<Placed>& sessions) {
    std::vector<track::Stretch> stretches;
    for (const Placed& placed : sessions)
        for (const track::Stretch& stretch : likely_laps(placed.laps, *placed.motion))
            stretches.push_back(stretch);
    return stretches;
}

// The sessions' maps are brought to the first one's, along the line of its laps; then laps are found anew.
void align(std::vector<Placed>& sessions, const track::Gate& gate) {
    // One round is enough to tell how far a whole lap lies off it.
    const auto line = track::build_line(likely_laps(sessions.front().laps, *sessions.front().motion), gate, 1);
    if (!line) return;
    std::vector<lap::SessionOnRoad> on_road;
    for (const Placed& placed : sessions)
        on_road.push_back({placed.motion.get(), placed.laps});
    std::vector<lap::Aligned> aligned = lap::aligned(on_road, *line);
    base::parallel_for(sessions.size(), 0, [&](std::size_t i) {
        Placed& placed = sessions[i];
        placed.motion = std::make_shared<const motion::MotionEstimate>(std::move(aligned[i].motion));
        if (aligned[i].outcome.status == base::FitStatus::not_converged)
            placed.warnings.push_back({.kind = recording::WarningKind::map_not_settled});
        placed.laps = lap::find_laps(*placed.motion, gate, *placed.session->recording);
    });
}

using Sessions = std::vector<std::shared_ptr<const Session>>;

std::vector<track::Segment> segments_on(const track::ReferenceLine& line,
                                        const std::optional<track::TrackRecord>& record) {
    return record && !record->segments.empty()
               ? track::recorded_segments(line, record->segments, record->length_m, record->turns_m)
               : track::find_segments(line);
}

// Sessions with positions.  `known` is a gate in the first one's frame that beats all others.
Result<CommonTrack> place_on_map(const Sessions& sessions, const std::optional<track::TrackRecord>& record,
                                 const base::Progress& progress, const std::optional<track::Gate>& known = {}) {
    if (!base::go_on(progress, said("finding the laps"), 0.0)) return base::cancelled();
    CommonTrack common;
    common.track.frame = sessions.front()->motion->frame;
    for (const auto& session : sessions) {
        auto placed = in_common_frame(session, common.track.frame);
        if (!placed) return placed.error();
        common.sessions.push_back(std::move(placed).value());
    }
    track::Gate gate = known ? *known : common_gate(common.sessions, common.track.frame, record);
    gate.half_width_m = std::max(gate.half_width_m, gate_half_width_m);
    const Session& first = *sessions.front();
    base::parallel_for(common.sessions.size(), 0, [&](std::size_t i) {
        Placed& placed = common.sessions[i];
        placed.laps = lap::find_laps(*placed.motion, gate, *placed.session->recording);
    });
    for (const Placed& placed : common.sessions) {
        if (!placed.laps.empty()) continue;
        if (record)
            return about(*placed.session, ErrorCode::no_laps, said("the timing line is never crossed"),
                         said("check that the track file belongs to this track"));
        return about(*placed.session, ErrorCode::different_tracks,
                     said("this session never drives the lap of %1", {first.recording->source_file}),
                     said("choose sessions of the same track and direction"));
    }
    if (!base::go_on(progress, said("bringing the maps together"), 0.2)) return base::cancelled();
    align(common.sessions, gate);
    if (!base::go_on(progress, said("drawing the line through all laps"), 0.5)) return base::cancelled();
    const auto line = track::build_line(all_stretches(common.sessions), gate);
    if (!line)
        return about(first, ErrorCode::no_laps, said("there is no whole lap in it"),
                     said("choose a session with at least one lap from the timing line to the timing line"));
    common.track.line = *line;
    common.track.gate = square_gate(*line, gate.half_width_m);
    common.track.name = track_name(common.sessions, record);
    common.track.segments = segments_on(*line, record);
    if (!base::go_on(progress, said("timing the laps"), 0.7)) return base::cancelled();
    base::parallel_for(common.sessions.size(), 0, [&](std::size_t i) {
        Placed& placed = common.sessions[i];
        placed.laps = judged_laps(lap::find_laps(*placed.motion, common.track.gate, *placed.session->recording),
                                  *placed.motion, *line);
    });
    return common;
}

bool knows_length(const std::optional<track::TrackRecord>& record) {
    return record && record->length_m > 0.0;
}

// Positions tell the length of the line, or the track file does.
double line_length_sd(const Sessions& with_positions, const std::optional<track::TrackRecord>& record) {
    return with_positions.empty() && !knows_length(record) ? lap::dead_reckoned_length_sd : 0.0;
}

// A track that nobody has positions of: the first session's laps are its line.
Result<CommonTrack> dead_reckoned_track(const Sessions& sessions, const std::optional<track::TrackRecord>& record) {
    const Session& first = *sessions.front();
    const auto reckoned = dead_reckoned_session(*first.recording, *first.motion);
    if (!reckoned) return reckoned.error();
    const auto line = lap::dead_reckoned_line(*reckoned, knows_length(record) ? std::optional<double>(record->length_m)
                                                                              : std::nullopt);
    if (!line)
        return about(first, ErrorCode::no_laps, said("its laps are too short or too long to be compared"),
                     said("check the unit of its speed"));
    CommonTrack common;
    common.track.frame = first.motion->frame;
    common.track.line = *line;
    common.track.gate = square_gate(*line, gate_half_width_m);
    common.track.segments = segments_on(*line, record);
    return common;
}

// The map with its timing line where the file's lap column has it, for a map whose own was only proposed.
Result<CommonTrack> moved_to_lap_column(CommonTrack common, const Sessions& with_positions, const Session& column,
                                        const base::Progress& progress) {
    const auto reckoned = dead_reckoned_session(*column.recording, *column.motion);
    if (!reckoned) return reckoned.error();
    const auto start = lap::start_on_line(*reckoned, common.track.line);
    if (!start) return common; // said where the session is placed
    const track::Vec2 t = common.track.line.tangent_at(start->station_m);
    const track::Gate gate{common.track.line.position(start->station_m), std::atan2(t.north, t.east),
                           gate_half_width_m};
    return place_on_map(with_positions, {}, progress, gate);
}

// Lap columns alone are taken to stamp the same timing line; how well a column's is found on a map is not so sure.
struct Column {
    bool all_by_column = false;
    double length_sd = 0.0; // of the line
};
Result<Placed> place_dead_reckoned(const std::shared_ptr<const Session>& session, const track::Track& track,
                                   const std::string& other, const Column& column, std::uint64_t seed) {
    const auto reckoned = dead_reckoned_session(*session->recording, *session->motion);
    if (!reckoned) return reckoned.error();
    auto start = lap::start_on_line(*reckoned, track.line);
    if (!start)
        return about(*session, ErrorCode::different_tracks, said("its corners are not those of %1", {other}),
                     said("choose sessions of the same track and direction"));
    if (start->may_be_same) start->station_m = 0.0;
    if (column.all_by_column && start->may_be_same) start->sd_m = 0.0;
    lap::OnLine placed = lap::placed_on_line(*reckoned, track.line, track.frame, *start, seed, column.length_sd);
    Placed result{session, std::make_shared<const motion::MotionEstimate>(std::move(placed.motion)), {}, {}};
    if (placed.laps_not_placed > 0)
        result.warnings.push_back(
            {.kind = recording::WarningKind::laps_not_placed, .seen = {placed.laps_not_placed, {}}});
    result.laps = judged_laps(lap::laps_between(placed.passings_s, *result.motion, track.gate, *session->recording),
                              *result.motion, track.line);
    return result;
}

// What tells recordings apart, whoever is A: the order in which they are placed, so that swapping A and B changes
// nothing.  By the files' names, then by what was recorded.
auto placing_key(const Session& session) {
    return std::pair(std::filesystem::path(session.recording->source_file).filename().string(),
                     motion::own_seed(*session.recording, 0));
}

std::vector<std::size_t> placing_order(const Sessions& sessions) {
    std::vector<std::size_t> order(sessions.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return placing_key(*sessions[i]); });
    return order;
}

Result<CommonTrack> place_in_order(const Sessions& sessions, const std::optional<track::TrackRecord>& record,
                                   const base::Progress& progress) {
    const auto has_positions = [](const std::shared_ptr<const Session>& s) { return !is_dead_reckoned(*s->motion); };
    Sessions with;
    std::ranges::copy_if(sessions, std::back_inserter(with), has_positions);
    if (with.size() == sessions.size()) return place_on_map(sessions, record, progress);
    const auto column = std::ranges::find_if_not(sessions, has_positions);
    auto found = with.empty() ? dead_reckoned_track(sessions, record) : place_on_map(with, record, progress);
    if (found && !record && !with.empty() &&
        std::ranges::all_of(with, [](const auto& session) { return gate_was_proposed(*session); }))
        found = moved_to_lap_column(std::move(found).value(), with, **column, progress);
    if (!found) return found.error();
    CommonTrack common = std::move(found).value();
    const std::vector<Placed> on_map = std::move(common.sessions);
    common.sessions.clear();
    common.length_sd = line_length_sd(with, record);
    const std::string other = (with.empty() ? sessions : with).front()->recording->source_file;
    std::size_t next_on_map = 0;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        if (has_positions(sessions[i])) {
            common.sessions.push_back(on_map[next_on_map++]);
            continue;
        }
        if (!base::go_on(progress, said("placing laps by their cornering"),
                         0.8 + 0.2 * static_cast<double>(i) / static_cast<double>(sessions.size())))
            return base::cancelled();
        auto placed = place_dead_reckoned(sessions[i], common.track, other, {with.empty(), common.length_sd}, i + 1);
        if (!placed) return placed.error();
        common.sessions.push_back(std::move(placed).value());
    }
    common.track.name = track_name(common.sessions, record);
    return common;
}

} // namespace

Result<CommonTrack> place_together(const Sessions& sessions, const std::optional<track::TrackRecord>& given,
                                   const base::Progress& progress) {
    for (const auto& session : sessions)
        if (session->why_no_laps) return *session->why_no_laps;
    const std::vector<std::size_t> order = placing_order(sessions);
    Sessions ordered;
    for (const std::size_t i : order)
        ordered.push_back(sessions[i]);
    auto placed = place_in_order(ordered, given ? given : known_to_all(sessions), progress);
    if (!placed) return placed.error();
    CommonTrack common = std::move(placed).value();
    std::vector<Placed> as_asked(sessions.size());
    for (std::size_t i = 0; i < order.size(); ++i) {
        as_asked[order[i]] = std::move(common.sessions[i]);
        Placed& one = as_asked[order[i]];
        one.laps = lap::judged_by_hand(std::move(one.laps), one.session->by_hand);
    }
    common.sessions = std::move(as_asked);
    return common;
}

} // namespace lapwright::analysis
