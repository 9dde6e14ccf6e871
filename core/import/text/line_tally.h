// SPDX-License-Identifier: GPL-3.0-or-later
// How often something was seen in a file, and on which lines first.
#pragma once

#include <cstddef>
#include <cstdint>
#include <vector>

namespace lapwright::import {

struct LineTally {
    std::size_t count = 0;
    std::vector<std::uint32_t> first_lines; // at most most_told_lines

    static constexpr std::size_t most_told_lines = 5;

    void add(std::uint32_t line);
    void add(const LineTally& later);
};

} // namespace lapwright::import
