// SPDX-License-Identifier: GPL-3.0-or-later
// What a session's flying laps did in the corners of a track that is known, for the book.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/result.h"
#include "core/book/corners.h"
#include "core/lap/lap.h"
#include "core/track/track_record.h"

#include <memory>
#include <vector>

namespace lapwright::analysis {

// kept_laps: the laps as the book has them.  Each session is measured on the line of its own laps; places are told from
// the record's start of the corner, so that they compare between sessions.  A lap that leaves the track, and a corner
// that the record does not name, has no figures.  Errors: as place_together.
[[nodiscard]] base::Result<std::vector<book::KeptCorner>> corners_of_session(std::shared_ptr<const Session> session,
                                                                             const track::TrackRecord& record,
                                                                             const std::vector<lap::Lap>& kept_laps);

} // namespace lapwright::analysis
