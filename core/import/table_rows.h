// SPDX-License-Identifier: GPL-3.0-or-later
// The first lines of a text as rows of cells, as one guess at the delimiter parts them: what the search for the layout
// works on.
#pragma once

#include "core/import/cells.h"
#include "core/import/dialect.h"

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::import {

struct Row {
    std::size_t line = 0;           // index into the head's lines
    std::vector<std::string> cells; // UTF-8
    std::size_t filled = 0;
    std::size_t data = 0; // filled cells that look like data

    // More than half of the filled cells look like data.
    [[nodiscard]] bool is_data() const { return data > 0 && 2 * data > filled; }
};

// "# …", "// …", "% …"
[[nodiscard]] bool is_comment(std::string_view line);

} // namespace lapwright::import
