// SPDX-License-Identifier: GPL-3.0-or-later
// Several sessions on one frame, one gate, one reference line, so that a distance is the same piece of tarmac for all.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/track/track_record.h"

#include <memory>
#include <optional>
#include <vector>

namespace lapwright::analysis {

struct Placed {
    std::shared_ptr<const Session> session;
    std::shared_ptr<const motion::MotionEstimate> motion; // in the track's frame
    std::vector<lap::Lap> laps;                 // timed with the common gate, judged on the common line and by hand
    std::vector<recording::Warning> warnings{}; // of placing it
};

struct CommonTrack {
    track::Track track;
    std::vector<Placed> sessions; // as many as came in, in their order
    double length_sd = 0.0;       // share by which all lengths and speeds may be off together: wheels alone tell them
};

// The gate comes from the record, else from the one that all sessions are known to have
// driven, else from the session that knows best (its own lap column before a proposed one);
// the line goes through the laps of all.  At least one session.  Errors: no_laps,
// different_tracks, with the file they are about, and cancelled; progress is told from 0 to 1.
[[nodiscard]] base::Result<CommonTrack> place_together(const std::vector<std::shared_ptr<const Session>>& sessions,
                                                       const std::optional<track::TrackRecord>& record,
                                                       const base::Progress& progress = {});

} // namespace lapwright::analysis
