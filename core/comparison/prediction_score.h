// SPDX-License-Identifier: GPL-3.0-or-later
// A predicted change of the lap time against the one that was observed, and the score of many.
//
// The rule.  Both are differences of lap times with 95 % intervals, negative: quicker, and both may err: observed less
// predicted is held against the root of the sum of squares of the two half-widths, each taken on the side that faces
// the other.  Held: it lies within.  An observation that is wider than the prediction and than half of what was
// predicted would agree with a wrong prediction too: it cannot be told, and does not count.
#pragma once

#include "core/base/estimate.h"

#include <span>
#include <string_view>

namespace lapwright::comparison {

enum class Verdict { held, missed, too_wide };

[[nodiscard]] std::string_view key(Verdict verdict); // as in JSON: "held"

struct HeldAgainst {
    double difference_s = 0.0; // observed less predicted
    double half_width_s = 0.0; // of it, 95 %
    double z = 0.0;            // in standard deviations
    Verdict verdict{};
};

// Both told.
[[nodiscard]] HeldAgainst held_against(const base::Estimate& predicted, const base::Estimate& observed);

struct Score {
    int held = 0;
    int judged = 0;
    int too_wide = 0;
    base::Estimate share = {}; // that held, with the interval of core/math/share.h; NaN where none was judged
};

[[nodiscard]] Score score_of(std::span<const Verdict> verdicts);

} // namespace lapwright::comparison
