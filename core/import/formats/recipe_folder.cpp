// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/formats/recipe_folder.h"

#include "core/base/translation.h"
#include "core/import/columns/recipe_file.h"
#include "core/import/formats/table_import.h"

#include <algorithm>
#include <cstdint>
#include <filesystem>
#include <new>
#include <system_error>
#include <tuple>

namespace lapwright::import {
namespace {

using base::said;

namespace fs = std::filesystem;

constexpr std::size_t max_recipes = 10'000;
constexpr std::size_t largest_vocabulary_bytes = std::size_t{1} << 20U;

// FNV-1a, 64 bits (Fowler, Noll, Vo; RFC 9923), constants from memory: the same shape has the same file name.
std::string shape_name(const Recipe& recipe) {
    std::uint64_t hash = 14695981039346656037U;
    const auto add = [&hash](std::string_view text) {
        for (const char c : text)
            hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211U;
    };
    add(recipe.delimiter.blanks ? "blanks" : std::string(1, recipe.delimiter.mark));
    for (const RecipeColumn& column : recipe.columns) {
        add(column.header);
        add(std::string_view("\0", 1));
    }
    static constexpr std::string_view digits = "0123456789abcdef";
    std::string name;
    for (int shift = 60; shift >= 0; shift -= 4)
        name += digits[(hash >> static_cast<unsigned>(shift)) & 15U];
    return name + ".json";
}

} // namespace

bool same_shape(const Recipe& one, const Recipe& other) {
    return one.delimiter == other.delimiter &&
           std::ranges::equal(one.columns, other.columns, {}, &RecipeColumn::header, &RecipeColumn::header);
}

KeptRecipes RecipeFolder::list() const {
    KeptRecipes kept;
    std::error_code problem;
    std::vector<std::string> files;
    for (fs::directory_iterator entry(path_, problem), end; !problem && entry != end; entry.increment(problem)) {
        if (entry->path().extension() == ".json" && files.size() < max_recipes) files.push_back(entry->path().string());
    }
    std::ranges::sort(files);
    for (const std::string& file : files) {
        if (auto recipe = read_recipe_file(file))
            kept.recipes.push_back({file, std::move(recipe).value()});
        else
            kept.refused.push_back(recipe.error());
    }
    std::ranges::sort(kept.recipes, {}, [](const KeptRecipe& k) { return std::tie(k.recipe.title, k.file); });
    return kept;
}

base::Result<std::shared_ptr<const Vocabulary>> RecipeFolder::vocabulary() const {
    const std::string file = (fs::path(path_) / "vocabulary.txt").string();
    std::error_code none;
    if (path_.empty() || !fs::exists(file, none)) return std::shared_ptr<const Vocabulary>();
    const auto source = ByteSource::open(file);
    if (!source) return source.error();
    std::string buffer;
    const auto text = source->piece(0, std::min(source->size(), largest_vocabulary_bytes), buffer);
    if (!text)
        return base::Error{
            base::ErrorCode::file_not_readable, {file, {}, {}}, said("it cannot be read"), said("check the disk")};
    auto known = with_words(built_in_vocabulary(), *text, file);
    if (!known) return known.error();
    return std::make_shared<const Vocabulary>(std::move(known).value());
}

std::optional<KeptRecipe> RecipeFolder::find(const Recipe& shape) const {
    for (KeptRecipe& kept : list().recipes)
        if (same_shape(kept.recipe, shape)) return std::move(kept);
    return std::nullopt;
}

base::Result<void> RecipeFolder::keep(const Recipe& recipe) const {
    const auto old = find(recipe);
    std::error_code problem;
    fs::create_directories(path_, problem); // what goes wrong is told by the writing
    return write_recipe_file(old ? old->file : (fs::path(path_) / shape_name(recipe)).string(), recipe);
}

base::Result<void> RecipeFolder::remove(const Recipe& recipe) const {
    const auto kept = find(recipe);
    if (!kept) return {};
    std::error_code problem;
    fs::remove(kept->file, problem);
    if (!problem) return {};
    return base::Error{base::ErrorCode::file_not_writable,
                       {kept->file, {}, {}},
                       said("the recipe cannot be removed"),
                       said("check your rights to its folder")};
}

std::optional<Recipe> recipe_for(const std::string& file, std::span<const KeptRecipe> recipes) {
    if (recipes.empty()) return std::nullopt;
    const auto bytes = ByteSource::open(file);
    if (!bytes) return std::nullopt;
    try {
        const auto source = open_text(*bytes, file);
        if (!source || source->kind != FileKind::table) return std::nullopt;
        for (const KeptRecipe& kept : recipes)
            if (has_shape_of(*source, kept.recipe)) return kept.recipe;
    } catch (const std::bad_alloc&) {
        return std::nullopt; // reading the file will say so
    }
    return std::nullopt;
}

} // namespace lapwright::import
