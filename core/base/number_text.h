// SPDX-License-Identifier: GPL-3.0-or-later
// Numbers to text and back without the locale: the window sets one, the command line does not, and both must agree.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lapwright::base {

// The whole of `text` as a finite decimal number ("-1.5e3", "+2"), a point as decimal mark; else nothing.
[[nodiscard]] std::optional<double> parse_number(std::string_view text);

// The whole of `text` as a decimal integer; else nothing.
[[nodiscard]] std::optional<std::int64_t> parse_integer(std::string_view text);

// Fixed notation with `decimals` (0..17) digits behind the point, rounded half away from zero as the binary value
// demands;
// "-0.00" is written "0.00".  Not finite: an em dash.
[[nodiscard]] std::string fixed_text(double value, int decimals);

// The same for people to read: with the language's decimal mark, which on the command line is a point.
[[nodiscard]] std::string shown_text(double value, int decimals);
// Whether a figure in either mark shows no digit but 0.
[[nodiscard]] bool shows_zero(std::string_view figure);

// The shortest text that reads back as the same double.
[[nodiscard]] std::string exact_text(double value);

[[nodiscard]] std::string integer_text(std::int64_t value);

} // namespace lapwright::base
