// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/encoding.h"

#include "core/platform/code_page.h"

#include <algorithm>
#include <array>
#include <cstdint>

namespace lapwright::import {
namespace {

constexpr char32_t replacement = 0xFFFD;

// 0x80..0x9F of Windows-1252; the five bytes that it leaves open keep their Latin-1 control code.
constexpr std::array<char16_t, 32> windows_letters{0x20AC, 0x0081, 0x201A, 0x0192, 0x201E, 0x2026, 0x2020, 0x2021,
                                                   0x02C6, 0x2030, 0x0160, 0x2039, 0x0152, 0x008D, 0x017D, 0x008F,
                                                   0x0090, 0x2018, 0x2019, 0x201C, 0x201D, 0x2022, 0x2013, 0x2014,
                                                   0x02DC, 0x2122, 0x0161, 0x203A, 0x0153, 0x009D, 0x017E, 0x0178};

std::uint8_t byte_at(std::string_view text, std::size_t at) {
    return static_cast<std::uint8_t>(text[at]);
}

void append(std::string& text, char32_t letter) {
    const auto put = [&text](char32_t byte) { text += static_cast<char>(static_cast<std::uint8_t>(byte)); };
    if (letter < 0x80) {
        put(letter);
    } else if (letter < 0x800) {
        put(0xC0U | (letter >> 6U));
        put(0x80U | (letter & 0x3FU));
    } else if (letter < 0x10000) {
        put(0xE0U | (letter >> 12U));
        put(0x80U | ((letter >> 6U) & 0x3FU));
        put(0x80U | (letter & 0x3FU));
    } else {
        put(0xF0U | (letter >> 18U));
        put(0x80U | ((letter >> 12U) & 0x3FU));
        put(0x80U | ((letter >> 6U) & 0x3FU));
        put(0x80U | (letter & 0x3FU));
    }
}

// Bytes of the UTF-8 character that starts with `lead`; 0 where none does.
std::size_t length_of(std::uint8_t lead) {
    if (lead < 0x80U) return 1;
    if (lead >= 0xC2U && lead < 0xE0U) return 2;
    if (lead >= 0xE0U && lead < 0xF0U) return 3;
    if (lead >= 0xF0U && lead < 0xF5U) return 4;
    return 0;
}

bool can_be_utf8(std::string_view head) {
    for (std::size_t i = 0; i < head.size();) {
        const std::size_t length = length_of(byte_at(head, i));
        if (length == 0) return false;
        for (std::size_t k = 1; k < length; ++k) {
            if (i + k >= head.size()) return true; // cut
            if ((byte_at(head, i + k) & 0xC0U) != 0x80U) return false;
        }
        i += length;
    }
    return true;
}

char32_t utf16_unit(std::string_view bytes, std::size_t at, Encoding encoding) {
    const unsigned first = byte_at(bytes, at);
    const unsigned second = byte_at(bytes, at + 1);
    return encoding == Encoding::utf16_little ? first | (second << 8U) : (first << 8U) | second;
}

bool is_high_half(char32_t unit) {
    return unit >= 0xD800 && unit < 0xDC00;
}

bool is_low_half(char32_t unit) {
    return unit >= 0xDC00 && unit < 0xE000;
}

} // namespace

Encoding detect_encoding(std::string_view head) {
    if (head.starts_with("\xFF\xFE")) return Encoding::utf16_little;
    if (head.starts_with("\xFE\xFF")) return Encoding::utf16_big;
    const std::string_view start = head.substr(0, 4096);
    std::array<std::size_t, 2> zeros{};
    for (std::size_t i = 0; i < start.size(); ++i)
        if (start[i] == '\0') ++zeros[i % 2];
    // Digits and delimiters have a zero for their other half.
    const std::size_t most = start.size() / 5;
    if (zeros[1] > most && zeros[0] * 8 < zeros[1]) return Encoding::utf16_little;
    if (zeros[0] > most && zeros[1] * 8 < zeros[0]) return Encoding::utf16_big;
    return can_be_utf8(head) ? Encoding::utf8 : Encoding::windows_1252;
}

bool has_mark(std::string_view bytes, Encoding encoding) {
    return bytes.size() >= 2 && utf16_unit(bytes, 0, encoding) == 0xFEFF;
}

void append_utf16(std::string_view piece, Encoding encoding, Utf8Text& text) {
    std::size_t at = 0;
    for (; at + 1 < piece.size(); at += 2) {
        char32_t letter = utf16_unit(piece, at, encoding);
        const char32_t next =
            is_high_half(letter) && at + 3 < piece.size() ? utf16_unit(piece, at + 2, encoding) : char32_t{0};
        if (is_low_half(next)) {
            letter = 0x10000U + ((letter - 0xD800U) << 10U) + (next - 0xDC00U);
            at += 2;
        } else if (is_high_half(letter) || is_low_half(letter)) {
            letter = replacement;
            ++text.damaged;
        }
        append(text.text, letter);
    }
    if (at < piece.size()) ++text.damaged;
}

std::size_t whole_characters(std::string_view piece, Encoding encoding) {
    const std::size_t units = piece.size() / 2 * 2;
    return units >= 2 && is_high_half(utf16_unit(piece, units - 2, encoding)) ? units - 2 : units;
}

Utf8Text to_utf8(std::string_view bytes, Encoding encoding) {
    if (encoding == Encoding::utf16_little || encoding == Encoding::utf16_big) {
        Utf8Text text;
        if (has_mark(bytes, encoding)) bytes.remove_prefix(2);
        text.text.reserve(bytes.size() / 2 + 16);
        append_utf16(bytes, encoding, text);
        return text;
    }
    if (bytes.starts_with(utf8_mark)) bytes.remove_prefix(utf8_mark.size());
    if (encoding == Encoding::utf8) return {std::string(bytes), 0};
    Utf8Text result;
    for (std::size_t i = 0; i < bytes.size(); ++i) {
        const std::uint8_t byte = byte_at(bytes, i);
        const bool special = byte >= 0x80U && byte < 0xA0U;
        append(result.text, special ? windows_letters[byte - 0x80U] : char32_t{byte});
    }
    return result;
}

std::optional<std::string> code_page_to_utf8(std::string_view bytes, Encoding encoding) {
    using platform::CodePage;
    switch (encoding) {
    case Encoding::windows_1250:
        return platform::utf8_of(bytes, CodePage::windows_1250);
    case Encoding::shift_jis:
        return platform::utf8_of(bytes, CodePage::shift_jis);
    case Encoding::euc_jp:
        return platform::utf8_of(bytes, CodePage::euc_jp);
    case Encoding::dos_850:
        return platform::utf8_of(bytes, CodePage::dos_850);
    case Encoding::macintosh:
        return platform::utf8_of(bytes, CodePage::macintosh);
    default:
        return std::nullopt;
    }
}

std::string_view whole_characters_of(std::string_view utf8, std::size_t max_bytes) {
    if (utf8.size() <= max_bytes) return utf8;
    std::size_t end = max_bytes;
    while (end > 0 && (static_cast<unsigned char>(utf8[end]) & 0xC0U) == 0x80U)
        --end;
    return utf8.substr(0, end);
}

bool has_high_bytes(std::string_view text) {
    return std::ranges::any_of(text, [](char c) { return static_cast<std::uint8_t>(c) >= 0x80U; });
}

} // namespace lapwright::import
