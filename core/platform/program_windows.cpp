// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/program.h"

#include <algorithm>
#include <cstdint>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <cwchar>
#include <fcntl.h>
#include <filesystem>
#include <io.h>

#define WIN32_LEAN_AND_MEAN
#include <windows.h>

#include <shellapi.h>

// The system's C library reads and writes narrow text in an old code page, and std::filesystem::path asks it for every
// name.  The program's text is UTF-8: these take the place of its conversions in the program (they are linked in, so
// the linker meets them first).  Beyond the basic plane a character is two units of UTF-16: the first three bytes give
// the one, the last byte the other.  Ill-formed text is refused.
namespace {

constexpr std::size_t ill_formed = static_cast<std::size_t>(-1);
constexpr std::size_t too_short = static_cast<std::size_t>(-2);

std::size_t sequence_length(unsigned char first) {
    if (first < 0x80U) return 1;
    if (first >= 0xC2U && first < 0xE0U) return 2;
    if (first >= 0xE0U && first < 0xF0U) return 3;
    return first >= 0xF0U && first < 0xF5U ? 4 : 0;
}

// The state holds what is still owed: a low surrogate when reading, a high one when writing.
unsigned int& owed(std::mbstate_t* state) {
    static thread_local std::mbstate_t own{};
    return *reinterpret_cast<unsigned int*>(state == nullptr ? &own : state);
}

int longest_character() {
    return 4;
}

} // namespace

extern "C" {

std::size_t mbrtowc(wchar_t* wide, const char* text, std::size_t count, std::mbstate_t* state) {
    unsigned int& low = owed(state);
    if (text == nullptr) return low = 0;
    if (count == 0) return too_short;
    if (low != 0) {
        if (wide != nullptr) *wide = static_cast<wchar_t>(low);
        low = 0;
        return 1;
    }
    const auto byte = [text](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const std::size_t length = sequence_length(byte(0));
    if (length == 0) return ill_formed;
    if (count < length) return too_short;
    std::uint32_t code = length == 1 ? byte(0) : byte(0) & (0x7FU >> length);
    for (std::size_t i = 1; i < length; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U) return ill_formed;
        code = code << 6U | (byte(i) & 0x3FU);
    }
    const bool surrogate = code >= 0xD800U && code < 0xE000U;
    if (surrogate || (length == 3 && code < 0x800U) || (length == 4 && (code < 0x10000U || code > 0x10FFFFU)))
        return ill_formed;
    if (length == 4) {
        low = 0xDC00U | (code & 0x3FFU);
        code = 0xD800U | ((code - 0x10000U) >> 10U);
    }
    if (wide != nullptr) *wide = static_cast<wchar_t>(code);
    return code == 0 ? 0 : std::min<std::size_t>(length, 3);
}

std::size_t wcrtomb(char* text, wchar_t wide, std::mbstate_t* state) {
    unsigned int& high = owed(state);
    if (text == nullptr) {
        high = 0;
        return 1;
    }
    std::uint32_t code = static_cast<std::uint16_t>(wide);
    const bool is_low = code >= 0xDC00U && code < 0xE000U;
    if (is_low != (high != 0)) return ill_formed;
    if (code >= 0xD800U && code < 0xDC00U) {
        high = code;
        return 0;
    }
    if (is_low) code = 0x10000U + ((high & 0x3FFU) << 10U | (code & 0x3FFU));
    high = 0;
    const std::size_t length = code < 0x80U ? 1 : code < 0x800U ? 2 : code < 0x10000U ? 3 : 4;
    for (std::size_t i = length; i-- > 1; code >>= 6U)
        text[i] = static_cast<char>(0x80U | (code & 0x3FU));
    text[0] = static_cast<char>(length == 1 ? code : (0xF00U >> length & 0xFFU) | code);
    return length;
}

extern int (*const __imp____mb_cur_max_func)();
int (*const __imp____mb_cur_max_func)() = longest_character;

} // extern "C"

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

bool printing_is_seen() {
    const HANDLE out = GetStdHandle(STD_ERROR_HANDLE);
    return out != nullptr && out != INVALID_HANDLE_VALUE;
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
