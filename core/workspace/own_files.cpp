// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/own_files.h"

#include "core/book/book.h"
#include "core/platform/program.h"

#include <filesystem>

namespace lapwright::workspace {
namespace {

// Empty where there is none.
std::filesystem::path data_folder() {
    const auto variable = [](const char* name) { return std::filesystem::path(platform::variable(name)); };
    std::filesystem::path data = variable("XDG_DATA_HOME");
    if (!data.is_absolute()) data = variable("HOME").empty() ? "" : variable("HOME") / ".local/share";
    if (!data.is_absolute()) data = variable("LOCALAPPDATA"); // of Windows
    return data.is_absolute() ? data : std::filesystem::path();
}

} // namespace

base::Result<std::string> own_book() {
    const auto data = data_folder();
    if (data.empty())
        return base::Error{
            base::ErrorCode::book_not_usable, {}, "there is no home folder to keep a book in", "name one with --book"};
    return (data / book::usual_file).string();
}

std::string own_recipe_folder() {
    const auto data = data_folder();
    return data.empty() ? std::string() : (data / "lapwright/recipes").string();
}

} // namespace lapwright::workspace
