// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/platform/code_page.h"

#include <limits>

#define WIN32_LEAN_AND_MEAN
#include <windows.h>

namespace lapwright::platform {
namespace {

UINT number_of(CodePage page) {
    switch (page) {
    case CodePage::shift_jis:
        return 932;
    case CodePage::euc_jp:
        return 20932;
    case CodePage::windows_1250:
        return 1250;
    case CodePage::dos_850:
        return 850;
    case CodePage::macintosh:
        return 10000;
    }
    return 0;
}

} // namespace

std::optional<std::string> utf8_of(std::string_view bytes, CodePage page) {
    if (bytes.empty()) return std::string();
    if (bytes.size() > static_cast<std::size_t>(std::numeric_limits<int>::max()) / 4) return std::nullopt;
    const int size = static_cast<int>(bytes.size());
    std::wstring wide(bytes.size(), L'\0');
    const int letters =
        MultiByteToWideChar(number_of(page), MB_ERR_INVALID_CHARS, bytes.data(), size, wide.data(), size);
    if (letters <= 0) return std::nullopt;
    std::string text(3 * static_cast<std::size_t>(letters), '\0');
    const int written = WideCharToMultiByte(CP_UTF8, 0, wide.data(), letters, text.data(),
                                            static_cast<int>(text.size()), nullptr, nullptr);
    if (written <= 0) return std::nullopt;
    text.resize(static_cast<std::size_t>(written));
    return text;
}

} // namespace lapwright::platform
