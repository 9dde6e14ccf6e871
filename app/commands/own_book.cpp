// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/commands/own_book.h"

#include "core/book/book.h"

#include <cstdlib>
#include <filesystem>

namespace lapwright::commands {

base::Result<std::string> own_book() {
    const auto variable = [](const char* name) {
        const char* const value = std::getenv(name);
        return std::filesystem::path(value ? value : "");
    };
    std::filesystem::path data = variable("XDG_DATA_HOME");
    if (!data.is_absolute()) data = variable("HOME").empty() ? "" : variable("HOME") / ".local/share";
    if (!data.is_absolute())
        return base::Error{
            base::ErrorCode::book_not_usable, {}, "there is no home folder to keep a book in", "name one with --book"};
    return (data / book::usual_file).string();
}

} // namespace lapwright::commands
