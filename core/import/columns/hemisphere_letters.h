// SPDX-License-Identifier: GPL-3.0-or-later
// Which columns hold the letters that belong to positions, and what the letters mean.
//
// A longitude's letter O is east to a German or Dutch logger and west to a French, Spanish or Italian one.  A W or an E
// in the same column tells which, else the language of the columns' names; where neither does, the column is in doubt.
#pragma once

#include "core/import/columns/column_guess.h"

#include <vector>

namespace lapwright::import {

// A column of letters beside the numbers of a latitude or longitude belongs to it, whatever it is called: without it a
// place south or west would be mirrored.
void find_unnamed_letters(const Samples& samples, const std::vector<ColumnValues>& values,
                          std::vector<ColumnGuess>& guesses);

// Sets the form of the columns in which O stands, and their doubt.
void settle_letter_o(const Layout& layout, const Samples& samples, std::vector<ColumnGuess>& guesses);

} // namespace lapwright::import
