// SPDX-License-Identifier: GPL-3.0-or-later
// Positions as text: degrees with marks and hemisphere letters, degrees and decimal minutes, degrees-minutes-seconds.
// North and east positive.  ISO 6709 and common practice.
#pragma once

#include <optional>
#include <string_view>

namespace lapwright::import {

// "52.1234N", "52°07.404'N", "52 07.404 N", "52°07'24.2\"N", "N 52° 7' 24.2\"", "52.1234°": degrees, signed.
// A plain number without any letter or mark is no angle text (read_number takes it).
[[nodiscard]] std::optional<double> read_angle(std::string_view cell, char decimal_mark);

// "N", "S", "E", "W" in either case: +1 or -1.  "O" is east in German and west in French: nothing.
[[nodiscard]] std::optional<double> read_hemisphere(std::string_view cell);

} // namespace lapwright::import
