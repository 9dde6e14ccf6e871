// SPDX-License-Identifier: GPL-3.0-or-later
// Where a series of stamps may be joined: it falls into sections at the clock's jumps and at long gaps.
#pragma once

#include <cstddef>
#include <span>
#include <vector>

namespace lapwright::motion {

// Samples first … end - 1.
struct Section {
    std::size_t first = 0;
    std::size_t end = 0;
};

// A gap longer than this many seconds, and than five usual steps, is not joined.
inline constexpr double longest_joined_gap_s = 0.5;

// In order and without holes; stamps strictly increasing.
[[nodiscard]] std::vector<Section> sections(std::span<const double> time_s, std::span<const double> splits_s);

} // namespace lapwright::motion
