// SPDX-License-Identifier: GPL-3.0-or-later
// Which column gives the stamps.  A name says it, or cells that are clocks and dates; a column without a name that only
// advances evenly may be a clock too, but a counter of rows is none, nor is what has another unit.  Of several clocks
// the one that tells most rows apart is taken.
#pragma once

#include "core/import/columns/column_guess.h"

#include <optional>
#include <vector>

namespace lapwright::import {

// Gives the best column the role of the time, and leaves less confidence to the others that have it.
void choose_time(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples);

// The column that gives the stamps; nothing where there is none.
[[nodiscard]] std::optional<std::size_t> time_column(const std::vector<ColumnGuess>& guesses);

} // namespace lapwright::import
