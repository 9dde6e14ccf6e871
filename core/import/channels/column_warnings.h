// SPDX-License-Identifier: GPL-3.0-or-later
// What was guessed of columns, as warnings.
#pragma once

#include "core/import/columns/column_guess.h"
#include "core/recording/recording.h"

#include <vector>

namespace lapwright::import {

// Doubts of columns, units that are not known, and units that were told from the values.
void tell_doubts(recording::Recording& recording, const std::vector<ColumnGuess>& guesses);

} // namespace lapwright::import
