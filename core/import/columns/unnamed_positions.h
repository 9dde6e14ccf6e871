// SPDX-License-Identifier: GPL-3.0-or-later
// Positions that no name tells: two columns side by side that move like a vehicle on the globe, in a file that names
// nothing; "X" and "Y" in degrees.
#pragma once

#include "core/import/columns/column_guess.h"

#include <vector>

namespace lapwright::import {

void find_unnamed_positions(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                            const Samples& samples, bool has_names);

// East and north without a written unit that never leave half a unit, with five decimals and more, are degrees.
void settle_degrees(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values);

} // namespace lapwright::import
