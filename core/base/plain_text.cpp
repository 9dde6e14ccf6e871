// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/base/plain_text.h"

#include <algorithm>

namespace lapwright::base {

std::string without_controls(std::string_view text) {
    std::string plain(text);
    std::ranges::replace_if(plain, [](unsigned char c) { return c < 0x20 || c == 0x7f; }, ' ');
    return plain;
}

std::string_view trimmed(std::string_view text) {
    constexpr std::string_view blanks = " \t\r\n";
    const auto first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::string plain_name(std::string_view name) {
    return std::string(trimmed(without_controls(name)));
}

std::string lower_case(std::string_view text) {
    std::string lower(text);
    std::ranges::transform(lower, lower.begin(),
                           [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c; });
    return lower;
}

bool same_name(std::string_view one, std::string_view other) {
    return lower_case(trimmed(one)) == lower_case(trimmed(other));
}

std::string printable_lines(std::string_view text) {
    std::string plain;
    plain.reserve(text.size());
    for (std::size_t i = 0; i < text.size(); ++i) {
        const auto c = static_cast<unsigned char>(text[i]);
        const auto next = i + 1 < text.size() ? static_cast<unsigned char>(text[i + 1]) : 0U;
        const bool latin_control = c == 0xC2 && next >= 0x80 && next <= 0x9F; // in UTF-8
        if (latin_control) ++i;
        const bool ends_line = c == '\n' || (c == '\r' && next == '\n');
        plain += latin_control || (c < 0x20 && !ends_line) || c == 0x7f ? ' ' : text[i];
    }
    return plain;
}

std::size_t count_characters(std::string_view text) {
    // Bytes that go on with a character (RFC 3629, section 3) begin with the bits 10.
    return static_cast<std::size_t>(
        std::ranges::count_if(text, [](char c) { return (static_cast<unsigned char>(c) & 0xC0) != 0x80; }));
}

} // namespace lapwright::base
