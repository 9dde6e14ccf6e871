// SPDX-License-Identifier: GPL-3.0-or-later
// Which characters the bytes of a text stand for.  Told from byte order marks, from
// the zeros of UTF-16, from whether the bytes can be UTF-8 at all; what is left is
// Windows-1252, of which Latin-1 is a part (Unicode's CP1252 mapping table).
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace lapwright::import {

// Of those behind windows_1252 only a whole text can be turned, and nothing in its bytes tells one from another.
enum class Encoding {
    utf8,
    utf16_little,
    utf16_big,
    windows_1252,
    windows_1250,
    shift_jis,
    euc_jp,
    dos_850,
    macintosh
};

inline constexpr std::string_view utf8_mark = "\xEF\xBB\xBF";

// Told from the first bytes of a text; a character that is cut at their end does not matter.
[[nodiscard]] Encoding detect_encoding(std::string_view head);

struct Utf8Text {
    std::string text;        // without a byte order mark
    std::size_t damaged = 0; // halves of characters that became U+FFFD or were cut at the end
};

// Whether a UTF-16 text begins with a byte order mark.
[[nodiscard]] bool has_mark(std::string_view bytes, Encoding encoding);

// Appends a piece of a UTF-16 text, without its byte order mark.  Only the last piece may end within a character.
void append_utf16(std::string_view piece, Encoding encoding, Utf8Text& text);

// Bytes of a UTF-16 piece up to the last whole character: half of one may stand at the end.
[[nodiscard]] std::size_t whole_characters(std::string_view piece, Encoding encoding);

[[nodiscard]] Utf8Text to_utf8(std::string_view bytes, Encoding encoding);

// The same of a text in a code page; nothing where it is none, or the operating system does not have it.
[[nodiscard]] std::optional<std::string> code_page_to_utf8(std::string_view bytes, Encoding encoding);

// The beginning of a UTF-8 text, of at most so many bytes, without a character that is cut.
[[nodiscard]] std::string_view whole_characters_of(std::string_view utf8, std::size_t max_bytes);

[[nodiscard]] bool has_high_bytes(std::string_view text);

} // namespace lapwright::import
