// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/number_scan.h"

#include "core/base/number_text.h"
#include "core/import/text/limits.h"
#include "core/import/text/words.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <string>

namespace lapwright::import {
namespace {

constexpr std::array<std::string_view, 19> absent_words{"",     "-",   "--",   "---",  "nan",     "-nan", "+nan",
                                                        "n/a",  "na",  "null", "none", "inf",     "-inf", "+inf",
                                                        "#n/a", "nil", "?",    "*",    "infinity"};

// Bytes of the group mark at `at`: apostrophe, blank, U+00A0, U+2009, U+202F, U+2019, or the other mark; else 0.
std::size_t group_mark(std::string_view text, std::size_t at, NumberStyle style) {
    const char other = style.decimal_mark == '.' ? ',' : '.';
    if (text[at] == '\'' || text[at] == ' ' || (style.thousands && text[at] == other)) return 1;
    for (const std::string_view mark : {"\xC2\xA0", "\xE2\x80\x89", "\xE2\x80\xAF", "\xE2\x80\x99"})
        if (text.substr(at).starts_with(mark)) return mark.size();
    return 0;
}

// Takes out the marks between groups of three digits; nothing where the groups are not of three.
std::optional<std::string> without_groups(std::string_view whole, NumberStyle style) {
    std::string digits;
    std::size_t in_group = 0;
    bool grouped = false;
    for (std::size_t i = 0; i < whole.size();) {
        if (is_digit(whole[i])) {
            digits += whole[i++];
            ++in_group;
            continue;
        }
        const std::size_t mark = group_mark(whole, i, style);
        const bool fits = mark > 0 && in_group > 0 && (grouped ? in_group == 3 : in_group <= 3);
        if (!fits) return std::nullopt;
        grouped = true;
        in_group = 0;
        i += mark;
    }
    if (grouped && in_group != 3) return std::nullopt;
    return digits;
}

std::optional<double> within_limits(std::optional<double> value) {
    return value && std::abs(*value) <= largest_magnitude ? value : std::nullopt;
}

// Rare forms: decimal comma, groups, a Unicode minus, a percent sign.
std::optional<double> read_other_forms(std::string_view cell, NumberStyle style) {
    std::string plain;
    for (const std::string_view minus : {"\xE2\x88\x92", "\xE2\x80\x93"}) {
        if (!cell.starts_with(minus)) continue;
        plain = "-";
        cell.remove_prefix(minus.size());
    }
    if (cell.starts_with('-') || cell.starts_with('+')) {
        if (!plain.empty()) return std::nullopt;
        plain = cell.front() == '-' ? "-" : "";
        cell.remove_prefix(1);
    }
    if (cell.ends_with('%')) cell.remove_suffix(1);
    while (cell.ends_with(' '))
        cell.remove_suffix(1);
    if (cell.empty() || !(is_digit(cell.front()) || cell.front() == style.decimal_mark)) return std::nullopt;
    const std::size_t mark = std::min(cell.find(style.decimal_mark), cell.size());
    const std::size_t exponent = std::min(cell.find_first_of("eE"), cell.size());
    const std::size_t whole_end = std::min(mark, exponent);
    const auto whole = without_groups(cell.substr(0, whole_end), style);
    if (!whole) return std::nullopt;
    plain += *whole;
    if (mark < cell.size()) {
        plain += '.';
        plain += cell.substr(mark + 1);
    } else {
        plain += cell.substr(whole_end);
    }
    return base::parse_number(plain);
}

} // namespace

std::optional<double> read_number(std::string_view cell, NumberStyle style) {
    if (cell.empty() || cell.size() > longest_cell_bytes) return std::nullopt;
    if (style.decimal_mark == '.')
        if (const auto value = base::parse_number(cell)) return within_limits(value);
    return within_limits(read_other_forms(cell, style));
}

bool means_absent(std::string_view cell) {
    if (cell.empty()) return true;
    if (cell.size() > 8) return false;
    return std::ranges::find(absent_words, folded(cell)) != absent_words.end();
}

} // namespace lapwright::import
