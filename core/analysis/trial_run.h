// SPDX-License-Identifier: GPL-3.0-or-later
// A setup trial over whole sessions: which were driven with the change, and what it is worth.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/car/figure_changes.h"
#include "core/car/setup_sheet.h"
#include "core/comparison/trial.h"
#include "core/track/track_record.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::analysis {

struct TrialSession {
    std::shared_ptr<const Session> session;
    bool changed = false;
    car::SetupSheet setup = {}; // says nothing where none is known
};

struct TrialReport {
    track::Track track;
    comparison::Trial trial; // one effect a segment of the track
    // What it did to the car, or why that cannot be told.
    std::optional<car::FigureChanges> figures = {};
    std::string no_figures = {};
    std::string sentence;           // "worth 0.21 ±0.08 s a lap, most of it in Sweep"
    std::vector<std::string> notes; // on the order, and on what the setup sheets show
};

// What the setup sheets say against the trial, see change_not_shown(); to be asked about before.
[[nodiscard]] std::string change_not_shown(const std::vector<TrialSession>& sessions);

// Sessions are put into the order of their start times; where one has none, the order given is taken and told.  Their
// clean laps are counted through for the drift.  What is no trial (trial_plan.h) is refused.  Called off it ends with
// the error cancelled, between two laps at the latest.
[[nodiscard]] base::Result<TrialReport> run_trial(const std::vector<TrialSession>& sessions,
                                                  const std::optional<track::TrackRecord>& record = {},
                                                  const base::Progress& progress = {});

} // namespace lapwright::analysis
