// SPDX-License-Identifier: GPL-3.0-or-later
// A channel's numbers in few bytes that give back every bit.  Values become whole numbers (quantisation.h), these their
// first or second differences, these varints (varint.h), and all of it is deflated; values that are not quantised are
// deflated as eight planes of bytes: of their patterns, or of the differences of these.
//
// Layout before deflating: one byte for the form ('d' decimal steps, 'b' binary steps, 'p' planes, 's' planes of
// differences); for 'd' factor and offset (8 bytes each, little-endian IEEE 754) and decimals (1 byte), for 'b' bits
// (2 bytes), then order of differences (1 byte), the varints, and 0, or 1 and as many varints of what each value is
// off, in units of the last place; for 'p' the planes, for 's' the order of differences (1 byte) and the planes.
#pragma once

#include <cstdint>
#include <optional>
#include <span>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::book {

[[nodiscard]] std::string packed(std::span<const double> values);
[[nodiscard]] std::string packed(std::span<const std::uint32_t> numbers);

// Nothing where these bytes are not `count` packed numbers.
[[nodiscard]] std::optional<std::vector<double>> unpacked_values(std::string_view bytes, std::size_t count);
[[nodiscard]] std::optional<std::vector<std::uint32_t>> unpacked_numbers(std::string_view bytes, std::size_t count);

} // namespace lapwright::book
