// SPDX-License-Identifier: GPL-3.0-or-later
// What each column of a table is taken for, how sure that is and why.  The window's column dialog shows these; a recipe
// overrides them.
#pragma once

#include "core/base/units.h"
#include "core/import/column_names.h"
#include "core/import/dialect.h"
#include "core/recording/meaning.h"

#include <string>
#include <string_view>
#include <vector>

namespace lapwright::import {

// How the cells of a column are written.
enum class CellForm {
    number,
    clock,      // "10:20:03.4", "1:23.456": seconds
    moment,     // date and clock reading: seconds since 1970 UTC
    date,       // days as seconds since 1970 UTC
    angle,      // degrees with marks or letters: degrees
    hemisphere, // a letter: +1 or -1
    text,       // none of these: not read
};

struct ColumnGuess {
    std::string header; // the cell that names it, as written
    std::string name;   // without the unit
    std::string unit_text;
    Role role = Role::skip;
    recording::Meaning meaning = recording::Meaning::other;
    base::Unit unit = base::Unit::none;
    CellForm form = CellForm::number;
    double confidence = 0.0; // 0..1; below doubtful_below the program says so
    std::string reason;      // in words: "named \"Speed\", unit km/h as written"
    std::vector<std::string> first_values;
    bool from_satellites = false;
    bool unit_written = false; // the file says the unit, else it was guessed
    // Set where a second reading is plausible as well: a sentence that says which.
    std::string doubt;
};

inline constexpr double doubtful_below = 0.6;

// Some rows of the table, cells as text: rows of as many cells as there are columns.
using SampleRows = std::vector<std::vector<std::string>>;

[[nodiscard]] std::vector<ColumnGuess> guess_columns(const Layout& layout, const SampleRows& rows);

} // namespace lapwright::import
