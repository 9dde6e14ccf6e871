// SPDX-License-Identifier: GPL-3.0-or-later
// Text of a file or a person, made fit for a place that holds one line.  All text is UTF-8.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

namespace lapwright::base {

// Each control character of ASCII (line break, tab, escape, …) becomes a blank.
[[nodiscard]] std::string without_controls(std::string_view text);

// Text of several lines for a terminal: line breaks (LF, CR LF) stay, every other control character of ASCII and of
// Latin-1 (U+0080 to U+009F, which some terminals obey like an escape) becomes a blank.
[[nodiscard]] std::string printable_lines(std::string_view text);

// Without blanks and line breaks around it.
[[nodiscard]] std::string_view trimmed(std::string_view text);
// A name as it is kept: no control characters, no blanks around it.
[[nodiscard]] std::string plain_name(std::string_view name);
// ASCII letters made small.
[[nodiscard]] std::string lower_case(std::string_view text);
// "Plover" and " plover": without regard to ASCII case and to blanks around them.
[[nodiscard]] bool same_name(std::string_view one, std::string_view other);

// Characters, not bytes.
[[nodiscard]] std::size_t count_characters(std::string_view text);

} // namespace lapwright::base
