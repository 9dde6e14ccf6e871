// SPDX-License-Identifier: GPL-3.0-or-later
// Whole numbers in as few bytes as they need: seven bits a byte, the lowest first, the eighth bit says that more
// follow; signs folded into the lowest bit, so that small numbers of either sign are short.  Sums and differences wrap
// around, so that every 64-bit pattern has one.
#pragma once

#include <bit>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace lapwright::book {

[[nodiscard]] constexpr std::uint64_t folded(std::uint64_t difference) {
    return (difference << 1U) ^ ((difference >> 63U) != 0 ? ~std::uint64_t{0} : 0);
}

[[nodiscard]] constexpr std::uint64_t unfolded(std::uint64_t value) {
    return (value >> 1U) ^ ((value & 1U) != 0 ? ~std::uint64_t{0} : 0);
}

[[nodiscard]] constexpr std::size_t varint_bytes(std::uint64_t value) {
    return (static_cast<std::size_t>(std::bit_width(value | 1U)) + 6) / 7;
}

inline void put_varint(std::string& bytes, std::uint64_t value) {
    while (value >= 0x80) {
        bytes.push_back(static_cast<char>(static_cast<unsigned char>(value | 0x80)));
        value >>= 7U;
    }
    bytes.push_back(static_cast<char>(static_cast<unsigned char>(value)));
}

// Takes one number off the front; nothing where none stands there whole.
[[nodiscard]] inline std::optional<std::uint64_t> take_varint(std::string_view& bytes) {
    std::uint64_t value = 0;
    for (std::size_t i = 0; i < bytes.size() && i < 10; ++i) {
        const auto byte = static_cast<unsigned char>(bytes[i]);
        value |= static_cast<std::uint64_t>(byte & 0x7FU) << (7 * i);
        if ((byte & 0x80U) == 0) {
            bytes.remove_prefix(i + 1);
            return value;
        }
    }
    return std::nullopt;
}

} // namespace lapwright::book
