// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/another_track.h"

#include "core/base/check.h"
#include "core/base/parallel.h"
#include "core/math/random.h"

namespace lapwright::causes {
namespace {

// The places in `segments` of those of one kind; of all where there is none.
std::vector<std::size_t> places_of(track::SegmentKind kind, const std::vector<track::Segment>& segments) {
    std::vector<std::size_t> places;
    std::vector<std::size_t> all;
    for (std::size_t k = 0; k < segments.size(); ++k) {
        all.push_back(k);
        if (segments[k].kind == kind) places.push_back(k);
    }
    return places.empty() ? all : places;
}

} // namespace

CarModel on_another_track(const CarModel& model, const std::vector<track::Segment>& segments,
                          const TrackCourse& there) {
    base::check(!segments.empty() && there.segments.size() == there.course.segments(), "a course has its segments");
    CarModel moved = model;
    moved.course = there.course;
    const std::vector<std::size_t> corners = places_of(track::SegmentKind::corner, segments);
    const std::vector<std::size_t> straights = places_of(track::SegmentKind::straight, segments);
    base::parallel_for(model.draws.size(), 0, [&](std::size_t i) {
        math::Random random(i + 1, 63);
        const car::DriverUse& here = model.uses[i];
        car::DriverUse& use = moved.uses[i];
        use = {};
        for (const track::Segment& segment : there.segments) {
            const auto& alike = segment.kind == track::SegmentKind::corner ? corners : straights;
            const std::size_t as_in = alike[random.below(alike.size())];
            use.grip.push_back(here.grip[as_in]);
            use.drive.push_back(here.drive[as_in]);
        }
        moved.segment_s[i] = car::simulate_lap(model.draws[i], moved.course, use).segment_time_s;
    });
    return moved;
}

} // namespace lapwright::causes
