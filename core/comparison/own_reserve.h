// SPDX-License-Identifier: GPL-3.0-or-later
// How much further than in the compared lap the same driver went on other clean laps of the day: what he may be asked
// for without leaving what he has done.  From motion alone, in every lap alike, so that laps are held against laps.
#pragma once

#include "core/lap/lap.h"
#include "core/track/track.h"

#include <span>
#include <vector>

namespace lapwright::comparison {

// One segment; each is 0 where no other lap went further, or there is nothing to compare.
struct OwnReserve {
    double min_speed_mps = 0.0;   // more at the slowest point
    double entry_speed_mps = 0.0; // more onto a straight
    double braking_m = 0.0;       // later
    double throttle_m = 0.0;      // sooner
};

// clean: any number of laps on the compared lap's grid; one a segment comes back.
[[nodiscard]] std::vector<OwnReserve> own_reserve(const lap::LapTrace& compared, std::span<const lap::LapTrace> clean,
                                                  const std::vector<track::Segment>& segments);

} // namespace lapwright::comparison
