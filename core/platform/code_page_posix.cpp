// SPDX-License-Identifier: GPL-3.0-or-later
// By iconv, which POSIX.1-2008 has and which is a part of the C library.
#include "core/platform/code_page.h"

#include <array>
#include <cstddef>
#include <iconv.h>

namespace lapwright::platform {
namespace {

const char* name_of(CodePage page) {
    switch (page) {
    case CodePage::shift_jis:
        return "CP932";
    case CodePage::euc_jp:
        return "EUC-JP";
    case CodePage::windows_1250:
        return "CP1250";
    case CodePage::dos_850:
        return "CP850";
    case CodePage::macintosh:
        return "MACINTOSH";
    }
    return "";
}

} // namespace

std::optional<std::string> utf8_of(std::string_view bytes, CodePage page) {
    const iconv_t converter = ::iconv_open("UTF-8", name_of(page));
    // POSIX says (iconv_t)-1.
    if (converter == iconv_t(-1)) return std::nullopt;
    std::string text;
    text.reserve(bytes.size() + bytes.size() / 2);
    std::string from(bytes); // iconv wants bytes that it may write to, and does not
    char* at = from.data();
    std::size_t left = from.size();
    bool whole = true;
    while (left > 0) {
        std::array<char, 16384> piece{};
        char* into = piece.data();
        std::size_t room = piece.size();
        const std::size_t before = left;
        const std::size_t done = ::iconv(converter, &at, &left, &into, &room);
        text.append(piece.data(), piece.size() - room);
        whole = done != static_cast<std::size_t>(-1) || left < before;
        if (!whole) break;
    }
    ::iconv_close(converter);
    return whole ? std::optional(std::move(text)) : std::nullopt;
}

} // namespace lapwright::platform
