// SPDX-License-Identifier: GPL-3.0-or-later
// Rows from a few places of a table, to judge its columns by: a
// session's first seconds alone would show a car that stands still.
#pragma once

#include "core/import/tables/layout.h"
#include "core/import/text/byte_source.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::import {

// As many cells as there are columns.
using SampleRow = std::vector<std::string>;

struct Samples {
    std::vector<SampleRow> rows;           // UTF-8 cells
    std::vector<std::size_t> block_starts; // rows between two of these stand one below the other in the file
};

// Fewer rows where the file cannot be read; reading it whole will say so.
[[nodiscard]] Samples take_samples(const ByteSource& source, const Layout& layout);

} // namespace lapwright::import
