// SPDX-License-Identifier: GPL-3.0-or-later
// Learning a track: the flying laps of one session, or of several one after the other, on one line, segment by segment.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/comparison/learning.h"
#include "core/track/track_record.h"

#include <memory>
#include <optional>
#include <string>
#include <vector>

namespace lapwright::analysis {

// A flying lap.  One that the program sets aside shows the course too: who learns is slow at first.  One that a person
// set aside is left out.
struct LearnedLap {
    std::size_t session = 0; // of those in the report
    int number = 0;          // in the session's own count
    double order = 0.0;      // laps driven before it, out and in laps counted too
    double time_s = 0.0;
    std::optional<double> time_sd_s;
    bool clean = false;
    std::string why_not_clean;
    std::vector<double> segment_s; // sums to the lap's time
};

struct LearningReport {
    std::vector<std::shared_ptr<const Session>> sessions; // in the order of driving
    track::Track track;
    std::vector<LearnedLap> laps;
    comparison::LearningCurve curve; // one course a segment of the track
    std::string sentence;            // "Getting quicker by 0.12 ±0.05 s a lap …"
    std::vector<std::string> notes;
};

// Sessions are put into the order of their start times; where one has none, the order given is taken and told.
// Refused: sessions without laps, of different tracks, or without any flying lap.  Called off it ends with `cancelled`.
[[nodiscard]] base::Result<LearningReport> learn(const std::vector<std::shared_ptr<const Session>>& sessions,
                                                 const std::optional<track::TrackRecord>& record = {},
                                                 const base::Progress& progress = {});

} // namespace lapwright::analysis
