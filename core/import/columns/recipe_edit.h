// SPDX-License-Identifier: GPL-3.0-or-later
// What can be said of one column: which units measure it, in which forms its cells can be written, and what becomes of
// the rest when its use is changed.  A column that comes out of these can be written as a recipe and read back.
#pragma once

#include "core/base/display.h"
#include "core/import/columns/column_guess.h"
#include "core/import/columns/recipe.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lapwright::import {

// Not used, time, date, the two letters, then every meaning of a channel.
struct ColumnUse {
    Role role = Role::skip;
    recording::Meaning meaning = recording::Meaning::other;

    bool operator==(const ColumnUse&) const = default;
};

[[nodiscard]] const std::vector<ColumnUse>& all_uses();
// "not used", "time", "lateral acceleration", "a channel of its own".
[[nodiscard]] std::string words(const ColumnUse& use);
// "number", "hours:minutes:seconds".
[[nodiscard]] std::string words(CellForm form);
// The unit's symbol, or words where it has none: "no unit", "0 to 1".
[[nodiscard]] std::string unit_words(base::Unit unit);

[[nodiscard]] ColumnUse use_of(const RecipeColumn& column);
// The most usual one first; one entry where there is nothing to choose.
[[nodiscard]] std::vector<base::Unit> units_for(const RecipeColumn& column);
[[nodiscard]] std::vector<CellForm> forms_for(const ColumnUse& use);

// The column with another use.  Unit and form stay where they can; else they are the guess's where that has this use,
// else the most usual ones.
[[nodiscard]] RecipeColumn with_use(RecipeColumn column, const ColumnUse& use, const ColumnGuess& guess);
[[nodiscard]] RecipeColumn with_form(RecipeColumn column, CellForm form);

// Least and greatest of these SI values in the unit that shows the column's quantity: "0 … 212 km/h"; empty where
// there is no finite value.
[[nodiscard]] std::string range_words(std::span<const double> values, const RecipeColumn& column,
                                      base::UnitSystem system);

} // namespace lapwright::import
