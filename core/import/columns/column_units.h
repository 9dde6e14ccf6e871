// SPDX-License-Identifier: GPL-3.0-or-later
// The unit of a column whose file states none, by what its values
// can be.  Where two units are plausible the doubt is put in words.
#pragma once

#include "core/import/columns/column_guess.h"
#include "core/import/columns/column_values.h"

namespace lapwright::import {

// For a channel with a meaning: sets unit, form and scale, confidence, reason and doubt.
void guess_unit(ColumnGuess& guess, const ColumnValues& values);
// The same for a column of time; `step` is the median advance from row to row.
void guess_time_unit(ColumnGuess& guess, const ColumnValues& values, double step);
// Where a unit is written but the values speak against it, a doubt.
void doubt_written_unit(ColumnGuess& guess, const ColumnValues& values);

} // namespace lapwright::import
