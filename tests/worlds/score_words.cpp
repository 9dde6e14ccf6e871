// SPDX-License-Identifier: GPL-3.0-or-later
// Text that people read: no number that is none, and no claim against the truth.
#include <array>
#include <string_view>

#include "tests/worlds/score_world.h"

namespace worlds {

void score_words(const World&, const Outcome& outcome, Score& score) {
    static constexpr std::array never{">nan", " nan", "-nan", " inf", "-inf", "+-", "engine used 1", "±0.00 "};
    for (const std::string_view word : never)
        if (outcome.sheet_text.find(word) != std::string::npos)
            score.breaches.push_back({"a word that no sheet says", std::string(word)});
    for (const lapwright::findings::Finding& finding : outcome.findings)
        if (finding.low && finding.high && (*finding.low > finding.seconds || finding.seconds > *finding.high))
            score.breaches.push_back({"a finding outside its own interval", finding.claim});
}

} // namespace worlds
