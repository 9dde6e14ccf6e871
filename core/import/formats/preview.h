// SPDX-License-Identifier: GPL-3.0-or-later
// What the column dialog shows of a table before it is imported: each column's guess with its reason, its first rows as
// numbers for a small plot, and the recording that these rows would make.  Call it again with an edited recipe for a
// live preview; it reads no more than the first rows.
#pragma once

#include "core/base/result.h"
#include "core/import/columns/recipe.h"
#include "core/import/formats/import.h"

#include <string>
#include <vector>

namespace lapwright::import {

struct PreviewColumn {
    ColumnGuess guess;
    std::vector<double> values; // of the first rows in SI as the guess reads them, NaN where absent; empty for text
};

struct Preview {
    Layout layout;
    std::vector<PreviewColumn> columns;
    Recipe recipe;            // what the columns were taken for: edit it and ask again
    std::size_t rows = 0;     // that were read
    bool recipe_fits = false; // the given recipe was made for this shape
    // Of the first rows; nothing where they do not make one, and then the sentence says why.
    std::optional<recording::Recording> recording;
    std::string problem;
};

inline constexpr std::size_t previewed_rows = 2000;

// Errors as import_file has them; GPX and NMEA have no columns to choose: not_a_table.
[[nodiscard]] base::Result<Preview> preview_file(const std::string& path, const Options& options = {},
                                                 std::size_t rows = previewed_rows);
[[nodiscard]] base::Result<Preview> preview_bytes(std::string_view bytes, const std::string& name,
                                                  const Options& options = {}, std::size_t rows = previewed_rows);

} // namespace lapwright::import
