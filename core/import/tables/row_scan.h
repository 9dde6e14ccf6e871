// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of one piece of a table into columns of numbers: common numbers by the fast scan, any other cell by the
// careful readers.  A piece begins and ends at a line's edge.
#pragma once

#include "core/import/tables/layout.h"
#include "core/import/tables/table_reader.h"

#include <span>
#include <string_view>
#include <vector>

namespace lapwright::import {

// What one piece held besides its values.
struct PieceTally {
    std::size_t rows = 0;
    std::vector<std::size_t> absent;              // a column
    std::vector<recording::LineTally> unreadable; // a column
    recording::LineTally wrong_width;
    recording::LineTally text_rows;
    recording::LineTally repeated_headers;
    recording::LineTally comments;
    // A quote near the end was not closed before it: behind the piece it may be.
    bool open_quote = false;
};

// Where the rows of a piece go: the first row's place in each column (null for a column that is not read), in the
// lines, and how many rows there is room for.
struct PieceTarget {
    std::vector<double*> columns;
    std::uint32_t* lines = nullptr;
    std::size_t room = 0;
};

// `first_line` is the number of the piece's first line.  Rows beyond the room are not written.
[[nodiscard]] PieceTally scan_rows(std::string_view piece, const Layout& layout, const std::vector<ColumnPlan>& plans,
                                   const PieceTarget& target, std::size_t first_line);

} // namespace lapwright::import
