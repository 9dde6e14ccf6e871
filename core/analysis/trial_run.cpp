// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/trial_run.h"

#include "core/analysis/common_track.h"
#include "core/analysis/trial_plan.h"
#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/comparison/compare_laps.h"
#include "core/lap/trace_lap.h"

#include <algorithm>
#include <cmath>

namespace lapwright::analysis {
namespace {

using comparison::TrialEffect;

constexpr double grid_m = 1.0;
constexpr double placed_part = 0.6; // of the work is done when all laps lie on one line

bool told(const TrialEffect& effect) {
    return effect.low_s > 0.0 || effect.high_s < 0.0;
}

std::string seconds(const TrialEffect& effect) {
    const double half = 0.5 * (effect.high_s - effect.low_s);
    const int decimals = std::max(1, base::decimals_for(half, 3));
    return base::fixed_text(std::abs(effect.gain_s), decimals) + " " + base::plus_minus_text(half, 3) + " s";
}

std::string sentence_of(const comparison::Trial& trial, const std::vector<track::Segment>& segments) {
    if (!told(trial.lap))
        return "What the change is worth cannot be told from these laps: " + seconds(trial.lap) + " a lap.";
    const double sign = trial.lap.gain_s > 0.0 ? 1.0 : -1.0;
    std::string text =
        std::string(sign > 0.0 ? "The change is worth " : "The change costs ") + seconds(trial.lap) + " a lap";
    std::size_t best = 0;
    for (std::size_t i = 1; i < trial.segments.size(); ++i)
        if (sign * trial.segments[i].gain_s > sign * trial.segments[best].gain_s) best = i;
    if (!trial.segments.empty() && told(trial.segments[best]) && sign * trial.segments[best].gain_s > 0.0)
        text += ", the largest part in " + segments[best].name + " (" + seconds(trial.segments[best]) + ")";
    return text + ".";
}

// The clean laps of all sessions; nothing when it was called off.
std::optional<std::vector<comparison::TrialLap>> trial_laps(const std::vector<TrialSession>& sessions,
                                                            const CommonTrack& common, const base::Progress& progress) {
    std::size_t all = 0;
    for (const Placed& placed : common.sessions)
        all += placed.laps.size();
    std::vector<comparison::TrialLap> laps;
    std::size_t order = 0;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        const Placed& placed = common.sessions[i];
        for (const lap::Lap& lap : placed.laps) {
            const double part = static_cast<double>(order++) / static_cast<double>(all);
            if (!base::go_on(progress, "measuring every lap", placed_part + (1.0 - placed_part) * part)) return {};
            if (!lap.clean) continue;
            const auto trace = lap::trace_lap(placed.motion->best, lap.start_s, lap.end_s, common.track.line, grid_m);
            if (trace)
                laps.push_back({static_cast<double>(order), sessions[i].changed,
                                comparison::segment_times(*trace, common.track.segments)});
        }
    }
    return laps;
}

std::vector<PlannedRun> planned(const std::vector<TrialSession>& sessions) {
    std::vector<PlannedRun> runs;
    for (const TrialSession& one : sessions)
        runs.push_back({one.session->recording.get(), one.session->title(), one.changed, one.setup});
    return runs;
}

// In the order of driving, with what is to be said of it.
std::vector<TrialSession> in_order(const std::vector<TrialSession>& sessions, std::vector<std::string>& notes) {
    const auto order = driven_order(planned(sessions));
    if (!order) {
        notes.emplace_back("not every session says when it was driven: they are taken in the order given");
        return sessions;
    }
    std::vector<TrialSession> sorted;
    for (const std::size_t i : *order)
        sorted.push_back(sessions[i]);
    if (!std::ranges::is_sorted(*order))
        notes.emplace_back("the sessions are taken in the order of their start times, not as given");
    return sorted;
}

} // namespace

std::string change_not_shown(const std::vector<TrialSession>& sessions) {
    return change_not_shown(planned(sessions));
}

base::Result<TrialReport> run_trial(const std::vector<TrialSession>& given,
                                    const std::optional<track::TrackRecord>& record, const base::Progress& progress) {
    if (const auto may = check_trial(planned(given)); !may) return may.error();
    std::vector<std::string> notes;
    const std::vector<TrialSession> sessions = in_order(given, notes);
    if (const std::string unshown = change_not_shown(sessions); !unshown.empty()) notes.push_back(unshown);
    std::vector<std::shared_ptr<const Session>> all;
    for (const TrialSession& one : sessions)
        all.push_back(one.session);
    const base::Progress placing = [&](std::string_view stage, double part) {
        return base::go_on(progress, stage, placed_part * part);
    };
    auto common = place_together(all, record, placing);
    if (!common) return common.error();
    const auto laps = trial_laps(sessions, *common, progress);
    if (!laps) return base::cancelled();
    auto trial = comparison::setup_trial(*laps);
    if (!trial) return trial.error();
    TrialReport report{common->track, std::move(trial).value(), {}, std::move(notes)};
    report.sentence = sentence_of(report.trial, report.track.segments);
    return report;
}

} // namespace lapwright::analysis
