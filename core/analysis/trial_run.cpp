// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/trial_run.h"

#include "core/analysis/car_laps.h"
#include "core/analysis/common_track.h"
#include "core/analysis/trial_plan.h"
#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/comparison/compare_laps.h"
#include "core/findings/trial_words.h"
#include "core/lap/trace_lap.h"

#include <algorithm>
#include <cmath>

namespace lapwright::analysis {
namespace {

using base::said;
using base::word;
using comparison::TrialEffect;

constexpr double grid_m = 1.0;
constexpr double placed_part = 0.6;    // of the work is done when all laps lie on one line
constexpr double measured_part = 0.95; // and when they are timed

bool told(const TrialEffect& effect) {
    return effect.low_s > 0.0 || effect.high_s < 0.0;
}

std::string seconds(const TrialEffect& effect) {
    const double half = 0.5 * (effect.high_s - effect.low_s);
    const int decimals = std::max(1, base::decimals_for(half, 3));
    return base::shown_text(std::abs(effect.gain_s), decimals) + " " + base::plus_minus_text(half, 3) + " s";
}

std::string sentence_of(const comparison::Trial& trial, const std::vector<track::Segment>& segments) {
    if (!told(trial.lap))
        return said("What the change is worth cannot be told from these laps: %1 a lap.", {seconds(trial.lap)});
    const double sign = trial.lap.gain_s > 0.0 ? 1.0 : -1.0;
    const std::string text = said(sign > 0.0 ? word("The change is worth %1 a lap") : word("The change costs %1 a lap"),
                                  {seconds(trial.lap)});
    std::size_t best = 0;
    for (std::size_t i = 1; i < trial.segments.size(); ++i)
        if (sign * trial.segments[i].gain_s > sign * trial.segments[best].gain_s) best = i;
    if (!trial.segments.empty() && told(trial.segments[best]) && sign * trial.segments[best].gain_s > 0.0)
        return said("%1, the largest part in %2 (%3).", {text, segments[best].name, seconds(trial.segments[best])});
    return said("%1.", {text});
}

// The clean laps of all sessions.
struct Measured {
    std::vector<comparison::TrialLap> times;
    CarLaps laps; // the same, in the same order
};

// Nothing when it was called off.
std::optional<Measured> measured(const std::vector<TrialSession>& sessions, const CommonTrack& common,
                                 const base::Progress& progress) {
    std::size_t all = 0;
    for (const Placed& placed : common.sessions)
        all += placed.laps.size();
    Measured result;
    std::size_t order = 0;
    for (std::size_t i = 0; i < sessions.size(); ++i) {
        const Placed& placed = common.sessions[i];
        for (const lap::Lap& lap : placed.laps) {
            const double part = static_cast<double>(order++) / static_cast<double>(all);
            if (!base::go_on(progress, said("measuring every lap"), placed_part + (measured_part - placed_part) * part))
                return {};
            if (!lap.clean) continue;
            const auto trace = lap::trace_lap(placed.motion->best, lap.start_s, lap.end_s, common.track.line, grid_m);
            if (!trace) continue;
            result.times.push_back({static_cast<double>(order), sessions[i].changed,
                                    comparison::segment_times(*trace, common.track.segments)});
            result.laps.take(*placed.session, *placed.motion, *trace, lap.start_s);
        }
    }
    return result;
}

// Mass and springs of the first run that has a sheet: what differs between runs is what is asked for.
const TrialSession& best_known(const std::vector<TrialSession>& sessions) {
    const auto known = std::ranges::find_if(sessions, [](const TrialSession& s) { return s.setup.mass.has_value(); });
    return known == sessions.end() ? sessions.front() : *known;
}

void add_figures(TrialReport& report, const Measured& laps, const std::vector<TrialSession>& sessions,
                 double length_sd) {
    std::vector<car::DrivenLap> driven;
    for (const comparison::TrialLap& lap : laps.times)
        driven.push_back({lap.order, lap.changed});
    const TrialSession& known = best_known(sessions);
    auto figures =
        car::figure_changes(laps.laps.data(*known.session, known.setup, report.track.segments, length_sd), driven);
    if (!figures) {
        report.no_figures = figures.error().what;
        return;
    }
    report.figures = std::move(figures).value();
    if (const std::string there = findings::figure_changes_text(*report.figures); !there.empty())
        report.sentence += " " + said("Of the car it changed: %1.", {there});
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
        notes.push_back(said("not every session says when it was driven: they are taken in the order given"));
        return sessions;
    }
    std::vector<TrialSession> sorted;
    for (const std::size_t i : *order)
        sorted.push_back(sessions[i]);
    if (!std::ranges::is_sorted(*order))
        notes.push_back(said("the sessions are taken in the order of their start times, not as given"));
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
    const auto laps = measured(sessions, *common, progress);
    if (!laps) return base::cancelled();
    auto trial = comparison::setup_trial(laps->times);
    if (!trial) return trial.error();
    TrialReport report;
    report.track = common->track;
    report.trial = std::move(trial).value();
    report.notes = std::move(notes);
    report.sentence = sentence_of(report.trial, report.track.segments);
    if (!base::go_on(progress, said("telling what the change did to the car"), measured_part)) return base::cancelled();
    add_figures(report, *laps, sessions, common->length_sd);
    return report;
}

} // namespace lapwright::analysis
