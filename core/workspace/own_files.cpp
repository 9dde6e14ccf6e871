// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/workspace/own_files.h"

#include "core/book/book.h"
#include "core/platform/program.h"

#include <filesystem>

namespace lapwright::workspace {
namespace {

// Empty where there is none.
std::filesystem::path folder_of(const char* named_by, const char* in_home) {
    const auto variable = [](const char* name) { return std::filesystem::path(platform::variable(name)); };
    std::filesystem::path folder = variable(named_by);
    if (!folder.is_absolute()) folder = variable("HOME").empty() ? "" : variable("HOME") / in_home;
    if (!folder.is_absolute()) folder = variable("LOCALAPPDATA"); // of Windows
    return folder.is_absolute() ? folder : std::filesystem::path();
}

std::filesystem::path data_folder() {
    return folder_of("XDG_DATA_HOME", ".local/share");
}

} // namespace

base::Result<std::string> own_book() {
    const auto data = data_folder();
    if (data.empty())
        return base::Error{
            base::ErrorCode::book_not_usable, {}, "there is no home folder to keep a book in", "name one with --book"};
    return (data / book::usual_file).string();
}

base::Result<std::string> book_file(const std::string& named) {
    return named.empty() ? own_book() : base::Result<std::string>(named);
}

std::string own_recipe_folder() {
    const auto data = data_folder();
    return data.empty() ? std::string() : (data / "lapwright/recipes").string();
}

std::string own_state_folder() {
    const auto state = folder_of("XDG_STATE_HOME", ".local/state");
    return state.empty() ? std::string() : (state / "lapwright").string();
}

} // namespace lapwright::workspace
