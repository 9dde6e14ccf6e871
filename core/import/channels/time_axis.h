// SPDX-License-Identifier: GPL-3.0-or-later
// The stamps of a table's rows: seconds since its first usable row, strictly increasing.  Midnight, repeated stamps,
// rows out of order and jumps of the clock are mended where the mending is certain, and told.
#pragma once

#include "core/recording/recording.h"

#include <cstdint>
#include <span>
#include <vector>

namespace lapwright::import {

enum class ClockKind {
    elapsed,
    time_of_day, // starts again at midnight
};

struct TimeAxis {
    std::vector<double> time_s;
    // The rows that have a stamp, ascending; empty where all have one.
    std::vector<std::uint32_t> rows;
    std::vector<double> splits_s;
    double first_reading_s = 0.0; // the clock's reading at time 0
    std::vector<recording::Warning> warnings;
};

// One reading a row, NaN where there is none; `lines` the rows' lines in the file, as many.  `lap_numbers`, as many or
// none, tell a clock that starts again with each lap from one that was set back.
[[nodiscard]] TimeAxis make_time_axis(std::span<const double> reading_s, std::span<const std::uint32_t> lines,
                                      ClockKind kind, std::span<const double> lap_numbers = {});

} // namespace lapwright::import
