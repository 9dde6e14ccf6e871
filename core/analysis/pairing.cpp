// SPDX-License-Identifier: GPL-3.0-or-later
// Two sessions -> one line, one gate, two laps on one distance, and what lies between them.
#include "core/analysis/run.h"
#include "core/analysis/stages.h"
#include "core/base/number_text.h"
#include "core/comparison/compare_laps.h"
#include "core/lap/find_laps.h"
#include "core/lap/trace_lap.h"
#include "core/motion/in_frame.h"
#include "core/track/find_segments.h"
#include "core/track/gate.h"

#include <algorithm>

namespace lapwright::analysis {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;

constexpr double gate_half_width_m = 25.0;

struct Prepared {
    std::shared_ptr<const Session> session;
    std::shared_ptr<const motion::MotionEstimate> motion; // in the track's frame
    std::vector<lap::Lap> laps;                           // timed with the pairing's gate
};

Result<Prepared> prepared(const std::shared_ptr<const Session>& session, const motion::LocalFrame& frame) {
    if (motion::same_frame(session->motion->frame, frame)) return Prepared{session, session->motion, {}};
    auto motion = motion::in_frame(*session->motion, frame);
    if (!motion) {
        Error error = motion.error();
        error.place.file = session->recording->source_file;
        return error;
    }
    return Prepared{session, std::make_shared<const motion::MotionEstimate>(std::move(motion).value()), {}};
}

int gate_rank(const Session& session) {
    return session.gate_origin.starts_with("proposed") ? 1 : 0;
}

// The gate of the session that knows best, in the frame of A; a track file beats both.
track::Gate common_gate(const Prepared& a, const Prepared& b, const std::optional<track::TrackRecord>& record) {
    const motion::LocalFrame& frame = a.motion->frame;
    if (record) {
        const motion::EastNorthUp centre = motion::to_local(frame, record->gate.position);
        return {{centre.east_m, centre.north_m}, record->gate.heading_rad, record->gate.half_width_m};
    }
    if (gate_rank(*a.session) <= gate_rank(*b.session)) return a.session->gate;
    const track::Gate& gate = b.session->gate;
    const motion::Geodetic place =
        motion::to_geodetic(b.session->motion->frame, {gate.centre_m.east, gate.centre_m.north, 0.0});
    const motion::EastNorthUp centre = motion::to_local(frame, place);
    return {{centre.east_m, centre.north_m}, gate.heading_rad, gate.half_width_m};
}

Error different_tracks(const Prepared& a, const Prepared& b) {
    return {ErrorCode::different_tracks,
            {b.session->recording->source_file, {}, {}},
            "this session never drives the lap of " + a.session->recording->source_file,
            "choose two sessions of the same track and direction"};
}

Result<track::Track> common_track(Prepared& a, Prepared& b, const std::optional<track::TrackRecord>& record) {
    track::Track track;
    track.frame = a.motion->frame;
    track.gate = common_gate(a, b, record);
    track.gate.half_width_m = std::max(track.gate.half_width_m, gate_half_width_m);
    a.laps = lap::find_laps(*a.motion, track.gate, *a.session->recording);
    b.laps = lap::find_laps(*b.motion, track.gate, *b.session->recording);
    if (a.laps.empty())
        return Error{ErrorCode::no_laps,
                     {a.session->recording->source_file, {}, {}},
                     "the timing line is never crossed",
                     "check that the track file belongs to this track"};
    if (b.laps.empty()) return different_tracks(a, b);
    // Both cars place the line, so that neither drives on its own.
    std::vector<track::Stretch> stretches = likely_laps(a.laps, *a.motion);
    for (const track::Stretch& stretch : likely_laps(b.laps, *b.motion))
        stretches.push_back(stretch);
    const auto line = track::build_line(stretches, track.gate);
    if (!line)
        return Error{ErrorCode::no_laps,
                     {a.session->recording->source_file, {}, {}},
                     "there is no whole lap in it",
                     "choose a session with at least one lap from the timing line to the timing line"};
    track.line = *line;
    track.gate = square_gate(*line, track.gate.half_width_m);
    if (record) track.name = record->name;
    if (track.name.empty()) track.name = a.session->recording->track;
    if (track.name.empty()) track.name = b.session->recording->track;
    track.segments = record && !record->segments.empty()
                         ? track::recorded_segments(track.line, record->segments, record->length_m)
                         : track::find_segments(track.line);
    return track;
}

// The lap that was asked for, or the fastest clean one.
Result<lap::Lap> chosen_lap(const Prepared& side, std::optional<int> number) {
    const std::string& file = side.session->recording->source_file;
    const lap::Lap* best = nullptr;
    for (const lap::Lap& lap : side.laps) {
        if (lap.kind != lap::LapKind::flying) continue;
        if (number) {
            if (lap.number == *number) return lap;
        } else if (!best || (lap.clean && !best->clean) ||
                   (lap.clean == best->clean && lap.time_s() < best->time_s())) {
            best = &lap;
        }
    }
    if (best) return *best;
    if (number)
        return Error{ErrorCode::lap_not_found,
                     {file, {}, {}},
                     "there is no flying lap with the number " + base::integer_text(*number),
                     "lapwright laps lists them"};
    return Error{ErrorCode::no_laps, {file, {}, {}}, "there is no flying lap in it", "choose another session"};
}

Result<Side> traced(const Prepared& prepared_side, std::optional<int> number, const track::Track& track,
                    double step_m) {
    auto chosen = chosen_lap(prepared_side, number);
    if (!chosen) return chosen.error();
    const recording::Recording& recording = *prepared_side.session->recording;
    auto ensemble = lap::trace_ensemble(*prepared_side.motion, *chosen, track.gate, track.line, step_m, recording);
    if (!ensemble)
        return Error{ErrorCode::different_tracks,
                     {recording.source_file, {}, {}},
                     "lap " + base::integer_text(chosen->number) + " leaves the track on which the two are compared",
                     "choose another lap, or two sessions of the same track"};
    Side side{prepared_side.session, *chosen, std::move(*ensemble), {}, {}};
    for (const lap::Lap& lap : prepared_side.laps) {
        if (!lap.clean) continue;
        if (auto trace = lap::trace_lap(prepared_side.motion->best, lap.start_s, lap.end_s, track.line, step_m)) {
            side.clean_laps.push_back(lap);
            side.clean_traces.push_back(std::move(*trace));
        }
    }
    return side;
}

std::vector<std::vector<double>> boundaries(const Side& side, const track::Track& track) {
    std::vector<std::vector<double>> all;
    for (const lap::LapTrace& trace : side.clean_traces)
        all.push_back(comparison::boundary_times(trace, track.segments));
    return all;
}

std::vector<recording::Warning> warnings_of(const Pairing& pairing) {
    std::vector<recording::Warning> warnings;
    for (const Side* side : {&pairing.a, &pairing.b}) {
        const std::string name = side->session->title();
        if (!side->lap.clean)
            warnings.push_back({"lap_not_clean",
                                name + ": lap " + base::integer_text(side->lap.number) + " is not clean" +
                                    (side->lap.why_not_clean.empty() ? "" : ": " + side->lap.why_not_clean),
                                std::nullopt});
        if (side->clean_laps.size() < 3)
            warnings.push_back({"few_clean_laps",
                                name + ": " + base::integer_text(static_cast<std::int64_t>(side->clean_laps.size())) +
                                    " clean laps say little about what repeats",
                                std::nullopt});
        if (side->trace.draws.empty())
            warnings.push_back(
                {"no_uncertainty", name + ": the uncertainty of this recording is not known", std::nullopt});
    }
    return warnings;
}

} // namespace

