// SPDX-License-Identifier: GPL-3.0-or-later
// Zeros that a receiver writes while it has no fix, beside a position of 0, 0, a blank one or a held one: a speed that
// falls from fifty metres a second to nothing between two rows is none.
#pragma once

#include "core/import/channels/time_axis.h"
#include "core/import/columns/column_guess.h"
#include "core/import/tables/table_reader.h"
#include "core/recording/recording.h"

#include <vector>

namespace lapwright::import {

// Makes such zeros of speeds, and of the course and the altitude beside them, absent, and tells how many rows.  The
// table holds SI values, positions not yet mended; `axis` is its rows' time.
[[nodiscard]] std::vector<recording::Warning>
blank_zeros_in_motion(Table& table, const std::vector<ColumnGuess>& guesses, const TimeAxis& axis);

} // namespace lapwright::import
