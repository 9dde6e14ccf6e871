// SPDX-License-Identifier: GPL-3.0-or-later
// Values of a channel as whole numbers.  They were written as decimal text in some unit and are SI now, so most lie on
//     value(n) = (n / 10^decimals) · factor + offset        in double arithmetic, in this order
// for the unit's factor and offset; stamps that are a difference of two clock readings lie on n / 2^bits.  What is off
// by some units in the last place keeps that difference beside n: nothing is ever rounded.
#pragma once

#include <cstdint>
#include <optional>
#include <span>

namespace lapwright::book {

struct Quantisation {
    double factor = 1.0;
    double offset = 0.0;
    int decimals = 0;             // 0..max_decimals
    std::optional<int> bits = {}; // then the step is 1 / 2^bits and the rest says nothing

    [[nodiscard]] double value(std::int64_t n) const;
    // The nearest n; nothing where it is not finite or has more than 53 bits.
    [[nodiscard]] std::optional<std::int64_t> nearest(double value) const;
};

inline constexpr int max_decimals = 12;
inline constexpr int max_bits = 1060;

// The quantisation in which the values need the fewest bits,
// judged on a few stretches of them; nothing when none serves.
[[nodiscard]] std::optional<Quantisation> find_quantisation(std::span<const double> values);

} // namespace lapwright::book
