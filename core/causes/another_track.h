// SPDX-License-Identifier: GPL-3.0-or-later
// A car on a track where it has not been driven: its figures and its driver, on a line that somebody else took there.
// What the driver uses in every corner of the other track is drawn from what is used in the corners that are known; on
// straights likewise.  A simulation of a change is then what aero_balance.h and what_if.h make of it.
#pragma once

#include "core/causes/explanation.h"

#include <vector>

namespace lapwright::causes {

struct TrackCourse {
    car::Course course;
    std::vector<track::Segment> segments; // as many as the course has
};

// segments: of the model's own course.  Draws and what is untold are the model's.
[[nodiscard]] CarModel on_another_track(const CarModel& model, const std::vector<track::Segment>& segments,
                                        const TrackCourse& there);

} // namespace lapwright::causes
