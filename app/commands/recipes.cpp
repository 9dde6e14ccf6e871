// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/recipes.h"

#include "core/import/columns/recipe_file.h"
#include "core/import/formats/recipe_folder.h"
#include "core/workspace/own_files.h"
#include "core/workspace/reading.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <span>

namespace lapwright::commands {

namespace {

// What was asked for by name must not go unused in silence.
bool fits_one(const import::KeptRecipe& recipe, const std::vector<std::string>& sessions) {
    return std::ranges::any_of(sessions, [&](const std::string& file) {
        const bool unreadable = !std::ifstream(std::filesystem::path(file)); // which reading it will say
        return unreadable || import::recipe_for(file, std::span(&recipe, 1)).has_value();
    });
}

base::Result<std::vector<import::KeptRecipe>> named_recipes(const std::vector<std::string>& recipe_files,
                                                            const std::vector<std::string>& sessions) {
    std::vector<import::KeptRecipe> recipes;
    for (const std::string& file : recipe_files) {
        auto recipe = import::read_recipe_file(file);
        if (!recipe) return recipe.error();
        recipes.push_back({file, std::move(recipe).value()});
        if (!fits_one(recipes.back(), sessions))
            return base::Error{base::ErrorCode::recipe_not_readable,
                               {file, {}, {}},
                               "this recipe is for a table with other columns than those of the files that were given",
                               "make one that fits with lapwright recipe FILE"};
    }
    return recipes;
}

} // namespace

base::Result<std::vector<import::KeptRecipe>> recipes_for(const std::vector<std::string>& recipe_files,
                                                          const std::vector<std::string>& sessions,
                                                          std::string& notes) {
    auto named = named_recipes(recipe_files, sessions);
    if (!named) return named.error();
    std::vector<import::KeptRecipe> recipes = std::move(named).value();
    const auto kept = import::RecipeFolder(workspace::own_recipe_folder()).list().recipes;
    for (const std::string& session : kept.empty() ? std::vector<std::string>() : sessions) {
        if (import::recipe_for(session, std::span(recipes).first(recipe_files.size()))) continue;
        const auto fits = [&](const import::KeptRecipe& one) {
            return import::recipe_for(session, std::span(&one, 1)).has_value();
        };
        const auto found = std::ranges::find_if(kept, fits);
        if (found == kept.end()) continue;
        recipes.push_back(*found);
        notes += session + ": its columns are read as the recipe " + found->file + " says, which you kept\n";
    }
    return recipes;
}

base::Result<std::string> recipe_text_of(const std::string& file) {
    auto preview = workspace::preview_session(file, {}, {.words_folder = workspace::own_recipe_folder()});
    if (!preview) return preview.error();
    import::Recipe recipe = preview->recipe;
    if (recipe.title.empty()) recipe.title = std::filesystem::path(file).stem().string();
    return import::write_recipe(recipe);
}

} // namespace lapwright::commands
