// SPDX-License-Identifier: GPL-3.0-or-later
// Positions as text: degrees with marks and hemisphere letters, degrees and decimal minutes, degrees-minutes-seconds.
// North and east positive.  ISO 6709 and common practice.
#pragma once

#include <optional>
#include <string_view>

namespace lapwright::import {

// O is east in German and Dutch (Ost, Oost) and west in French, Spanish and Italian (Ouest, Oeste, Ovest); Z is Dutch
// for south (zuid).
enum class Letters { english, o_is_east, o_is_west };

// "52.1234N", "52°07.404'N", "52 07.404 N", "52°07'24.2\"N", "N 52° 7' 24.2\"", "52.1234°": degrees, signed.
// A plain number without any letter or mark is no angle text (read_number takes it).
[[nodiscard]] std::optional<double> read_angle(std::string_view cell, char decimal_mark,
                                               Letters letters = Letters::english);

// One letter, in either case: north and east +1, south and west -1.
[[nodiscard]] std::optional<double> read_hemisphere(std::string_view cell, Letters letters = Letters::english);

} // namespace lapwright::import
