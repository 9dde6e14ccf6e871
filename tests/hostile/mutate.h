// SPDX-License-Identifier: GPL-3.0-or-later
// A good file made bad in one of many ways: what exports, cables, editors and people do to files, and what an attacker
// would.  The same seed gives the same mutant.
#pragma once

#include <cstdint>
#include <string>

namespace hostile {

struct Mutant {
    std::string text;
    std::string what; // "column 3 blanked"
};

// A table with a header line; cells parted by `delimiter`.
[[nodiscard]] Mutant mutate_table(const std::string& text, char delimiter, std::uint64_t seed);
// Text of lines (GPX, NMEA): lines lost, doubled, shuffled, cut, bytes flipped.
[[nodiscard]] Mutant mutate_lines(const std::string& text, std::uint64_t seed);
// A JSON document: values of other kinds, huge ones, members lost, nested without end.
[[nodiscard]] Mutant mutate_json(const std::string& text, std::uint64_t seed);

} // namespace hostile
