// SPDX-License-Identifier: GPL-3.0-or-later
// The folder in which a person's recipes are kept, a file each: one recipe for each shape of file, so that there is
// never a question which one is meant.
#pragma once

#include "core/base/result.h"
#include "core/import/columns/recipe.h"

#include <memory>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lapwright::import {

struct KeptRecipe {
    std::string file; // its path
    Recipe recipe;
};

struct KeptRecipes {
    std::vector<KeptRecipe> recipes;  // by title, then by file
    std::vector<base::Error> refused; // files of the folder that cannot be read as recipes
};

class RecipeFolder {
  public:
    // It need not exist; without a path nothing is kept.
    explicit RecipeFolder(std::string path) : path_(std::move(path)) {}

    [[nodiscard]] KeptRecipes list() const;
    // Takes the place of the recipe that was made for the same shape.  Error: file_not_writable.
    [[nodiscard]] base::Result<void> keep(const Recipe& recipe) const;
    // One that is not there is removed already.
    [[nodiscard]] base::Result<void> remove(const Recipe& recipe) const;
    // Words of the person's own, from the file vocabulary.txt
    // beside the recipes (vocabulary.h); null where it is absent.
    [[nodiscard]] base::Result<std::shared_ptr<const Vocabulary>> vocabulary() const;
    // The one that was made for the same shape.
    [[nodiscard]] std::optional<KeptRecipe> find(const Recipe& shape) const;

  private:
    std::string path_;
};

// Whether the two were made for the same kind of file.
[[nodiscard]] bool same_shape(const Recipe& one, const Recipe& other);

// The first recipe that was made for files of this shape; nothing where none was, or the file is no table.
[[nodiscard]] std::optional<Recipe> recipe_for(const std::string& file, std::span<const KeptRecipe> recipes);

} // namespace lapwright::import
