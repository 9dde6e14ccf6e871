// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/learning.h"

#include "core/base/translation.h"
#include "core/math/distributions.h"
#include "core/math/statistics.h"
#include "core/math/trend.h"

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lapwright::comparison {
namespace {

using base::said;
using base::word;

constexpr std::size_t least_of_course = 5;
const char* const too_few = word("fewer than five flying laps");
const char* const too_few_later = word("fewer than ten flying laps");

base::Estimate estimate(double value, const std::optional<math::Interval>& interval) {
    return interval ? base::Estimate{value, interval->low, interval->high} : base::untold(said(too_few));
}

Learning state_of(const LearningCourse& course, double laps, double little_s) {
    const base::Estimate& change = course.change_s_per_lap;
    if (!change.told()) return Learning::cannot_tell;
    if (std::max(-change.low, change.high) * laps <= little_s) return Learning::level;
    if (change.low > 0.0) return Learning::slower;
    if (change.high < 0.0) {
        const base::Estimate& late = course.late_change_s_per_lap;
        const bool ended = late.told() && late.high >= 0.0 && late.low > change.value;
        return ended ? Learning::stopped : Learning::quicker;
    }
    return Learning::cannot_tell;
}

void add_best(LearningCourse& course, const std::vector<LearningLap>& laps, const std::vector<double>& times,
              double late_scatter_s) {
    std::size_t counted = 0;
    for (std::size_t i = 0; i < times.size(); ++i) {
        if (!laps[i].counts) continue;
        ++counted;
        if (course.best_s && *course.best_s <= times[i]) continue;
        course.best_s = times[i];
        course.best_lap = i;
    }
    course.to_win_s = base::untold(course.best_s ? course.now_s.untold : said("no clean lap"));
    if (!course.best_s || !course.now_s.told()) return;
    course.to_win_s = {course.now_s.value - *course.best_s, course.now_s.low - *course.best_s,
                       course.now_s.high - *course.best_s};
    const double expected_s = late_scatter_s * math::expected_max_of_normals(counted);
    // What the best of so many stays within 19 times in 20.
    const double most_s = late_scatter_s * math::normal_quantile(std::pow(0.95, 1.0 / static_cast<double>(counted)));
    course.to_win_by_chance_s = expected_s;
    course.to_win_is_told =
        course.to_win_s.value - expected_s > std::hypot(course.to_win_s.half_width(), most_s - expected_s);
}

struct Later {
    std::vector<double> order;
    std::vector<double> times_s;
    std::size_t of = 0;    // laps, of which these are the later half
    std::size_t first = 0; // place of their first among all
};

Later later_half(const std::vector<LearningLap>& laps, const std::vector<double>& times) {
    const auto counted = static_cast<std::size_t>(std::ranges::count_if(laps, &LearningLap::counts));
    const bool all = counted < least_of_course;
    Later later;
    later.of = all ? laps.size() : counted;
    std::size_t left_out = later.of - std::min(later.of, std::max(least_of_course, (later.of + 1) / 2));
    for (std::size_t i = 0; i < laps.size(); ++i) {
        if (!all && !laps[i].counts) continue;
        if (left_out > 0) {
            --left_out;
            continue;
        }
        if (later.order.empty()) later.first = i;
        later.order.push_back(laps[i].order);
        later.times_s.push_back(times[i]);
    }
    return later;
}

LearningCourse course_of(const std::vector<LearningLap>& laps, const std::vector<double>& times, double little_s) {
    LearningCourse course;
    std::vector<double> order;
    for (const LearningLap& lap : laps)
        order.push_back(lap.order);
    const auto all = math::trend(order, times);
    const Later later = later_half(laps, times);
    const auto late = math::trend(later.order, later.times_s);
    course.change_s_per_lap = all ? estimate(all->slope, all->slope_interval) : base::untold(said(too_few));
    course.late_change_s_per_lap = late && later.of >= 2 * least_of_course ? estimate(late->slope, late->slope_interval)
                                                                           : base::untold(said(too_few_later));
    course.now_s = late ? estimate(late->level_at_end, late->level_interval) : base::untold(said(too_few));
    course.late_first = later.first;
    if (late) course.late_begin_s = late->level_at_end - late->slope * (later.order.back() - later.order.front());
    course.state = state_of(course, laps.empty() ? 0.0 : order.back() - order.front(), little_s);
    add_best(course, laps, times, late ? late->residual_sd : 0.0);
    return course;
}

} // namespace

const char* name(Learning learning) {
    switch (learning) {
    case Learning::quicker:
        return "quicker";
    case Learning::stopped:
        return "stopped";
    case Learning::level:
        return "level";
    case Learning::slower:
        return "slower";
    case Learning::cannot_tell:
        break;
    }
    return "cannot_tell";
}

LearningCurve learning_curve(const std::vector<LearningLap>& laps) {
    LearningCurve curve;
    const std::size_t segments = laps.empty() ? 0 : laps.front().segment_s.size();
    std::vector<double> times(laps.size());
    for (std::size_t s = 0; s < segments; ++s) {
        std::ranges::transform(laps, times.begin(), [s](const LearningLap& lap) { return lap.segment_s[s]; });
        curve.segments.push_back(course_of(laps, times, little_change_of_segment_s));
    }
    std::ranges::transform(laps, times.begin(), [](const LearningLap& lap) {
        return std::accumulate(lap.segment_s.begin(), lap.segment_s.end(), 0.0);
    });
    curve.lap = course_of(laps, times, little_change_of_lap_s);
    if (!curve.lap.best_s) return curve;
    curve.best_segments_s = 0.0;
    for (const LearningCourse& course : curve.segments)
        *curve.best_segments_s += *course.best_s;
    return curve;
}

} // namespace lapwright::comparison
