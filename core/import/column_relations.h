// SPDX-License-Identifier: GPL-3.0-or-later
// What columns say of each other: which one is the time where no name says so, which two are positions in a file
// without names, in which unit a speed must be to fit the positions, which of two speeds is the wheels'.
#pragma once

#include "core/import/column_guess.h"

#include <vector>

namespace lapwright::import {

void relate_columns(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples);

// The column that gives the stamps; nothing where there is none.
[[nodiscard]] std::optional<std::size_t> time_column(const std::vector<ColumnGuess>& guesses);

} // namespace lapwright::import
