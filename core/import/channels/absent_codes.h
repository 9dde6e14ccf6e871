// SPDX-License-Identifier: GPL-3.0-or-later
// Codes for "no value" taken out of a table's columns, and told.
#pragma once

#include "core/import/columns/column_guess.h"
#include "core/import/tables/table_reader.h"
#include "core/recording/recording.h"

#include <vector>

namespace lapwright::import {

// The table holds SI values, read as the guesses say.
[[nodiscard]] std::vector<recording::Warning> blank_codes(Table& table, const std::vector<ColumnGuess>& guesses);

} // namespace lapwright::import
