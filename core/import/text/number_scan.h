// SPDX-License-Identifier: GPL-3.0-or-later
// The text of a cell to a number, for whole columns at the speed of memory.  Whatever way is taken, the result is the
// double nearest to the decimal text, to the last bit as std::from_chars has it.
#pragma once

#include <optional>
#include <string_view>

namespace lapwright::import {

// How a file writes numbers.  Marks of thousands are only believed between groups of three digits.
struct NumberStyle {
    char decimal_mark = '.'; // '.' or ','
    // Also allowed between groups, besides apostrophe, blank and no-break blank: the other one of point and comma.
    bool thousands = false;

    bool operator==(const NumberStyle&) const = default;
};

[[nodiscard]] constexpr bool is_digit(char c) {
    return c >= '0' && c <= '9';
}

// The whole of a trimmed cell as a finite number of at most largest_magnitude; a percent sign behind it is ignored.
[[nodiscard]] std::optional<double> read_number(std::string_view cell, NumberStyle style);

// What loggers write where they have no value: "", "-", "--", "nan", "n/a", "null", "none", "inf", "#N/A" …
[[nodiscard]] bool means_absent(std::string_view cell);

} // namespace lapwright::import
