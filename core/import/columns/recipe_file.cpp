// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/recipe_file.h"

#include "core/base/translation.h"
#include "core/base/whole_file.h"
#include "core/import/text/byte_source.h"

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;

constexpr std::size_t largest_recipe_bytes = std::size_t{4} << 20U;

} // namespace

base::Result<Recipe> read_recipe_file(const std::string& path) {
    const auto source = ByteSource::open(path);
    if (!source)
        return Error{ErrorCode::file_not_readable,
                     {path, {}, {}},
                     said("the recipe cannot be opened"),
                     said("check the name and that it may be read")};
    if (source->size() > largest_recipe_bytes)
        return Error{
            ErrorCode::file_too_large, {path, {}, {}}, said("this is too large to be a recipe"), said("name a recipe")};
    std::string buffer;
    const auto text = source->piece(0, source->size(), buffer);
    if (!text)
        return Error{
            ErrorCode::file_not_readable, {path, {}, {}}, said("the recipe cannot be read"), said("check the disk")};
    return read_recipe(*text, path);
}

base::Result<void> write_recipe_file(const std::string& path, const Recipe& recipe) {
    return base::write_whole_file(path, write_recipe(recipe), said("the recipe"));
    return {};
}

} // namespace lapwright::import
