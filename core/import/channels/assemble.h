// SPDX-License-Identifier: GPL-3.0-or-later
// Columns of a table and what they were taken for, to a Recording: stamps, channels, facts, and every doubt in words.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/import/columns/column_guess.h"
#include "core/import/columns/options.h"
#include "core/import/tables/table_reader.h"
#include "core/recording/recording.h"

namespace lapwright::import {

// How each column is to be read so that the table holds SI values.
[[nodiscard]] std::vector<ColumnPlan> plan_columns(const std::vector<ColumnGuess>& guesses);

[[nodiscard]] base::Result<recording::Recording> assemble(Table table, const Layout& layout,
                                                          const std::vector<ColumnGuess>& guesses,
                                                          const Options& options, const std::string& name,
                                                          const base::Progress& progress = {});

} // namespace lapwright::import
