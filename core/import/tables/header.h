// SPDX-License-Identifier: GPL-3.0-or-later
// What stands before the rows of data: the line that names the columns, the one that gives their units, the facts.
#pragma once

#include "core/import/tables/layout.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::import {

// The first lines as rows of cells, as one guess at the delimiter parts them.
struct Row {
    std::size_t line = 0;           // index into the head's lines
    std::vector<std::string> cells; // UTF-8
    std::size_t filled = 0;
    std::size_t data = 0; // filled cells that look like data

    // More than half of the filled cells look like data.
    [[nodiscard]] bool is_data() const { return data > 0 && 2 * data > filled; }
};

// Fills in names, units, header text, facts, and the width where the header knows it better; `data_row` is the index of
// the first row of data.  The layout's delimiter, style, encoding and columns are set.
void read_header(Layout& layout, const std::vector<HeadLine>& head, const std::vector<Row>& rows, std::size_t data_row);

// The same where a person or a recipe says which line names the columns (0: none does).
void read_named_header(Layout& layout, const std::vector<HeadLine>& head, const std::vector<Row>& rows,
                       std::size_t data_row, std::size_t header_line);

} // namespace lapwright::import
