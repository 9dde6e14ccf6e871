// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/recipes.h"

#include "core/import/preview.h"
#include "core/import/recipe_file.h"

#include <filesystem>

namespace lapwright::commands {

base::Result<std::vector<import::KeptRecipe>> read_recipes(const std::vector<std::string>& files) {
    std::vector<import::KeptRecipe> recipes;
    for (const std::string& file : files) {
        auto recipe = import::read_recipe_file(file);
        if (!recipe) return recipe.error();
        recipes.push_back({file, std::move(recipe).value()});
    }
    return recipes;
}

base::Result<std::string> recipe_text_of(const std::string& file) {
    auto preview = import::preview_file(file);
    if (!preview) return preview.error();
    import::Recipe recipe = preview->recipe;
    if (recipe.title.empty()) recipe.title = std::filesystem::path(file).stem().string();
    return import::write_recipe(recipe);
}

} // namespace lapwright::commands
