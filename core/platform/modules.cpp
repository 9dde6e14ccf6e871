// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/modules.h"

#include <filesystem>
#include <system_error>

namespace lapwright::platform {
namespace {

namespace fs = std::filesystem;

// lib/lapwright/modules in the folder of the program, or beside it, as installed, or a little further up, as built.
fs::path own_module_path(const std::string& stem) {
    constexpr int levels = 5;
    std::error_code none;
    fs::path folder = fs::path(program_path()).parent_path();
    for (int level = 0; level < levels && folder.has_relative_path(); ++level) {
        fs::path module = folder / "lib" / "lapwright" / "modules" / module_name(stem);
        if (fs::exists(module, none)) return module;
        folder = folder.parent_path();
    }
    return {};
}

} // namespace

const void* own_module_variable(const std::string& stem, const char* name) {
    const fs::path path = own_module_path(stem);
    return path.empty() ? nullptr : module_variable(path.string(), name);
}

} // namespace lapwright::platform
