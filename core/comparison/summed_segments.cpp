// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/summed_segments.h"

namespace lapwright::comparison {

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

} // namespace lapwright::comparison
