// SPDX-License-Identifier: GPL-3.0-or-later
// The rows of a delimited table straight into columns of numbers.  A damaged row costs that row, an unreadable cell
// that cell; both are counted, with their lines.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/import/tables/cell_form.h"
#include "core/import/tables/layout.h"
#include "core/import/text/byte_source.h"
#include "core/recording/warning.h"

#include <cstdint>
#include <vector>

namespace lapwright::import {

// How the cells of one column are read, and what makes SI values of them: value * factor + offset.
struct ColumnPlan {
    CellForm form = CellForm::text; // text: not read
    double factor = 1.0;
    double offset = 0.0;
};

struct TableColumn {
    std::vector<double> values; // one a row, NaN where absent; empty for a column that is not read
    std::size_t absent = 0;
    recording::LineTally unreadable; // cells that are neither a value nor a word for its absence
};

struct Table {
    std::vector<TableColumn> columns;
    std::vector<std::uint32_t> lines; // of each row
    recording::LineTally wrong_width; // rows with too few or too many cells
    recording::LineTally text_rows;   // rows without a single value
    recording::LineTally repeated_headers;
    recording::LineTally comments;
};

// The source is UTF-8 or of a single-byte encoding; `plans` has one entry a column of the layout.
[[nodiscard]] base::Result<Table> read_table(const ByteSource& source, const Layout& layout,
                                             const std::vector<ColumnPlan>& plans, unsigned threads,
                                             const base::Progress& progress);

} // namespace lapwright::import
