// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/markup.h"

#include "core/base/number_text.h"

#include <cstddef>

namespace lapwright::sheet {
namespace {

constexpr std::string_view replacement = "\xEF\xBF\xBD"; // U+FFFD

// The code point at the front and how many bytes it takes; 0 bytes where the front is no UTF-8.
struct Front {
    std::uint32_t code = 0;
    std::size_t bytes = 0;
};

Front front(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<std::uint32_t>(static_cast<unsigned char>(text[i])); };
    const std::uint32_t lead = byte(0);
    if (lead < 0x80U) return {lead, 1};
    const std::size_t bytes = lead >= 0xf0U ? 4 : lead >= 0xe0U ? 3 : 2;
    if (lead < 0xc2U || lead > 0xf4U || text.size() < bytes) return {};
    std::uint32_t code = lead & (0x7fU >> bytes);
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(i) & 0xc0U) != 0x80U) return {};
        code = (code << 6U) | (byte(i) & 0x3fU);
    }
    const bool too_long = (bytes == 3 && code < 0x800U) || (bytes == 4 && code < 0x10000U);
    if (too_long || code > 0x10ffffU) return {};
    return {code, bytes};
}

bool allowed(std::uint32_t code) {
    if (code < 0x20U) return code == '\t' || code == '\n' || code == '\r';
    if (code >= 0x7fU && code < 0xa0U) return false; // controls, which HTML does not allow either
    return !(code >= 0xd800U && code <= 0xdfffU) && (code & 0xfffeU) != 0xfffeU;
}

std::string_view reference(char letter) {
    switch (letter) {
    case '&':
        return "&amp;";
    case '<':
        return "&lt;";
    case '>':
        return "&gt;";
    case '"':
        return "&quot;";
    case '\'':
        return "&#39;";
    default:
        return {};
    }
}

} // namespace

std::string escaped(std::string_view text) {
    std::string safe;
    safe.reserve(text.size());
    while (!text.empty()) {
        const Front next = front(text);
        if (next.bytes == 0 || !allowed(next.code))
            safe += replacement;
        else if (const std::string_view words = reference(text.front()); !words.empty())
            safe += words;
        else
            safe += text.substr(0, next.bytes);
        text.remove_prefix(next.bytes == 0 ? 1 : next.bytes);
    }
    return safe;
}

std::string colour_text(std::uint32_t rgb) {
    constexpr std::string_view digits = "0123456789abcdef";
    std::string text = "#";
    for (unsigned shift = 24; shift > 0; shift -= 4)
        text += digits[(rgb >> (shift - 4)) & 0xfU];
    return text;
}

std::string base64(std::string_view bytes) {
    constexpr std::string_view digits = "ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/";
    constexpr std::size_t together = 3; // bytes, which make four digits
    std::string text;
    text.reserve((bytes.size() + together - 1) / together * (together + 1));
    for (std::size_t i = 0; i < bytes.size(); i += together) {
        std::uint32_t bits = 0;
        for (std::size_t k = 0; k < together; ++k)
            bits = (bits << 8U) | (i + k < bytes.size() ? static_cast<unsigned char>(bytes[i + k]) : 0U);
        for (std::size_t k = 0; k <= together; ++k)
            text += i + k <= bytes.size() ? digits[(bits >> (18U - 6U * k)) & 0x3fU] : '=';
    }
    return text;
}

std::string coordinate(double value) {
    return base::fixed_text(value, 2);
}

} // namespace lapwright::sheet
