// SPDX-License-Identifier: GPL-3.0-or-later
// A session as laps over time: how lap time and each segment's time went on, where learning stopped, and what is still
// to be won there against the driver's own best.  A driver learns much at first and little later (the law of practice:
// Newell and Rosenbloom 1981), so that a straight course through all laps would promise too much at the end; what is
// driven now is taken from the later half of the laps that count, five at least; of all where so few count.  Courses
// and intervals: core/math/trend.h.
#pragma once

#include "core/base/estimate.h"

#include <cstddef>
#include <optional>
#include <vector>

namespace lapwright::comparison {

struct LearningLap {
    double order = 0.0;            // laps driven before it; strictly increasing
    bool counts = true;            // may be a best one; a lap that cut a corner shows a course but no best
    std::vector<double> segment_s; // its time in each segment; as many in every lap
};

enum class Learning {
    cannot_tell,
    quicker, // over all laps, and nothing says that it ended
    stopped, // quicker over all, but the later half refuses the pace of all and shows none of its own
    level,   // certainly little change
    slower,
};

[[nodiscard]] const char* name(Learning learning); // "cannot_tell", …

// The whole lap or one segment.  Estimates are 95 % intervals.
struct LearningCourse {
    Learning state = Learning::cannot_tell;
    base::Estimate change_s_per_lap;      // over all laps; negative: getting quicker
    base::Estimate late_change_s_per_lap; // of the later half; untold below ten laps
    base::Estimate now_s;                 // the later half's course at its end
    std::size_t late_first = 0;           // place of the first of the later laps
    double late_begin_s = 0.0;            // there, of the line through them that ends in now_s
    std::optional<double> best_s;         // of the laps that count
    std::size_t best_lap = 0;             // its place among the laps
    base::Estimate to_win_s;              // now_s − best_s
    // By how much the best of as many laps that differ by chance alone would lie under their level: the later laps'
    // scatter times the expected least of n normals (Harter 1961).
    std::optional<double> to_win_by_chance_s;
    // More than chance explains: by more than the error of what is driven now and the luck of the best lap together.
    bool to_win_is_told = false;
};

struct LearningCurve {
    std::vector<LearningCourse> segments;
    LearningCourse lap;
    std::optional<double> best_segments_s; // put together
};

// What nobody would call a change, over a whole session (common practice, no source).
inline constexpr double little_change_of_lap_s = 0.2;
inline constexpr double little_change_of_segment_s = 0.05;

[[nodiscard]] LearningCurve learning_curve(const std::vector<LearningLap>& laps);

} // namespace lapwright::comparison
