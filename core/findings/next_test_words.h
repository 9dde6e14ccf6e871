// SPDX-License-Identifier: GPL-3.0-or-later
// The tests that would tell most, in words: what to do, what the answer is expected to be known to, and the cautions.
#pragma once

#include "core/base/display.h"
#include "core/causes/explanation.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::findings {

struct TestWords {
    std::string what;    // "A: enter the spring rates in the setup (suspension travel was recorded)"
    std::string promise; // "downforce area ±0.9 → ±0.3 m²; what tyre grip is worth ±1.9 → ±0.8 s a lap"
    std::string caution; // may be empty
};

// The first `most` of those that may be asked for: of one's own car, or of both.
[[nodiscard]] std::vector<TestWords> next_tests(const causes::Explanation& explanation, base::UnitSystem units,
                                                std::optional<causes::Side> my_car, std::size_t most = 2);
// "what: promise. caution"
[[nodiscard]] std::string sentence(const TestWords& words);

} // namespace lapwright::findings
