// SPDX-License-Identifier: GPL-3.0-or-later
// A table's column by what it is taken for.
#pragma once

#include "core/import/columns/column_guess.h"
#include "core/import/tables/table_reader.h"

#include <vector>

namespace lapwright::import {

// The first with that role and meaning whose values were read; null where there is none.
[[nodiscard]] TableColumn* find_column(Table& table, const std::vector<ColumnGuess>& guesses, Role role,
                                       recording::Meaning meaning);

} // namespace lapwright::import
