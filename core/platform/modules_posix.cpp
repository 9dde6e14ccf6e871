// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/modules.h"

#include <dlfcn.h>
#include <filesystem>
#include <system_error>

namespace lapwright::platform {

// Where there is no such link (it is Linux's) the path stays empty.
std::string program_path() {
    std::error_code none;
    return std::filesystem::read_symlink("/proc/self/exe", none).string();
}

std::string module_name(const std::string& stem) {
    return stem + ".so";
}

const void* module_variable(const std::string& module_path, const char* name) {
    void* const module = dlopen(module_path.c_str(), RTLD_NOW | RTLD_LOCAL);
    return module == nullptr ? nullptr : dlsym(module, name);
}

} // namespace lapwright::platform
