// SPDX-License-Identifier: GPL-3.0-or-later
// Where lines end.  "\n", "\r\n" and a single "\r" each end one line, mixed as they come.
#pragma once

#include <cstddef>
#include <string_view>

namespace lapwright::import {

[[nodiscard]] constexpr bool is_line_end(char c) {
    return c == '\n' || c == '\r';
}

// Ends of lines in `text`; a "\r" as its last character counts as one.
[[nodiscard]] std::size_t count_line_ends(std::string_view text);

// The first position behind an end of line at or after `from`; the size of the text where there is none.
[[nodiscard]] std::size_t behind_line_end(std::string_view text, std::size_t from);

} // namespace lapwright::import
