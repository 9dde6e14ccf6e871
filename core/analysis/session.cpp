// SPDX-License-Identifier: GPL-3.0-or-later
// One file, understood: recording -> motion -> gate -> laps -> which of them are clean.
#include "core/analysis/dead_reckoned_session.h"
#include "core/analysis/known_track.h"
#include "core/analysis/run.h"
#include "core/analysis/stages.h"
#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/car/names.h"
#include "core/lap/file_laps.h"
#include "core/lap/find_laps.h"
#include "core/lap/trace_lap.h"
#include "core/track/build_line.h"
#include "core/track/gate.h"

#include <algorithm>
#include <cmath>
#include <filesystem>

namespace lapwright::analysis {
namespace {

using base::ErrorCode;
using base::Result;
using base::said;

// Enough to find a lap's lost tenths, cheap enough for every lap of a long session.
constexpr double judging_step_m = 5.0;
constexpr std::size_t laps_to_judge_on = 3;
constexpr double dead_reckoned_gate_half_width_m = 25.0;

base::Error no_laps(const recording::Recording& recording, const std::string& what, const std::string& remedy) {
    return {ErrorCode::no_laps, {recording.source_file, {}, {}}, what, remedy};
}

Result<track::ProposedGate> choose_gate(const recording::Recording& recording, const motion::MotionEstimate& motion,
                                        const std::optional<track::TrackRecord>& record,
                                        const std::optional<track::TrackRecord>& known) {
    if (record && !motion.frame.on_earth)
        return no_laps(
            recording,
            said("the track file tells its timing line by latitude and longitude, the recording's positions are "
                 "metres of its own"),
            said("leave the track file out: the program finds a timing line"));
    if (record) return track::ProposedGate{gate_of(*record, motion), said("the track's record")};
    if (known) return track::ProposedGate{gate_of(*known, motion), said("%1, as the book knows it", {known->name})};
    if (auto gate = track::gate_from_channels(motion.best, recording)) return *gate;
    if (auto gate = track::propose_gate(motion.best)) return *gate;
    return no_laps(recording, said("no place is passed twice in the same direction, so there are no laps"),
                   said("choose a recording with at least one whole lap"));
}

// Without positions the session's own laps are its line, and its file says when they begin.
Result<void> find_laps_dead_reckoned(Session& session, const motion::MotionEstimate& motion) {
    const recording::Recording& recording = *session.recording;
    const auto known = dead_reckoned_session(recording, motion);
    if (!known) return known.error();
    const auto line = lap::dead_reckoned_line(*known);
    if (!line)
        return no_laps(recording, said("its laps are too short or too long to be laps"),
                       said("check the unit of its speed"));
    lap::OnLine placed = lap::placed_on_line(*known, *line, motion.frame, {}, 1, lap::dead_reckoned_length_sd);
    session.motion = std::make_shared<const motion::MotionEstimate>(std::move(placed.motion));
    session.gate = square_gate(*line, dead_reckoned_gate_half_width_m);
    if (placed.laps_not_placed > 0)
        session.warnings.push_back(
            {.kind = recording::WarningKind::laps_not_placed, .seen = {placed.laps_not_placed, {}}});
    session.gate_origin = track::recorded_passings(recording)->origin;
    session.laps = judged_laps(lap::laps_between(placed.passings_s, *session.motion, session.gate, recording),
                               *session.motion, *line);
    session.warnings.push_back(
        {.kind = recording::WarningKind::no_positions, .figures = {lap::dead_reckoned_length_sd}});
    return {};
}

// Timed again at a gate square to the line of its own laps, as a comparison times them.
void time_at_square_gate(Session& session) {
    std::vector<track::Stretch> stretches = likely_laps(session.laps, *session.motion);
    if (stretches.size() > laps_to_judge_on) stretches.resize(laps_to_judge_on);
    const auto line = track::build_line(stretches, session.gate, 1);
    if (!line) return;
    session.gate = square_gate(*line, session.gate.half_width_m);
    session.laps =
        judged_laps(lap::find_laps(*session.motion, session.gate, *session.recording), *session.motion, *line);
}

// The file's own count of its laps is evidence that the timing line must explain.
void hold_against_file(Session& session) {
    const auto marks = track::recorded_passings(*session.recording);
    if (!marks) return;
    const auto words = lap::against_file(track::crossings(session.motion->best, session.gate), *marks);
    if (words) session.warnings.push_back({.kind = recording::WarningKind::laps_contradict_file, .texts = {*words}});
}

Result<void> find_laps_on_map(Session& session, const SessionOptions& options) {
    const auto gate = choose_gate(*session.recording, *session.motion, options.track, session.known_track);
    if (!gate) return gate.error();
    session.gate = gate->gate;
    session.gate_origin = gate->origin;
    session.laps = lap::find_laps(*session.motion, session.gate, *session.recording);
    if (session.laps.empty())
        return no_laps(*session.recording, said("the timing line is never crossed"),
                       said("check that the track file belongs to this track"));
    time_at_square_gate(session);
    hold_against_file(session);
    return {};
}

constexpr double motion_part = 0.9; // of the work

Result<void> find_motion_and_laps(Session& session, const SessionOptions& options, const base::Progress& progress) {
    const base::Progress of_motion = [&](std::string_view stage, double part) {
        return base::go_on(progress, stage, motion_part * part);
    };
    auto motion = motion::estimate_motion(*session.recording, options.motion, of_motion);
    if (!motion) return motion.error();
    session.warnings = motion->warnings;
    if (!options.track) session.known_track = driven_track(options.known_tracks, *session.recording, *motion);
    if (!base::go_on(progress, said("finding the laps"), motion_part)) return base::cancelled();
    session.motion = std::make_shared<const motion::MotionEstimate>(std::move(motion).value());
    if (is_dead_reckoned(*session.motion)) {
        const auto as_measured = session.motion; // outlives what is placed on the line
        return find_laps_dead_reckoned(session, *as_measured);
    }
    return find_laps_on_map(session, options);
}

recording::WarningKind kind_of(base::ErrorCode code) {
    if (code == base::ErrorCode::no_motion) return recording::WarningKind::no_motion;
    return code == base::ErrorCode::no_laps ? recording::WarningKind::no_laps
                                            : recording::WarningKind::cannot_be_computed;
}

// A recording without laps is a session too: its channels and warnings are what a person needs to mend it.
void keep_without_laps(Session& session, const base::Error& why) {
    session.laps.clear();
    session.why_no_laps = why;
    recording::Warning warning{.kind = kind_of(why.code), .texts = {why.what, why.remedy}};
    if (why.place.line) warning.seen = {1, {static_cast<std::uint32_t>(*why.place.line)}};
    session.warnings.push_back(std::move(warning));
}

} // namespace

std::vector<lap::Lap> judged_laps(std::vector<lap::Lap> laps, const motion::MotionEstimate& motion,
                                  const track::ReferenceLine& line) {
    std::vector<lap::LapTrace> traces(laps.size());
    base::parallel_for(laps.size(), 0, [&](std::size_t i) {
        if (laps[i].kind != lap::LapKind::flying) return;
        if (auto trace = lap::trace_lap(motion.best, laps[i].start_s, laps[i].end_s, line, judging_step_m))
            traces[i] = std::move(*trace);
    });
    return lap::judged(std::move(laps), traces);
}

std::vector<track::Stretch> likely_laps(const std::vector<lap::Lap>& laps, const motion::MotionEstimate& motion) {
    std::vector<const lap::Lap*> flying;
    for (const lap::Lap& lap : laps)
        if (lap.kind == lap::LapKind::flying) flying.push_back(&lap);
    std::ranges::sort(flying, {}, [](const lap::Lap* l) { return l->time_s(); });
    std::vector<track::Stretch> stretches;
    if (flying.empty()) return stretches;
    // The seed comes first: the middle lap, which no shortcut and no traffic made.
    const double middle = flying[flying.size() / 2]->time_s();
    std::ranges::sort(flying, {}, [&](const lap::Lap* l) { return std::abs(l->time_s() - middle); });
    for (const lap::Lap* lap : flying)
        if (std::abs(lap->time_s() / middle - 1.0) < 0.07 && stretches.size() < 8)
            stretches.push_back({&motion.best, lap->start_s, lap->end_s});
    return stretches;
}

const lap::Lap* fastest_of(const std::vector<lap::Lap>& laps) {
    const lap::Lap* best = nullptr;
    const auto better = [&](const lap::Lap& l) {
        if (!best) return true;
        if (l.clean != best->clean) return l.clean;
        return l.time_s() < best->time_s();
    };
    for (const lap::Lap& l : laps)
        if (l.kind == lap::LapKind::flying && better(l)) best = &l;
    return best;
}

track::Gate square_gate(const track::ReferenceLine& line, double half_width_m) {
    const track::Vec2 t = line.tangent_at(0.0);
    return {line.position(0.0), std::atan2(t.north, t.east), half_width_m};
}

const lap::Lap* Session::lap(int number) const {
    const auto found = std::ranges::find(laps, number, &lap::Lap::number);
    return found == laps.end() ? nullptr : &*found;
}

const lap::Lap* Session::fastest() const {
    return fastest_of(laps);
}

std::string Session::title() const {
    const std::string names = car::title_of({recording->driver, recording->car});
    return names.empty() ? std::filesystem::path(recording->source_file).filename().string() : names;
}

Result<std::shared_ptr<const Session>> understand(recording::Recording recording, const SessionOptions& options,
                                                  const base::Progress& progress) {
    auto session = std::make_shared<Session>();
    session->trust = import::judge(recording);
    session->recording = std::make_shared<const recording::Recording>(std::move(recording));
    if (const auto found = find_motion_and_laps(*session, options, progress); !found) {
        if (found.error().code == ErrorCode::cancelled) return found.error();
        keep_without_laps(*session, found.error());
    }
    return std::shared_ptr<const Session>(std::move(session));
}

Result<std::shared_ptr<const Session>> load_session(const std::string& path, const SessionOptions& options,
                                                    const base::Progress& progress) {
    auto recording = import::import_file(path, options.import, progress);
    if (!recording) return recording.error();
    recording::Recording named = std::move(recording).value();
    car::take_names(named, options.setup);
    return understand(std::move(named), options, progress);
}

} // namespace lapwright::analysis
