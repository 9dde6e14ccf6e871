// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/summed_segments.h"

#include "core/comparison/compare_laps.h"

namespace lapwright::comparison {
namespace {

SegmentFigures joined(const SegmentFigures& corner, const SegmentFigures& straight, const SegmentFigures& whole) {
    SegmentFigures figures = corner;
    figures.time_s = whole.time_s;
    figures.exit_speed_mps = whole.exit_speed_mps;
    figures.top_speed_mps = straight.top_speed_mps;
    figures.top_speed_at_m = straight.top_speed_at_m;
    figures.driven_length_m = whole.driven_length_m;
    figures.shifts = whole.shifts;
    figures.shift_cost_s = whole.shift_cost_s;
    return figures;
}

} // namespace

std::vector<track::Segment> corners_with_their_straights(const std::vector<track::Segment>& segments) {
    std::vector<track::Segment> summed;
    bool open = false; // the last one is a corner that has no straight yet
    for (const track::Segment& segment : segments) {
        const bool corner = segment.kind == track::SegmentKind::corner;
        if (open && !corner) {
            summed.back().end_m = segment.end_m;
            summed.back().name += " + " + segment.name;
        } else {
            summed.push_back(segment);
        }
        open = corner;
    }
    return summed;
}

std::vector<SegmentComparison> summed_with_straights(const Comparison& comparison, const lap::LapEnsemble& a,
                                                     const lap::LapEnsemble& b) {
    std::vector<track::Segment> segments;
    for (const SegmentComparison& one : comparison.segments)
        segments.push_back(one.segment);
    std::vector<SegmentComparison> summed = compare_laps(a, b, corners_with_their_straights(segments)).segments;
    std::size_t own = 0; // the first of the segments in this stretch
    for (SegmentComparison& stretch : summed) {
        const SegmentComparison& first = comparison.segments[own++];
        if (first.segment.end_m == stretch.segment.end_m) {
            stretch = first;
            continue;
        }
        const SegmentComparison& straight = comparison.segments[own++];
        stretch.a = joined(first.a, straight.a, stretch.a);
        stretch.b = joined(first.b, straight.b, stretch.b);
        stretch.line = first.line;
    }
    return summed;
}

} // namespace lapwright::comparison
