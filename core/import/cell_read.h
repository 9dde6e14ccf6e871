// SPDX-License-Identifier: GPL-3.0-or-later
// One cell of a table: where it ends and what stands in it.
#pragma once

#include "core/import/cells.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace lapwright::import {

struct Cell {
    std::string_view text;     // trimmed; lies in the line, or in the scratch where quotes were doubled
    const char* end = nullptr; // the delimiter or line end behind it, or the end of the text
    std::size_t line_ends = 0; // inside quotes
};

// The cell that starts at `at`.  A quote opens a quoted cell only where it is closed again in front of a delimiter or a
// line end, within longest_cell_bytes; else it is an ordinary character.
[[nodiscard]] Cell next_cell(const char* at, const char* end, Delimiter delimiter, std::string& scratch);

} // namespace lapwright::import
