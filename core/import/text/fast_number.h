// SPDX-License-Identifier: GPL-3.0-or-later
// The common number ("-12.345") read in a few instructions without a branch that depends on its length: sixteen bytes
// are looked at together, the digits of each side of the mark are gathered by three multiplications.  The result is
// exact: at most 15 digits m and at most 10^8, so m / 10^k is one correctly rounded division (Clinger 1990, "How to
// read floating point numbers accurately").  Everything else is left to std::from_chars by the caller.
#pragma once

#include <array>
#include <bit>
#include <cstdint>
#include <cstring>

#if defined(__SSE2__)
#include <emmintrin.h>
#endif

namespace lapwright::import {

// Bytes that scan_number may look at behind its start.
inline constexpr std::size_t fast_number_reach = 32;

namespace fast_number {

// Ten to the power of 0..8, then the same negative: the sign comes with the division, without a branch and with -0.
inline constexpr std::array<double, 18> powers{1e0,  1e1,  1e2,  1e3,  1e4,  1e5,  1e6,  1e7,  1e8,
                                               -1e0, -1e1, -1e2, -1e3, -1e4, -1e5, -1e6, -1e7, -1e8};
inline constexpr std::array<std::uint64_t, 9> whole_powers{1,      10,      100,      1000,     10000,
                                                           100000, 1000000, 10000000, 100000000};

inline std::uint64_t load(const char* from) {
    std::uint64_t word = 0;
    std::memcpy(&word, from, sizeof word);
    if constexpr (std::endian::native == std::endian::big) word = __builtin_bswap64(word);
    return word;
}

// Eight digit values, the first in the lowest byte, to their number: pairs, then fours, then all.
inline std::uint64_t gather(std::uint64_t digits) {
    digits = digits * 10U + (digits >> 8U);
    const std::uint64_t odd = (digits & 0x000000FF000000FFU) * 0x000F424000000064U;
    const std::uint64_t even = ((digits >> 16U) & 0x000000FF000000FFU) * 0x0000271000000001U;
    return (odd + even) >> 32U;
}

// The first `count` (0..8) characters from `from`, all digits, as a number.
inline std::uint64_t digits(const char* from, unsigned count) {
    const std::uint64_t word = load(from) ^ 0x3030303030303030U;
    // Two shifts, as one by 64 is undefined.
    return gather((word << (4U * (8U - count))) << (4U * (8U - count)));
}

struct Marks {
    std::uint32_t not_digit = 0; // a bit a byte, of sixteen
    std::uint32_t decimal = 0;
};

inline Marks look(const char* from, char decimal_mark) {
#if defined(__SSE2__)
    const __m128i bytes = _mm_loadu_si128(reinterpret_cast<const __m128i*>(from));
    const __m128i values = _mm_sub_epi8(bytes, _mm_set1_epi8('0'));
    const __m128i is_digit = _mm_cmpeq_epi8(_mm_min_epu8(values, _mm_set1_epi8(9)), values);
    const __m128i is_mark = _mm_cmpeq_epi8(bytes, _mm_set1_epi8(decimal_mark));
    return {static_cast<std::uint32_t>(_mm_movemask_epi8(is_digit)) ^ 0xFFFFU,
            static_cast<std::uint32_t>(_mm_movemask_epi8(is_mark))};
#else
    Marks marks;
    for (unsigned i = 0; i < 16; ++i) {
        const auto byte = static_cast<unsigned char>(from[i]);
        marks.not_digit |= static_cast<std::uint32_t>(byte - '0' > 9U) << i;
        marks.decimal |= static_cast<std::uint32_t>(from[i] == decimal_mark) << i;
    }
    return marks;
#endif
}

} // namespace fast_number

struct ScannedNumber {
    double value = 0.0;
    const char* end = nullptr; // the first character behind the number; null: not of the common form
};

// At least fast_number_reach bytes must be readable from `at`.
inline ScannedNumber scan_number(const char* at, char decimal_mark) {
    const auto negative = static_cast<unsigned>(*at == '-');
    const char* const first = at + negative;
    const auto marks = fast_number::look(first, decimal_mark);
    constexpr std::uint32_t beyond = 0x10000U;
    const auto whole = static_cast<unsigned>(std::countr_zero(marks.not_digit | beyond));
    const std::uint32_t behind = marks.not_digit & (marks.not_digit - 1U);
    const bool has_mark = ((marks.decimal >> whole) & 1U) != 0;
    const auto last = has_mark ? static_cast<unsigned>(std::countr_zero(behind | beyond)) : whole;
    const unsigned part = has_mark ? last - whole - 1U : 0U;
    if (whole > 8 || part > 8 || whole + part == 0 || last > 15) return {};
    const std::uint64_t number = fast_number::digits(first, whole) * fast_number::whole_powers[part] +
                                 fast_number::digits(first + whole + (has_mark ? 1U : 0U), part);
    const double value =
        static_cast<double>(static_cast<std::int64_t>(number)) / fast_number::powers[9U * negative + part];
    return {value, first + last};
}

} // namespace lapwright::import
