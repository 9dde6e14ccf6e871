// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/line_scan.h"

#include <algorithm>
#include <cstdint>

namespace lapwright::import {

std::size_t count_line_ends(std::string_view text) {
    // Short stretches keep the counts in bytes, so that the compiler takes sixteen characters at a time.
    constexpr std::size_t stretch = 240;
    std::size_t count = 0;
    const std::size_t last = text.empty() ? 0 : text.size() - 1;
    for (std::size_t from = 0; from < last; from += stretch) {
        const std::size_t to = std::min(from + stretch, last);
        std::uint8_t ends = 0;
        for (std::size_t i = from; i < to; ++i) {
            const auto line_feed = static_cast<std::uint8_t>(text[i] == '\n');
            const auto lone_return = static_cast<std::uint8_t>(static_cast<unsigned>(text[i] == '\r') &
                                                               static_cast<unsigned>(text[i + 1] != '\n'));
            ends = static_cast<std::uint8_t>(ends + (line_feed | lone_return));
        }
        count += ends;
    }
    if (!text.empty() && (text[last] == '\n' || text[last] == '\r')) ++count;
    return count;
}

std::size_t behind_line_end(std::string_view text, std::size_t from) {
    const std::size_t end = text.find_first_of("\r\n", from);
    if (end == std::string_view::npos) return text.size();
    const bool pair = text[end] == '\r' && end + 1 < text.size() && text[end + 1] == '\n';
    return end + (pair ? 2 : 1);
}

} // namespace lapwright::import
