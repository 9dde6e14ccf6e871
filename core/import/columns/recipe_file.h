// SPDX-License-Identifier: GPL-3.0-or-later
// One import recipe in one file.
#pragma once

#include "core/base/result.h"
#include "core/import/columns/recipe.h"

#include <optional>
#include <string>

namespace lapwright::import {

// Errors: file_not_readable, file_too_large (a recipe has less than 4 MiB), recipe_not_readable.
[[nodiscard]] base::Result<Recipe> read_recipe_file(const std::string& path);

// The file appears whole or not at all; one that is there is replaced.  Error: file_not_writable.
[[nodiscard]] base::Result<void> write_recipe_file(const std::string& path, const Recipe& recipe);

} // namespace lapwright::import
