// SPDX-License-Identifier: GPL-3.0-or-later
// The answer in a sentence, built from the numbers and never claiming more than their error bars allow.
#pragma once

#include "core/comparison/comparison.h"
#include "core/comparison/repeatability.h"

#include <string>
#include <vector>

namespace lapwright::findings {

enum class Favours { a, b, neither };

struct Headline {
    Favours ahead = Favours::neither;
    std::string verdict;          // "A ahead by 0.48 s", "A and B are level"
    std::string uncertainty;      // "± 0.03", empty without error bars
    std::string sentence;         // where it comes from
    std::string deciding_segment; // its name, empty when none decides
};

[[nodiscard]] Headline headline(const comparison::Comparison& comparison,
                                const std::vector<comparison::Repeatability>& repeatability);

} // namespace lapwright::findings
