// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/recipe_file.h"

#include "core/import/byte_source.h"

#include <filesystem>
#include <fstream>
#include <system_error>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;

constexpr std::size_t largest_recipe_bytes = std::size_t{4} << 20U;

} // namespace

base::Result<Recipe> read_recipe_file(const std::string& path) {
    const auto source = ByteSource::open(path);
    if (!source)
        return Error{ErrorCode::file_not_readable,
                     {path, {}, {}},
                     "the recipe cannot be opened",
                     "check the name and that it may be read"};
    if (source->size() > largest_recipe_bytes)
        return Error{ErrorCode::file_too_large, {path, {}, {}}, "this is too large to be a recipe", "name a recipe"};
    std::string buffer;
    const auto text = source->piece(0, source->size(), buffer);
    if (!text)
        return Error{ErrorCode::file_not_readable, {path, {}, {}}, "the recipe cannot be read", "check the disk"};
    return read_recipe(*text, path);
}

std::optional<Error> write_recipe_file(const std::string& path, const Recipe& recipe) {
    const std::string partial = path + ".part";
    std::error_code problem;
    {
        std::ofstream stream(partial, std::ios::binary | std::ios::trunc);
        stream << write_recipe(recipe) << std::flush;
        if (!stream) problem = std::make_error_code(std::errc::io_error);
    }
    if (!problem) std::filesystem::rename(partial, path, problem);
    if (!problem) return std::nullopt;
    std::error_code ignored;
    std::filesystem::remove(partial, ignored);
    return Error{ErrorCode::file_not_writable,
                 {path, {}, {}},
                 "the recipe cannot be written",
                 "check the folder, your rights to it and the room on the disk"};
}

} // namespace lapwright::import
