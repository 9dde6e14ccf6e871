// SPDX-License-Identifier: GPL-3.0-or-later
// Values of a table that no sensor measured, made absent and told: codes for "no value", positions off the globe or of
// exactly 0, 0, zeros that a receiver writes while it has no fix.  The table holds SI values, read as the guesses say.
#pragma once

#include "core/import/channels/time_axis.h"
#include "core/import/columns/column_guess.h"
#include "core/import/tables/table_reader.h"
#include "core/recording/recording.h"

#include <vector>

namespace lapwright::import {

// The first with that role and meaning whose values were read; null where there is none.
[[nodiscard]] TableColumn* find_column(Table& table, const std::vector<ColumnGuess>& guesses, Role role,
                                       recording::Meaning meaning);

[[nodiscard]] std::vector<recording::Warning> blank_codes(Table& table, const std::vector<ColumnGuess>& guesses);

// Gives latitudes and longitudes the sign of the letters beside them, and leaves out what cannot be a place.
[[nodiscard]] std::vector<recording::Warning> mend_positions(Table& table, const std::vector<ColumnGuess>& guesses);

// A speed that falls from fifty metres a second to nothing between two rows is none.  Makes such zeros of speeds, and
// of the course and the altitude beside them, absent, and tells how many rows.  The table holds SI values, positions
// not yet mended; `axis` is its rows' time.
[[nodiscard]] std::vector<recording::Warning>
blank_zeros_in_motion(Table& table, const std::vector<ColumnGuess>& guesses, const TimeAxis& axis);

} // namespace lapwright::import
