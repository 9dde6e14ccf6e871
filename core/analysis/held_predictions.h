// SPDX-License-Identifier: GPL-3.0-or-later
// The predictions of the book against what was driven since.
//
// Which sessions: of the same driver and car on the track, begun after the prediction was kept (what was driven before
// cannot hold it to account), those that a person named, else those whose setup sheet reaches what was expected
// (core/car/setup_reached.h).  What happened is told as a setup trial tells it (trial_run.h): against the sessions of
// the car as it was before, driven within half a day of it, before and after, so that driver, tyres and track are not
// taken for the change.  Of several days the narrowest counts.  The rule of the verdict: prediction_score.h.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/book/book.h"
#include "core/book/predictions.h"
#include "core/comparison/prediction_score.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::analysis {

struct HeldPrediction {
    book::KeptPrediction kept;
    std::optional<comparison::HeldAgainst> against = {}; // where something was observed
    std::string waits_for = {};                          // else why there is nothing yet
    // Sessions of its driver and car there since: those that a person may name.
    std::vector<book::SessionSummary> since = {};
};

struct HeldPredictions {
    std::vector<HeldPrediction> all; // the oldest first
    comparison::Score score;
};

// As the book has them, at once.
[[nodiscard]] HeldPredictions held_as_kept(std::vector<book::KeptPrediction> predictions);

// Those without a verdict are worked out first, and kept where the book can be written.  Some seconds for each that was
// driven; called off (error cancelled) it keeps what it has.
[[nodiscard]] base::Result<HeldPredictions> hold_predictions(book::Book& book, const base::Progress& progress = {});

} // namespace lapwright::analysis
