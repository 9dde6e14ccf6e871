// SPDX-License-Identifier: GPL-3.0-or-later
// The line that a session's clean laps took, for simulating another car on its track.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/result.h"
#include "core/causes/another_track.h"

#include <memory>

namespace lapwright::analysis {

// Of the clean laps, else of the fastest flying one.  Errors: as place_together, and no_laps.
[[nodiscard]] base::Result<causes::TrackCourse> course_of_session(std::shared_ptr<const Session> session);

} // namespace lapwright::analysis
