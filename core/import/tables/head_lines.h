// SPDX-License-Identifier: GPL-3.0-or-later
// The first lines of a text, of which its layout is told.  A cell in quotes may hold line ends (RFC 4180, section 2.6):
// the lines that it spans come as one.
#pragma once

#include <cstddef>
#include <string_view>
#include <vector>

namespace lapwright::import {

struct HeadLine {
    std::string_view text;  // without its line end
    std::size_t number = 0; // counted from 1; of the first where a quoted cell spans several
    std::size_t offset = 0; // bytes from the start of the text
};

// "# …", "// …", "% …"
[[nodiscard]] bool is_comment(std::string_view line);

// The first lines of a text, at most `most` of them, none longer
// than longest_line_bytes; "\n", "\r\n" and "\r" end a line.
[[nodiscard]] std::vector<HeadLine> head_lines(std::string_view text, std::size_t most);

// The lines of a text that may hold its preamble, its header and enough rows to judge by, those that a quoted cell
// spans (at most eight) joined.  A quote that is not closed so is an ordinary character.
[[nodiscard]] std::vector<HeadLine> judged_lines(std::string_view text);

} // namespace lapwright::import
