// SPDX-License-Identifier: GPL-3.0-or-later
// Rows of the view `summary` as values.
#pragma once

#include "core/book/database.h"
#include "core/book/entries.h"

#include <string>

namespace lapwright::book {

// The columns that summary_of() takes from the front of a row, in order.
inline constexpr const char* const summary_columns =
    "summary.id, summary.checksum, summary.file_name, summary.size_bytes, driver, car, track, summary.tyre, "
    "summary.conditions, summary.start_unix_s, summary.duration_s, laps, clean_laps, best_clean_s, notes";
inline constexpr int summary_width = 15;

[[nodiscard]] SessionSummary summary_of(const Rows& rows);

} // namespace lapwright::book
