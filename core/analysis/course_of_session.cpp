// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/course_of_session.h"

#include "core/analysis/chosen_lap.h"
#include "core/analysis/common_track.h"
#include "core/base/translation.h"
#include "core/causes/course.h"
#include "core/lap/trace_lap.h"

#include <utility>

namespace lapwright::analysis {

base::Result<causes::TrackCourse> course_of_session(std::shared_ptr<const Session> session) {
    constexpr double step_m = 1.0;
    const base::Error no_lap{base::ErrorCode::no_laps,
                             {session->recording->source_file, {}, ""},
                             base::said("no lap follows the track all the way round"),
                             base::said("give a session with a whole lap of that track")};
    if (!session->motion) return no_lap;
    const auto together = place_together({session}, session->known_track);
    if (!together) return together.error();
    const Placed& placed = together->sessions.front();
    const track::Track& track = together->track;
    const auto fastest = chosen_lap(placed, {});
    if (!fastest) return fastest.error();
    std::vector<lap::LapTrace> traces;
    for (const lap::Lap& lap : placed.laps) {
        if (!lap.clean) continue;
        if (auto trace = lap::trace_lap(*placed.motion, lap.start_s, lap.end_s, track.line, step_m))
            traces.push_back(std::move(*trace));
    }
    if (traces.empty())
        if (auto trace = lap::trace_lap(*placed.motion, fastest->start_s, fastest->end_s, track.line, step_m))
            traces.push_back(std::move(*trace));
    if (traces.empty()) return no_lap;
    return causes::TrackCourse{causes::course_of(traces, track.segments), track.segments};
}

} // namespace lapwright::analysis
