// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/common_track.h"

#include "core/analysis/stages.h"
#include "core/lap/align.h"
#include "core/lap/find_laps.h"
#include "core/motion/in_frame.h"
#include "core/track/find_segments.h"

#include <algorithm>

namespace lapwright::analysis {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;

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
    return session.gate_origin.starts_with("proposed");
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
    const auto line = track::build_line(likely_laps(sessions.front().laps, *sessions.front().motion), gate);
    if (!line) return;
    std::vector<lap::SessionOnRoad> on_road;
    for (const Placed& placed : sessions)
        on_road.push_back({placed.motion.get(), placed.laps});
    std::vector<motion::MotionEstimate> aligned = lap::aligned(on_road, *line);
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        Placed& placed = sessions[i];
        placed.motion = std::make_shared<const motion::MotionEstimate>(std::move(aligned[i]));
        placed.laps = lap::find_laps(*placed.motion, gate, *placed.session->recording);
    }
}

} // namespace

Result<CommonTrack> place_together(const std::vector<std::shared_ptr<const Session>>& sessions,
                                   const std::optional<track::TrackRecord>& record) {
    CommonTrack common;
    common.track.frame = sessions.front()->motion->frame;
    for (const auto& session : sessions) {
        auto placed = in_common_frame(session, common.track.frame);
        if (!placed) return placed.error();
        common.sessions.push_back(std::move(placed).value());
    }
    track::Gate gate = common_gate(common.sessions, common.track.frame, record);
    gate.half_width_m = std::max(gate.half_width_m, gate_half_width_m);
    const Session& first = *sessions.front();
    for (Placed& placed : common.sessions) {
        placed.laps = lap::find_laps(*placed.motion, gate, *placed.session->recording);
        if (!placed.laps.empty()) continue;
        if (record)
            return about(*placed.session, ErrorCode::no_laps, "the timing line is never crossed",
                         "check that the track file belongs to this track");
        return about(*placed.session, ErrorCode::different_tracks,
                     "this session never drives the lap of " + first.recording->source_file,
                     "choose sessions of the same track and direction");
    }
    align(common.sessions, gate);
    const auto line = track::build_line(all_stretches(common.sessions), gate);
    if (!line)
        return about(first, ErrorCode::no_laps, "there is no whole lap in it",
                     "choose a session with at least one lap from the timing line to the timing line");
    common.track.line = *line;
    common.track.gate = square_gate(*line, gate.half_width_m);
    common.track.name = track_name(common.sessions, record);
    common.track.segments = record && !record->segments.empty()
                                ? track::recorded_segments(*line, record->segments, record->length_m)
                                : track::find_segments(*line);
    for (Placed& placed : common.sessions)
        placed.laps = judged_laps(lap::find_laps(*placed.motion, common.track.gate, *placed.session->recording),
                                  *placed.motion, *line);
    return common;
}

} // namespace lapwright::analysis
