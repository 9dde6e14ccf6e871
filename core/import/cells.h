// SPDX-License-Identifier: GPL-3.0-or-later
// One line of a delimited table to its cells: RFC 4180 quotes, a quote that is never closed is an ordinary character.
// Cells are trimmed of blanks; a doubled quote inside quotes becomes one.
#pragma once

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

// At most most_columns + 1 cells come out.
[[nodiscard]] std::vector<std::string> split_cells(std::string_view line, Delimiter delimiter);

} // namespace lapwright::import
