// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/analysis/short_text.h"

namespace lapwright::analysis {

std::string shortened(const std::string& text, std::size_t characters) {
    const auto begins_character = [](char c) { return (static_cast<unsigned char>(c) & 0xC0U) != 0x80U; };
    std::size_t count = 0;
    std::size_t last = 0; // where the last character that is kept before "…" ends
    for (std::size_t i = 0; i < text.size(); ++i) {
        if (!begins_character(text[i])) continue;
        if (++count == characters) last = i;
        if (count > characters) return text.substr(0, last) + "…";
    }
    return text;
}

} // namespace lapwright::analysis
