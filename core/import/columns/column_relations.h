// SPDX-License-Identifier: GPL-3.0-or-later
// What columns say of each other: which one is the time where no name says so, which two are positions in a file
// without names, in which unit a speed or a distance must be to fit, which of two speeds is the wheels', which of two
// columns of one meaning is it.
#pragma once

#include "core/import/columns/column_guess.h"

#include <vector>

namespace lapwright::import {

void relate_columns(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples,
                    bool has_names);

} // namespace lapwright::import
