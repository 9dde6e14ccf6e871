// SPDX-License-Identifier: GPL-3.0-or-later
// What each column of a table is taken for, how sure that is and why.  The window's column dialog shows these; a recipe
// overrides them.
#pragma once

#include "core/base/units.h"
#include "core/import/columns/column_values.h"
#include "core/import/tables/layout.h"
#include "core/import/vocabulary/column_names.h"
#include "core/recording/column_doubt.h"
#include "core/recording/meaning.h"

#include <string>
#include <string_view>
#include <vector>

namespace lapwright::import {

struct ColumnGuess {
    std::string header; // the cell that names it, as written
    std::string name;   // without the unit
    std::string unit_text;
    Role role = Role::skip;
    recording::Meaning meaning = recording::Meaning::other;
    base::Unit unit = base::Unit::none;
    double scale = 1.0; // before the unit: 1e-7 for whole ten-millionths of a degree, -1 where west is positive
    CellForm form = CellForm::number;
    double confidence = 0.0; // 0..1; below doubtful_below the program says so
    std::string reason;      // in words: "named \"Speed\", unit km/h as written"
    std::vector<std::string> first_values;
    bool from_satellites = false;
    bool unit_written = false; // the file says the unit, else it was guessed
    bool settled = false;      // a person has said what it is: no doubt is told
    // Set where a second reading is plausible as well, or the cells cannot be what the name says.
    recording::ColumnDoubt doubt;
};

inline constexpr double doubtful_below = 0.6;

// Whether the program asks: a second reading is plausible, or the name does not say for sure what is read.
[[nodiscard]] bool is_doubtful(const ColumnGuess& guess);

[[nodiscard]] std::vector<ColumnGuess> guess_columns(const Layout& layout, const Samples& samples);

} // namespace lapwright::import
