// SPDX-License-Identifier: GPL-3.0-or-later
// Latitudes and longitudes of a table, in radians, made fit for use: signs from hemisphere letters, longitudes of
// 0..360° brought to ±180°, and positions that are none (beyond the poles, exactly 0, 0, one of the two missing) made
// absent.
#pragma once

#include "core/import/columns/column_guess.h"
#include "core/import/tables/table_reader.h"
#include "core/recording/recording.h"

#include <vector>

namespace lapwright::import {

[[nodiscard]] std::vector<recording::Warning> mend_positions(Table& table, const std::vector<ColumnGuess>& guesses);

} // namespace lapwright::import
