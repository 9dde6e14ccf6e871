// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/vocabulary/measured_text.h"

#include "core/import/text/cells.h"
#include "core/import/vocabulary/units_in_text.h"

namespace lapwright::import {
namespace {

// "12A" is the name of something as often as a current.
constexpr std::size_t longest_unit = 20;

bool is_sign(char c) {
    return c == '-' || c == '+';
}

// Behind the last character that can belong to the number.
std::size_t end_of_number(std::string_view cell) {
    std::size_t end = 0;
    for (std::size_t i = 0; i < cell.size(); ++i) {
        const bool exponent = (cell[i] == 'e' || cell[i] == 'E') && i > 0 && is_digit(cell[i - 1]) &&
                              i + 1 < cell.size() && (is_digit(cell[i + 1]) || is_sign(cell[i + 1]));
        if (is_digit(cell[i]) || exponent)
            end = i + 1;
        else if (cell[i] != '.' && cell[i] != ',' && !is_sign(cell[i]))
            break;
    }
    return end;
}

} // namespace

std::optional<MeasuredText> read_measured(std::string_view cell, NumberStyle style) {
    const std::size_t end = end_of_number(cell);
    if (end == 0 || end == cell.size() || cell.size() - end > longest_unit) return std::nullopt;
    const auto value = read_number(cell.substr(0, end), style);
    const std::string_view text = trimmed(cell.substr(end));
    const auto unit = unit_behind_number(text);
    if (!value || !unit) return std::nullopt;
    return MeasuredText{*value, *unit, std::string(text)};
}

} // namespace lapwright::import
