// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/modules.h"

#include <filesystem>

#define WIN32_LEAN_AND_MEAN
#include <windows.h>

namespace lapwright::platform {

std::string program_path() {
    constexpr DWORD longest_path = 32767;
    std::wstring path(longest_path, L'\0');
    path.resize(GetModuleFileNameW(nullptr, path.data(), longest_path));
    const auto utf8 = std::filesystem::path(path).u8string();
    return {utf8.begin(), utf8.end()};
}

std::string module_name(const std::string& stem) {
    return stem + ".dll";
}

const void* module_variable(const std::string& module_path, const char* name) {
    const std::filesystem::path path(std::u8string(module_path.begin(), module_path.end()));
    const HMODULE module = LoadLibraryW(path.c_str());
    return module == nullptr ? nullptr : reinterpret_cast<const void*>(GetProcAddress(module, name));
}

} // namespace lapwright::platform
