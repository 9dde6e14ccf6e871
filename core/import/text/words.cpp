// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/words.h"

#include "core/import/text/number_scan.h"

#include <cstdint>

namespace lapwright::import {
namespace {

// The letters U+00C0..U+00FF without their marks (Unicode's Latin-1 Supplement); '\0' where there is none.
constexpr std::string_view latin_letters("aaaaaaaceeeeiiiidnooooo\0ouuuuypsaaaaaaaceeeeiiiidnooooo\0ouuuuypy", 64);
static_assert(latin_letters.size() == 64);

bool is_upper(char c) {
    return c >= 'A' && c <= 'Z';
}

bool is_lower(char c) {
    return c >= 'a' && c <= 'z';
}

char lower(char c) {
    return is_upper(c) ? static_cast<char>(c - 'A' + 'a') : c;
}

} // namespace

std::string folded(std::string_view utf8) {
    std::string text;
    text.reserve(utf8.size());
    for (std::size_t i = 0; i < utf8.size(); ++i) {
        const auto byte = static_cast<std::uint8_t>(utf8[i]);
        const auto next = i + 1 < utf8.size() ? static_cast<std::uint8_t>(utf8[i + 1]) : std::uint8_t{0};
        const bool accented = byte == 0xC3U && next >= 0x80U && next < 0xC0U;
        const char plain = accented ? latin_letters[next - 0x80U] : lower(utf8[i]);
        if (accented && plain != '\0') {
            text += plain;
            if (next == 0x9FU) text += 's'; // sharp s
            ++i;
            continue;
        }
        text += lower(utf8[i]);
    }
    return text;
}

std::string plain_words(std::string_view utf8) {
    std::string parted;
    for (std::size_t i = 0; i < utf8.size(); ++i) {
        const char c = utf8[i];
        const char before = i > 0 ? utf8[i - 1] : ' ';
        const char after = i + 1 < utf8.size() ? utf8[i + 1] : ' ';
        const bool new_word =
            is_upper(c) && (is_lower(before) || is_digit(before) || (is_upper(before) && is_lower(after)));
        if (new_word) parted += ' ';
        parted += c;
    }
    std::string words;
    for (const char c : folded(parted)) {
        const bool letter = is_lower(c) || is_digit(c) || static_cast<std::uint8_t>(c) >= 0x80U;
        if (letter)
            words += c;
        else if (!words.empty() && words.back() != ' ')
            words += ' ';
    }
    while (!words.empty() && words.back() == ' ')
        words.pop_back();
    return words;
}

} // namespace lapwright::import
