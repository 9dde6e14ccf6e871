// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/setup_beside.h"

#include <filesystem>
#include <system_error>

namespace lapwright::car {

std::string setup_path_beside(const std::string& session_file) {
    return std::filesystem::path(session_file).replace_extension(".setup.json").string();
}

base::Result<std::optional<SetupSheet>> setup_beside(const std::string& session_file) {
    const std::string path = setup_path_beside(session_file);
    std::error_code unknown;
    if (!std::filesystem::exists(path, unknown)) return std::optional<SetupSheet>();
    auto sheet = read_setup_sheet(path);
    if (!sheet) return sheet.error();
    return std::optional(std::move(sheet).value());
}

} // namespace lapwright::car
