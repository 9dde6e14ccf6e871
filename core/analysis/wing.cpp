// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/wing.h"

#include "core/analysis/course_of_session.h"
#include "core/causes/another_track.h"

#include <numeric>
#include <vector>

namespace lapwright::analysis {

base::Result<Wing> wing_of(const causes::Explanation& explanation, const std::shared_ptr<const Session>& there,
                           const causes::DragCost& cost) {
    if (!there)
        return Wing{causes::aero_balance(*explanation.model_a, explanation.car_a, cost),
                    causes::aero_balance(*explanation.model_b, explanation.car_b, cost),
                    {}};
    const auto course = course_of_session(there);
    if (!course) return course.error();
    std::vector<track::Segment> segments;
    for (const causes::SegmentRow& row : explanation.segments)
        segments.push_back(row.segment);
    const auto balance = [&](const causes::CarModel& model, const car::CarFigures& figures) {
        return causes::aero_balance(causes::on_another_track(model, segments, *course), figures, cost);
    };
    const std::vector<double>& steps_m = course->course.step_m;
    return Wing{balance(*explanation.model_a, explanation.car_a), balance(*explanation.model_b, explanation.car_b),
                Wing::OtherTrack{there->title(), std::accumulate(steps_m.begin(), steps_m.end(), 0.0)}};
}

} // namespace lapwright::analysis
