// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/encoding.h"

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

Utf8Text from_utf16(std::string_view bytes, bool little) {
    Utf8Text result;
    result.text.reserve(bytes.size() / 2 + 16);
    const auto unit = [&](std::size_t at) {
        const unsigned first = byte_at(bytes, at);
        const unsigned second = byte_at(bytes, at + 1);
        return static_cast<char32_t>(little ? first | (second << 8U) : (first << 8U) | second);
    };
    std::size_t at = bytes.size() >= 2 && unit(0) == 0xFEFF ? 2 : 0;
    for (; at + 1 < bytes.size(); at += 2) {
        char32_t letter = unit(at);
        const bool high = letter >= 0xD800 && letter < 0xDC00;
        const bool low = letter >= 0xDC00 && letter < 0xE000;
        const char32_t next = high && at + 3 < bytes.size() ? unit(at + 2) : 0;
        if (next >= 0xDC00 && next < 0xE000) {
            letter = 0x10000U + ((letter - 0xD800U) << 10U) + (next - 0xDC00U);
            at += 2;
        } else if (high || low) {
            letter = replacement;
            ++result.damaged;
        }
        append(result.text, letter);
    }
    if (at < bytes.size()) ++result.damaged;
    return result;
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

Utf8Text to_utf8(std::string_view bytes, Encoding encoding) {
    if (encoding == Encoding::utf16_little || encoding == Encoding::utf16_big)
        return from_utf16(bytes, encoding == Encoding::utf16_little);
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

bool has_high_bytes(std::string_view text) {
    return std::ranges::any_of(text, [](char c) { return static_cast<std::uint8_t>(c) >= 0x80U; });
}

} // namespace lapwright::import
