// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/further_laps.h"

#include "core/analysis/chosen_lap.h"
#include "core/analysis/common_track.h"
#include "core/analysis/known_track.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/comparison/compare_laps.h"
#include "core/lap/trace_lap.h"
#include "core/track/edit_segments.h"

#include <algorithm>
#include <utility>

namespace lapwright::analysis {
namespace {

using base::Error;
using base::ErrorCode;
using base::Result;
using base::said;
using comparison::SegmentComparison;

// A's lap and the session beside it on one line.
struct Beside {
    track::Track track;
    Placed placed;
    lap::LapEnsemble a;
    double stretch = 1.0; // from its distances to the pairing's
};

void stretch(std::vector<double>& distances_m, double factor) {
    for (double& distance_m : distances_m)
        distance_m *= factor;
}

// The pairing's gate and segments where they are known on the earth, else what the sessions themselves know.
std::optional<track::TrackRecord> record_for(const Pairing& pairing) {
    auto record = track::record_of(pairing.track);
    if (!record) return std::nullopt;
    return std::move(record).value();
}

std::vector<track::Segment> stretched_segments(const Pairing& pairing, double factor) {
    std::vector<track::Segment> segments = pairing.track.segments;
    for (track::Segment& segment : segments) {
        segment.start_m *= factor;
        segment.end_m *= factor;
    }
    return segments;
}

Error leaves_the_track(const Session& session, const lap::Lap& lap) {
    return {ErrorCode::different_tracks,
            {session.recording->source_file, {}, {}},
            said("lap %1 leaves the track on which A is driven", {base::integer_text(lap.number)}),
            said("choose another lap")};
}

Result<lap::LapEnsemble> traced_beside(const Placed& placed, const lap::Lap& lap, const track::Track& track,
                                       double step_m) {
    auto ensemble =
        lap::trace_ensemble(*placed.motion, lap, track.gate, track.line, step_m, *placed.session->recording);
    if (!ensemble) return leaves_the_track(*placed.session, lap);
    return std::move(*ensemble);
}

double step_of(const Pairing& pairing) {
    const auto& distance_m = pairing.a.trace.best.distance_m;
    return distance_m[1] - distance_m[0];
}

Result<Beside> place_beside(const Pairing& pairing, const std::shared_ptr<const Session>& session,
                            const base::Progress& progress) {
    std::vector<std::shared_ptr<const Session>> both{pairing.a.session};
    if (session != pairing.a.session) both.push_back(session);
    auto together = place_together(both, record_for(pairing), progress);
    if (!together) return together.error();
    CommonTrack common = std::move(together).value();
    const auto lap_a = chosen_lap(common.sessions.front(), pairing.a.lap.number);
    if (!lap_a) return lap_a.error();
    auto a = traced_beside(common.sessions.front(), *lap_a, common.track, step_of(pairing));
    if (!a) return a.error();
    const double factor = pairing.track.line.length_m / common.track.line.length_m;
    common.track.segments = stretched_segments(pairing, 1.0 / factor);
    return Beside{std::move(common.track), std::move(common.sessions.back()), std::move(a).value(), factor};
}

void fill(FurtherLap& lap, const Beside& beside, double step_m) {
    auto chosen = chosen_lap(beside.placed, lap.wanted.lap);
    if (!chosen) {
        lap.refused = chosen.error();
        return;
    }
    auto trace = traced_beside(beside.placed, *chosen, beside.track, step_m);
    if (!trace) {
        lap.refused = trace.error();
        return;
    }
    comparison::Comparison against_a = comparison::compare_laps(beside.a, *trace, beside.track.segments);
    lap.lap = std::move(chosen).value();
    lap.gap = std::move(against_a.gap);
    lap.gap_at_end_s = against_a.gap_at_end_s;
    for (const SegmentComparison& segment : against_a.segments)
        lap.gains_s.push_back(segment.gain_s);
    lap.trace = std::move(trace->best);
    stretch(lap.trace.distance_m, beside.stretch);
    stretch(lap.gap.distance_m, beside.stretch);
}

} // namespace

std::optional<std::vector<FurtherLap>> further_laps(const Pairing& pairing, const std::vector<FurtherWanted>& wanted,
                                                    const base::Progress& progress) {
    std::vector<FurtherLap> laps;
    for (const FurtherWanted& one : wanted)
        laps.emplace_back().wanted = one;
    std::vector<bool> done(laps.size(), false);
    for (std::size_t i = 0; i < laps.size(); ++i) {
        if (done[i]) continue;
        const base::Progress placing = [&](std::string_view stage, double part) {
            const double count = static_cast<double>(laps.size());
            return base::go_on(progress, stage, (static_cast<double>(i) + part) / count);
        };
        if (!base::go_on(placing, said("placing further laps"), 0.0)) return std::nullopt;
        const auto beside = place_beside(pairing, laps[i].wanted.session, placing);
        if (!beside && beside.error().code == ErrorCode::cancelled) return std::nullopt;
        for (std::size_t k = i; k < laps.size(); ++k) {
            if (laps[k].wanted.session != laps[i].wanted.session) continue;
            done[k] = true;
            if (beside)
                fill(laps[k], *beside, step_of(pairing));
            else
                laps[k].refused = beside.error();
        }
    }
    return laps;
}

} // namespace lapwright::analysis
