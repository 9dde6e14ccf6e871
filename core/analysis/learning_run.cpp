// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/learning_run.h"

#include "core/analysis/chosen_lap.h"
#include "core/analysis/common_track.h"
#include "core/analysis/trial_plan.h"
#include "core/base/translation.h"
#include "core/comparison/compare_laps.h"
#include "core/findings/learning_words.h"
#include "core/lap/trace_lap.h"

#include <algorithm>

namespace lapwright::analysis {
namespace {

using base::said;
using Sessions = std::vector<std::shared_ptr<const Session>>;

constexpr double learning_grid_m = 1.0;
constexpr double learning_placed_part = 0.6; // of the work is done when all laps lie on one line

Sessions in_driven_order(const Sessions& given, std::vector<std::string>& notes) {
    std::vector<PlannedRun> runs;
    for (const auto& session : given)
        runs.push_back({session->recording.get(), session->title(), false, {}});
    const auto order = driven_order(runs);
    if (!order) {
        if (given.size() > 1)
            notes.push_back(said("not every session says when it was driven: they are taken in the order given"));
        return given;
    }
    if (!std::ranges::is_sorted(*order))
        notes.push_back(said("the sessions are taken in the order of their start times, not as given"));
    Sessions sorted;
    for (const std::size_t i : *order)
        sorted.push_back(given[i]);
    return sorted;
}

bool set_aside_by_hand(const Session& session, const lap::Lap& lap) {
    const lap::JudgedByHand* word = lap::word_on(lap, session.by_hand);
    return word && !word->clean;
}

// False when it was called off.
bool measure(LearningReport& report, const CommonTrack& common, const base::Progress& progress) {
    std::size_t all = 0;
    for (const Placed& placed : common.sessions)
        all += placed.laps.size();
    std::size_t order = 0;
    for (std::size_t i = 0; i < common.sessions.size(); ++i) {
        const Placed& placed = common.sessions[i];
        for (const lap::Lap& lap : placed.laps) {
            const double part = static_cast<double>(order) / static_cast<double>(all);
            if (!base::go_on(progress, said("measuring every lap"),
                             learning_placed_part + (1.0 - learning_placed_part) * part))
                return false;
            const double before = static_cast<double>(order++);
            if (lap.kind != lap::LapKind::flying || set_aside_by_hand(*placed.session, lap)) continue;
            const auto trace =
                lap::trace_lap(placed.motion->best, lap.start_s, lap.end_s, common.track.line, learning_grid_m);
            if (!trace) continue;
            report.laps.push_back({i, own_number(*placed.session, lap), before, lap.time_s(), lap.time_sd_s, lap.clean,
                                   lap.why_not_clean, comparison::segment_times(*trace, common.track.segments)});
        }
    }
    return true;
}

std::vector<std::string> segment_names(const track::Track& track) {
    std::vector<std::string> names;
    for (const track::Segment& segment : track.segments)
        names.push_back(segment.name);
    return names;
}

} // namespace

base::Result<LearningReport> learn(const Sessions& given, const std::optional<track::TrackRecord>& record,
                                   const base::Progress& progress) {
    LearningReport report;
    report.sessions = in_driven_order(given, report.notes);
    const base::Progress placing = [&](std::string_view stage, double part) {
        return base::go_on(progress, stage, learning_placed_part * part);
    };
    const auto common = place_together(report.sessions, record, placing);
    if (!common) return common.error();
    if (!measure(report, *common, progress)) return base::cancelled();
    if (report.laps.empty())
        return base::Error{base::ErrorCode::no_laps,
                           {report.sessions.front()->recording->source_file, {}, {}},
                           said("there is no flying lap in it that follows the track"),
                           said("choose a session with whole laps")};
    report.track = common->track;
    std::vector<comparison::LearningLap> laps;
    for (const LearnedLap& lap : report.laps)
        laps.push_back({lap.order, lap.clean, lap.segment_s});
    report.curve = comparison::learning_curve(laps);
    report.sentence = findings::learning_sentence(report.curve, segment_names(report.track));
    return report;
}

} // namespace lapwright::analysis
