// SPDX-License-Identifier: GPL-3.0-or-later
// Ties the position errors of sessions together by the fact that all cars drove the same road.
//
// A receiver's slow error shifts a session on the map by decimetres, and its drift each lap a little differently.  The
// road goes in all directions, so that the lateral offsets of a lap from a line tell a shift apart from a driver's
// habit (road_shift.h).  What the draws say of the shift
// beforehand and what the habits leave open weigh against each other (a Gaussian posterior; the draws follow by
// conditioning, Doucet 2010, note on sampling by conditional means, from memory).
#pragma once

#include "core/base/fit_outcome.h"
#include "core/lap/lap.h"
#include "core/motion/motion_estimate.h"
#include "core/track/track.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lapwright::lap {

struct SessionOnRoad {
    const motion::MotionEstimate* motion = nullptr;
    std::vector<Lap> laps; // flying ones are used
};

struct Aligned {
    motion::MotionEstimate motion;
    base::FitOutcome outcome; // of usual line and laps' drift, which rest on each other; rests on laps
};

// The first session's map is the one that all are brought to: `line` runs through its laps.  Returns as many estimates,
// in order, shifted; a session without flying laps along the line, without draws, or without positions comes back as it
// was, not run.  All draws stay as probable as they were, given the road.  A drift that still moved in the last of
// max_rounds has not converged: by so much it is known less well.
[[nodiscard]] std::vector<Aligned> aligned(std::span<const SessionOnRoad> sessions, const track::ReferenceLine& line,
                                           std::uint64_t seed = 1, int max_rounds = 8);

} // namespace lapwright::lap
