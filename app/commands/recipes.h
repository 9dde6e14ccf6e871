// SPDX-License-Identifier: GPL-3.0-or-later
// Import recipes on the command line: read, fitted to the file that has their shape, written.
#pragma once

#include "core/base/result.h"
#include "core/import/recipe.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::commands {

[[nodiscard]] base::Result<std::vector<import::Recipe>> read_recipes(const std::vector<std::string>& files);

// The first recipe that was made for files of this shape.
[[nodiscard]] std::optional<import::Recipe> recipe_for(const std::string& file,
                                                       const std::vector<import::Recipe>& recipes);

// What the program takes this file's columns for, as a recipe to be corrected.
[[nodiscard]] base::Result<std::string> recipe_text_of(const std::string& file);

} // namespace lapwright::commands
