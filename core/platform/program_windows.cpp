// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/program.h"

#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <io.h>

#define WIN32_LEAN_AND_MEAN
#include <windows.h>

#include <shellapi.h>

namespace lapwright::platform {
namespace {

std::string utf8(const wchar_t* text) {
    const auto bytes = std::filesystem::path(text).u8string();
    return {bytes.begin(), bytes.end()};
}

} // namespace

void prepare_large_heap() {}

void print_bytes_as_they_are() {
    _setmode(_fileno(stdout), _O_BINARY);
    _setmode(_fileno(stderr), _O_BINARY);
}

// What main() is given has lost the letters that the system's old code page does not know.
std::vector<std::string> words_of(int, char**) {
    int count = 0;
    wchar_t** const words = CommandLineToArgvW(GetCommandLineW(), &count);
    std::vector<std::string> all;
    for (int i = 1; i < count; ++i)
        all.push_back(utf8(words[i]));
    LocalFree(words);
    return all;
}

std::string variable(const char* name) {
    const std::wstring wide_name(name, name + std::strlen(name)); // plain letters
    const wchar_t* const value = _wgetenv(wide_name.c_str());
    return value == nullptr ? std::string() : utf8(value);
}

} // namespace lapwright::platform
