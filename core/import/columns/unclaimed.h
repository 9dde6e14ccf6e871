// SPDX-License-Identifier: GPL-3.0-or-later
// Columns whose names say nothing, beside a written unit that says what could be meant: where such a column does what
// the car did by its positions it is taken for that, and the person is told; where it may be that, the person is asked.
#pragma once

#include "core/import/columns/column_guess.h"
#include "core/import/columns/speed_check.h"

#include <string>
#include <vector>

namespace lapwright::import {

// What the car did at the sampled rows by the columns that are known: a number a row, NaN where it cannot be had, empty
// where nothing says it.
struct DrivenRows {
    std::vector<double> speed_mps; // by the positions
    Accelerations by_positions;
    std::vector<double> longitudinal_mps2; // by the positions, else by a speed
};

void take_unclaimed(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                    const DrivenRows& driven);

} // namespace lapwright::import
