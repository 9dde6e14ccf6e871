// SPDX-License-Identifier: GPL-3.0-or-later
// What one lap did in one segment.  Pure functions of a trace,
// so that the estimate and every draw go through the same code.
//
// Thresholds are common practice, no source; each is a named constant in segment_figures.cpp.
#pragma once

#include "core/comparison/comparison.h"
#include "core/lap/lap.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace lapwright::comparison {

// Figures of one trace; Figure::sd stays absent.  `index` is the segment's place in `segments`: braking, lift and full
// throttle are sought from the segment before to the segment after.  Channels are used where the trace has them, else
// the figure is derived from the motion and says so, else it is absent.
[[nodiscard]] SegmentFigures segment_figures(const lap::LapTrace& trace, const std::vector<track::Segment>& segments,
                                             std::size_t index);

// Those of all segments, with what belongs to the whole lap (shifts, the engine's full push) worked out once.
[[nodiscard]] std::vector<SegmentFigures> figures_of_lap(const lap::LapTrace& trace,
                                                         const std::vector<track::Segment>& segments);

// Standard uncertainty of throttle points that are derived from motion, beside that of the motion itself.
inline constexpr double derived_full_throttle_sd_m = 7.0;
inline constexpr double derived_opening_sd_m = 5.0;

struct Extreme {
    double distance_m = 0.0;
    double speed_mps = 0.0;
};

// The lowest (highest) speed between two distances, read off a parabola fitted through the samples near it: the
// smallest of noisy samples would lie too low.
[[nodiscard]] Extreme lowest_speed(const lap::LapTrace& trace, double from_m, double to_m);
[[nodiscard]] Extreme highest_speed(const lap::LapTrace& trace, double from_m, double to_m);

} // namespace lapwright::comparison
