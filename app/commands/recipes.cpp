// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/recipes.h"

#include "core/import/preview.h"

#include <filesystem>
#include <fstream>
#include <sstream>

namespace lapwright::commands {
namespace {

// The shape stands in the head of a file.
constexpr std::size_t rows_for_the_shape = 50;

} // namespace

base::Result<std::vector<import::Recipe>> read_recipes(const std::vector<std::string>& files) {
    std::vector<import::Recipe> recipes;
    for (const std::string& file : files) {
        std::ifstream stream(file, std::ios::binary);
        if (!stream || std::filesystem::is_directory(file))
            return base::Error{base::ErrorCode::file_not_readable,
                               {file, {}, {}},
                               "the recipe cannot be opened",
                               "check the name and that it may be read"};
        std::ostringstream content;
        content << stream.rdbuf();
        auto recipe = import::read_recipe(content.str(), file);
        if (!recipe) return recipe.error();
        recipes.push_back(std::move(recipe).value());
    }
    return recipes;
}

std::optional<import::Recipe> recipe_for(const std::string& file, const std::vector<import::Recipe>& recipes) {
    for (const import::Recipe& recipe : recipes) {
        import::Options options;
        options.recipe = recipe;
        const auto preview = import::preview_file(file, options, rows_for_the_shape);
        if (preview && preview->recipe_fits) return recipe;
    }
    return std::nullopt;
}

base::Result<std::string> recipe_text_of(const std::string& file) {
    auto preview = import::preview_file(file);
    if (!preview) return preview.error();
    import::Recipe recipe = preview->recipe;
    if (recipe.title.empty()) recipe.title = std::filesystem::path(file).stem().string();
    return import::write_recipe(recipe);
}

} // namespace lapwright::commands
