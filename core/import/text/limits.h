// SPDX-License-Identifier: GPL-3.0-or-later
// What a file may be at most.  Beyond these the import refuses in a sentence; nothing here grows with a hostile file.
#pragma once

#include <cstddef>

namespace lapwright::import {

inline constexpr std::size_t largest_file_bytes = std::size_t{4} << 30U;
inline constexpr std::size_t largest_rows = 50'000'000;
inline constexpr std::size_t max_columns = 4096;
// Values in a table: rows × columns.  8 bytes each, so at most 4 GiB of columns.
inline constexpr std::size_t max_values = std::size_t{512} << 20U;
// A line of this length is always read; one of more than twice as much is always refused.
inline constexpr std::size_t longest_line_bytes = std::size_t{1} << 20U;
inline constexpr std::size_t longest_cell_bytes = 4096;
inline constexpr std::size_t max_preamble_lines = 400;
inline constexpr std::size_t max_facts = 400;
inline constexpr std::size_t longest_fact_bytes = 1000;
// A value beyond this is damage, not a measurement: nanoseconds since 1970 are 1.8e18.
inline constexpr double largest_magnitude = 1e19;

} // namespace lapwright::import
