// SPDX-License-Identifier: GPL-3.0-or-later
// A beacon beats a lap column, as where there are positions.
#include "core/analysis/dead_reckoned_session.h"

#include "core/base/translation.h"
#include "core/track/gate.h"

namespace lapwright::analysis {

using base::said;

bool is_dead_reckoned(const motion::MotionEstimate& motion) {
    return motion.source == motion::PositionSource::dead_reckoning;
}

base::Result<lap::DeadReckoned> dead_reckoned_session(const recording::Recording& recording,
                                                      const motion::MotionEstimate& motion) {
    lap::DeadReckoned reckoned{&motion, {}, {}};
    if (const auto passings = track::recorded_passings(recording)) {
        for (std::size_t i = 0; i < passings->time_s.size(); ++i) {
            if (passings->time_s[i] < motion.best.start_s() || passings->time_s[i] > motion.best.end_s()) continue;
            reckoned.passings_s.push_back(passings->time_s[i]);
            reckoned.error_s.push_back(passings->error_s[i]);
        }
    }
    if (reckoned.passings_s.size() >= 2) return reckoned;
    return base::Error{base::ErrorCode::no_laps,
                       {recording.source_file, {}, {}},
                       said("without positions laps come from a lap column or a beacon, and it shows no whole lap"),
                       said("export the session with its lap column, or with positions")};
}

} // namespace lapwright::analysis
