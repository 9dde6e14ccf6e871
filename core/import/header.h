// SPDX-License-Identifier: GPL-3.0-or-later
// What stands before the rows of data: the line that names the columns, the one that gives their units, the facts.
#pragma once

#include "core/import/table_rows.h"

#include <vector>

namespace lapwright::import {

// Fills in names, units, header text, facts, and the width where the header knows it better; `data_row` is the index of
// the first row of data.  The layout's delimiter, style, encoding and columns are set.
void read_header(Layout& layout, const std::vector<HeadLine>& head, const std::vector<Row>& rows, std::size_t data_row);

// The same where a person or a recipe says which line names the columns (0: none does).
void read_named_header(Layout& layout, const std::vector<HeadLine>& head, const std::vector<Row>& rows,
                       std::size_t data_row, std::size_t header_line);

} // namespace lapwright::import
