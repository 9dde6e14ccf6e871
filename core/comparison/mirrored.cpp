// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/mirrored.h"

#include <utility>

namespace lapwright::comparison {
namespace {

void negate(std::vector<double>& values) {
    for (double& value : values)
        value = -value;
}

void mirror(std::vector<double>& middle, std::vector<double>& low, std::vector<double>& high) {
    negate(middle);
    negate(low);
    negate(high);
    std::swap(low, high);
}

void mirror(std::optional<LineAt>& line) {
    if (line) line->difference_m = -line->difference_m;
}

void mirror(SegmentComparison& segment) {
    segment.gain_s.value = -segment.gain_s.value;
    std::swap(segment.a, segment.b);
    mirror(segment.line.turn_in);
    mirror(segment.line.slowest);
    mirror(segment.line.exit);
}

} // namespace

std::vector<SegmentComparison> mirrored(std::vector<SegmentComparison> segments) {
    for (SegmentComparison& segment : segments)
        mirror(segment);
    return segments;
}

Comparison mirrored(Comparison comparison) {
    mirror(comparison.gap.gap_s, comparison.gap.low_s, comparison.gap.high_s);
    comparison.gap_at_end_s.value = -comparison.gap_at_end_s.value;
    mirror(comparison.line.difference_m, comparison.line.low_m, comparison.line.high_m);
    comparison.segments = mirrored(std::move(comparison.segments));
    return comparison;
}

} // namespace lapwright::comparison
