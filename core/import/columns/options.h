// SPDX-License-Identifier: GPL-3.0-or-later
// What a person says of a file before it is read, and how many threads may read it.
#pragma once

#include "core/import/columns/recipe.h"

#include <memory>
#include <optional>

namespace lapwright::import {

struct Options {
    // Rows that have no time of their own follow each other at this rate, 0.1..10,000 Hz.
    std::optional<double> row_rate_hz;
    // What a person said of files of this shape; columns that it does not name keep the program's guess.
    std::optional<Recipe> recipe;
    // What a person says of the layout while a recipe is being made; the recipe knows it again by the names.
    LayoutChoice layout;
    // Names of columns and units of the person's own (RecipeFolder::vocabulary); null: those that are built in.
    std::shared_ptr<const Vocabulary> vocabulary;
    // Worker threads, 0: as many as the machine has cores.
    unsigned threads = 0;
};

} // namespace lapwright::import
