// SPDX-License-Identifier: GPL-3.0-or-later
// The segment table, the causes matrix and one lap over distance as tables to be taken elsewhere: a column a figure,
// its unit in the heading, more digits than a person reads so that sums still hold.  Positive seconds favour A; what is
// absent is empty.
#pragma once

#include "core/base/display.h"
#include "core/causes/telling_order.h"
#include "core/comparison/comparison.h"
#include "core/lap/lap.h"
#include "core/sheet/csv.h"

#include <span>

namespace lapwright::sheet {

[[nodiscard]] Table segments_table(std::span<const comparison::SegmentComparison> segments, base::UnitSystem units);

// A row a lap of a session: number, kind, seconds with their standard deviation, clean or why not.
[[nodiscard]] Table laps_table(std::span<const lap::Lap> laps);

// A row a segment, then the whole lap and both ends of its 95 % interval.
[[nodiscard]] Table causes_table(const causes::Explanation& explanation);

// A row a grid point, a column a channel, all in SI units; channels under the names of their file.
[[nodiscard]] Table trace_table(const lap::LapTrace& trace);

} // namespace lapwright::sheet
