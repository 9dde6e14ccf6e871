// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/file_name.h"

#include "core/base/plain_text.h"

#include <string_view>

namespace lapwright::sheet {
namespace {

// What one of the three usual kinds of system refuses in a name, and what a shell makes something of.
constexpr std::string_view refused = "<>:\"/\\|?*%$`'&;!#~";
constexpr std::size_t max_bytes = 120;

std::string with_safe_letters(const std::string& words) {
    std::string safe;
    for (const char letter : base::plain_name(words))
        if (static_cast<unsigned char>(letter) >= 0x20U && refused.find(letter) == std::string_view::npos)
            safe += letter;
    while (!safe.empty() && (safe.front() == '.' || safe.front() == '-' || safe.front() == ' '))
        safe.erase(safe.begin());
    return safe;
}

// Cut between characters of UTF-8.
std::string cut(std::string words) {
    if (words.size() <= max_bytes) return words;
    std::size_t end = max_bytes;
    while (end > 0 && (static_cast<unsigned char>(words[end]) & 0xc0U) == 0x80U)
        --end;
    words.resize(end);
    return words;
}

} // namespace

std::string file_name_for(const std::string& track, const std::string& date, const std::string& driver_a,
                          const std::string& driver_b) {
    const std::string a = with_safe_letters(driver_a);
    const std::string b = with_safe_letters(driver_b);
    std::string name;
    for (const std::string& part : {with_safe_letters(track), with_safe_letters(date),
                                    a.empty() || b.empty() || a == b ? a + (a == b ? "" : b) : a + " - " + b})
        if (!part.empty()) name += (name.empty() ? "" : " ") + part;
    name = cut(name);
    while (!name.empty() && (name.back() == ' ' || name.back() == '.'))
        name.pop_back();
    return name.empty() ? "debrief" : name;
}

} // namespace lapwright::sheet