Result<std::shared_ptr<const Pairing>> compare(std::shared_ptr<const Session> a, std::shared_ptr<const Session> b,
                                               const PairingOptions& options, const base::Progress& progress) {
    if (!base::go_on(progress, "placing both laps on one line", 0.0)) return base::cancelled();
    const motion::LocalFrame frame = a->motion->frame;
    auto left_or = prepared(a, frame);
    if (!left_or) return left_or.error();
    auto right_or = prepared(b, frame);
    if (!right_or) return right_or.error();
    Prepared left = std::move(left_or).value();
    Prepared right = std::move(right_or).value();
    auto track = common_track(left, right, options.track);
    if (!track) return track.error();
    auto pairing = std::make_shared<Pairing>();
    pairing->track = std::move(track).value();
    for (Prepared* side : {&left, &right})
        side->laps = judged_laps(lap::find_laps(*side->motion, pairing->track.gate, *side->session->recording),
                                 *side->motion, pairing->track.line);
    if (!base::go_on(progress, "measuring both laps", 0.4)) return base::cancelled();
    auto side_a = traced(left, options.lap_a, pairing->track, options.step_m);
    if (!side_a) return side_a.error();
    auto side_b = traced(right, options.lap_b, pairing->track, options.step_m);
    if (!side_b) return side_b.error();
    pairing->a = std::move(side_a).value();
    pairing->b = std::move(side_b).value();
    if (!base::go_on(progress, "comparing", 0.8)) return base::cancelled();
    pairing->comparison = comparison::compare_laps(pairing->a.trace, pairing->b.trace, pairing->track.segments);
    const auto bounds_a = boundaries(pairing->a, pairing->track);
    const auto bounds_b = boundaries(pairing->b, pairing->track);
    pairing->repeatability = comparison::repeatability(bounds_a, bounds_b, pairing->track.segments.size());
    pairing->ideal_a = comparison::ideal_lap(bounds_a);
    pairing->ideal_b = comparison::ideal_lap(bounds_b);
    pairing->headline = findings::headline(pairing->comparison, pairing->repeatability);
    pairing->warnings = warnings_of(*pairing);
    return std::shared_ptr<const Pairing>(std::move(pairing));
}

} // namespace lapwright::analysis
