// SPDX-License-Identifier: GPL-3.0-or-later
// Words and numbers as HTML and SVG may hold them.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace lapwright::sheet {

// For the text of an element and for a quoted attribute: & < > " ' become references (OWASP Cross Site Scripting
// Prevention Cheat Sheet, output encoding for HTML contexts); what is no UTF-8 (RFC 3629) and what XML 1.0 (2.2 Char)
// does not allow becomes U+FFFD, so that the file stays well-formed whatever a logger wrote.
[[nodiscard]] std::string escaped(std::string_view text);

// 0x005a9e -> "#005a9e".
[[nodiscard]] std::string colour_text(std::uint32_t rgb);

// Bytes as base64 (RFC 4648, 4), for a data address.
[[nodiscard]] std::string base64(std::string_view bytes);

// A length of a drawing, two decimals.
[[nodiscard]] std::string coordinate(double value);

} // namespace lapwright::sheet
