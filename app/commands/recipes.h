// SPDX-License-Identifier: GPL-3.0-or-later
// Import recipes on the command line: read, and written.
#pragma once

#include "core/base/result.h"
#include "core/import/formats/recipe_folder.h"

#include <string>
#include <vector>

namespace lapwright::commands {

// The recipes of these files, of which each has to fit one of the sessions' files; behind them those that the person
// keeps for others of the sessions, as the window would read them.  Of each of these `notes` gets a line.
[[nodiscard]] base::Result<std::vector<import::KeptRecipe>>
recipes_for(const std::vector<std::string>& recipe_files, const std::vector<std::string>& sessions, std::string& notes);

// What the program takes this file's columns for, as a recipe to be corrected.
[[nodiscard]] base::Result<std::string> recipe_text_of(const std::string& file);

} // namespace lapwright::commands
