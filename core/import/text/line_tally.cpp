// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/line_tally.h"

namespace lapwright::import {

void LineTally::add(std::uint32_t line) {
    if (first_lines.size() < most_told_lines) first_lines.push_back(line);
    ++count;
}

void LineTally::add(const LineTally& later) {
    for (const std::uint32_t line : later.first_lines)
        if (first_lines.size() < most_told_lines) first_lines.push_back(line);
    count += later.count;
}

} // namespace lapwright::import
