// SPDX-License-Identifier: GPL-3.0-or-later
// Speeds, positions, distance and time held against each other where rows stand beside each other: in which unit each
// must be so that they agree.
#pragma once

#include "core/import/columns/column_guess.h"

#include <vector>

namespace lapwright::import {

void relate_speeds(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples);

} // namespace lapwright::import
