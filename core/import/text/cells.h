// SPDX-License-Identifier: GPL-3.0-or-later
// A line of a delimited table to its cells: RFC 4180 quotes, a quote that is never closed is an ordinary character.
// Cells are trimmed of blanks; a doubled quote inside quotes becomes one, ="text" is text.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::import {

// How the cells of a row stand apart.  `blanks` means any run of spaces and tabs.
struct Delimiter {
    char mark = ',';
    bool blanks = false;

    bool operator==(const Delimiter&) const = default;
};

[[nodiscard]] std::string_view trimmed(std::string_view text);

struct Cell {
    std::string_view text;     // trimmed; lies in the line, or in the scratch where quotes were doubled
    const char* end = nullptr; // the delimiter or line end behind it, or the end of the text
    std::size_t line_ends = 0; // inside quotes
};

// The cell that starts at `at`.  A quote opens a quoted cell only where it is closed again in front of a delimiter or a
// line end, within longest_cell_bytes; else it is an ordinary character.
[[nodiscard]] Cell next_cell(const char* at, const char* end, Delimiter delimiter, std::string& scratch);

// All cells of one line, at most max_columns + 1.
[[nodiscard]] std::vector<std::string> split_cells(std::string_view line, Delimiter delimiter);

} // namespace lapwright::import
