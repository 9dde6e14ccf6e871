// SPDX-License-Identifier: GPL-3.0-or-later
// One scale for the laps of all open sessions: seconds behind the fastest clean lap, so that a tenth can be seen.
#pragma once

#include "core/workspace/open_sessions.h"

#include <map>
#include <vector>

namespace lapwright::workspace {

struct LapScale {
    double full_s = 1.0;                      // that a row's whole length stands for
    std::map<SessionKey, double> fastest_s{}; // from which each session's laps are measured; none without a flying lap
};

// Sessions whose fastest laps lie within a quarter of one another are measured from the same lap: others are of another
// track, or another weather.  Laps further behind than five seconds do not stretch the scale.
[[nodiscard]] LapScale lap_scale(const std::vector<OpenSessions::Entry>& entries);

enum class LapOrder { driven, time };

// The session's laps as a list shows them: as they were driven, or the flying ones by their time with the others after
// them.
[[nodiscard]] std::vector<const lap::Lap*> in_order(const analysis::Session& session, LapOrder order);

} // namespace lapwright::workspace
