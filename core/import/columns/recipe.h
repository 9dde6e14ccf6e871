// SPDX-License-Identifier: GPL-3.0-or-later
// An import recipe: what a person said a kind of file means, kept to fit again by the file's shape (delimiter and names
// of columns).  It is a JSON document that can be listed, edited, exported and shared:
//
//   {"recipe": 1, "title": "my dash logger", "delimiter": ",", "decimal_mark": ".", "row_rate_hz": 100,
//    "columns": [{"header": "Spd", "use": "channel", "meaning": "speed", "unit": "km/h", "form": "number"},
//                {"header": "T", "use": "time", "unit": "s", "form": "number"}, {"header": "Junk", "use": "skip"}]}
//
// "use" is channel, time, date, north_south, east_west or skip; "meaning" as recording::name() has it; "unit" a symbol
// of core/base or empty; "form" as import::name(CellForm) has it; "scale" (default 1) is multiplied before the unit.
#pragma once

#include "core/base/result.h"
#include "core/import/columns/column_guess.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::import {

struct RecipeColumn {
    std::string header; // the cell that names the column, as written
    Role role = Role::channel;
    recording::Meaning meaning = recording::Meaning::other;
    base::Unit unit = base::Unit::none;
    CellForm form = CellForm::number;
    double scale = 1.0;

    bool operator==(const RecipeColumn&) const = default;
};

struct Recipe {
    std::string title;
    Delimiter delimiter;
    char decimal_mark = '.';
    std::optional<double> row_rate_hz; // 0.1..10,000
    std::vector<RecipeColumn> columns; // in the order of the file

    bool operator==(const Recipe&) const = default;
};

// "the recipe "my dash logger"", or "a recipe without a title".
[[nodiscard]] std::string words(const Recipe& recipe);

// JSON, indented, with a line end.
[[nodiscard]] std::string write_recipe(const Recipe& recipe);
// `name` stands for the file in errors (recipe_not_readable).
[[nodiscard]] base::Result<Recipe> read_recipe(std::string_view json, const std::string& name);

// The recipe that says what was guessed: what a person then corrects.
[[nodiscard]] Recipe make_recipe(std::string title, const Layout& layout, const std::vector<ColumnGuess>& guesses);

// Whether a file of this layout has the shape that the recipe
// was made for: same delimiter, same names in the same order.
[[nodiscard]] bool fits(const Recipe& recipe, const Layout& layout);

// What the recipe says in place of the guesses, column by column of the same header; a column that it does not name
// keeps its guess.
void apply(const Recipe& recipe, Layout& layout, std::vector<ColumnGuess>& guesses);

} // namespace lapwright::import
