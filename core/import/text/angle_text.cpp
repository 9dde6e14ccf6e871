// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/angle_text.h"

#include "core/base/number_text.h"
#include "core/import/text/cells.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <vector>

namespace lapwright::import {
namespace {

// Behind "º" the sign of degrees in code page 850 and of the Macintosh, read as Windows-1252.
constexpr std::array<std::string_view, 15> marks{"°", "º", "ø", "¡",   "'",  "’",  "′", "\"",
                                                 "″", "”", " ", "deg", "\t", "''", "’’"};

struct Split {
    std::vector<std::string> numbers;
    double sign = 1.0;
    bool marked = false;
    bool lettered = false;
    bool fits = true;
};

// Cuts a hemisphere letter from either end.
void cut_letter(std::string_view& text, Letters letters, Split& split) {
    if (text.empty()) return;
    if (const auto front = read_hemisphere(text.substr(0, 1), letters)) {
        split.sign = *front;
        split.marked = split.lettered = true;
        text = trimmed(text.substr(1));
    } else if (const auto back = read_hemisphere(text.substr(text.size() - 1), letters)) {
        split.sign = *back;
        split.marked = split.lettered = true;
        text = trimmed(text.substr(0, text.size() - 1));
    }
}

Split split_parts(std::string_view text, char decimal_mark, Letters letters) {
    Split split;
    text = trimmed(text);
    cut_letter(text, letters, split);
    if (text.starts_with('-')) {
        split.sign = -split.sign;
        text.remove_prefix(1);
    }
    std::string part;
    for (std::size_t i = 0; i < text.size();) {
        const char c = text[i];
        if ((c >= '0' && c <= '9') || c == decimal_mark || c == '.') {
            part += c == decimal_mark ? '.' : c;
            ++i;
            continue;
        }
        const auto mark =
            std::ranges::find_if(marks, [&](std::string_view m) { return text.substr(i).starts_with(m); });
        if (mark == marks.end()) {
            split.fits = false;
            return split;
        }
        split.marked = true;
        i += mark->size();
        if (!part.empty()) split.numbers.push_back(std::move(part));
        part.clear();
    }
    if (!part.empty()) split.numbers.push_back(std::move(part));
    return split;
}

// "5207.4042N", "00221.0390E", "520724.3N": degrees, minutes and perhaps seconds without marks between them; nothing
// where too few digits stand before the point.
std::optional<double> unpacked(const std::string& digits) {
    const std::size_t whole = std::min(digits.find('.'), digits.size());
    if (whole < 4 || whole > 7) return std::nullopt;
    const std::size_t degree_digits = whole - (whole >= 6 ? 4 : 2);
    const auto degrees = base::parse_number(digits.substr(0, degree_digits));
    auto minutes = base::parse_number(digits.substr(degree_digits));
    if (!degrees || !minutes) return std::nullopt;
    if (whole >= 6) {
        const double full = std::floor(*minutes / 100.0);
        const double seconds = *minutes - 100.0 * full;
        if (seconds >= 60.0) return std::nullopt;
        minutes = full + seconds / 60.0;
    }
    if (*minutes >= 60.0) return std::nullopt;
    return *degrees + *minutes / 60.0;
}

} // namespace

std::optional<double> read_hemisphere(std::string_view cell, Letters letters) {
    if (cell.size() != 1) return std::nullopt;
    switch (cell.front()) {
    case 'N':
    case 'n':
    case 'E':
    case 'e':
        return 1.0;
    case 'S':
    case 's':
    case 'W':
    case 'w':
        return -1.0;
    default:
        break;
    }
    if (letters == Letters::english) return std::nullopt;
    switch (cell.front()) {
    case 'O':
    case 'o':
        return letters == Letters::o_is_east ? 1.0 : -1.0;
    case 'Z':
    case 'z':
        return -1.0;
    default:
        return std::nullopt;
    }
}

std::optional<double> read_angle(std::string_view cell, char decimal_mark, Letters letters) {
    if (cell.size() < 2 || cell.size() > 40) return std::nullopt;
    const Split split = split_parts(cell, decimal_mark, letters);
    if (!split.fits || !split.marked || split.numbers.empty() || split.numbers.size() > 3) return std::nullopt;
    if (split.lettered && split.numbers.size() == 1)
        if (const auto packed = unpacked(split.numbers.front()))
            return *packed <= 180.0 ? std::optional(split.sign * *packed) : std::nullopt;
    double degrees = 0.0;
    double scale = 1.0;
    for (std::size_t i = 0; i < split.numbers.size(); ++i) {
        const auto value = base::parse_number(split.numbers[i]);
        const bool last = i + 1 == split.numbers.size();
        if (!value || (i > 0 && *value >= 60.0)) return std::nullopt;
        if (!last && split.numbers[i].find('.') != std::string::npos) return std::nullopt;
        degrees += *value / scale;
        scale *= 60.0;
    }
    return degrees <= 360.0 ? std::optional(split.sign * degrees) : std::nullopt;
}

} // namespace lapwright::import
