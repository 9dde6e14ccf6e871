// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/comparison/prediction_score.h"

#include "core/math/distributions.h"
#include "core/math/share.h"

#include <algorithm>
#include <cmath>

namespace lapwright::comparison {

std::string_view key(Verdict verdict) {
    switch (verdict) {
    case Verdict::held:
        return "held";
    case Verdict::missed:
        return "missed";
    case Verdict::too_wide:
        break;
    }
    return "too_wide";
}

HeldAgainst held_against(const base::Estimate& predicted, const base::Estimate& observed) {
    HeldAgainst against;
    against.difference_s = observed.value - predicted.value;
    const bool slower = against.difference_s > 0.0;
    const double of_prediction = slower ? predicted.high - predicted.value : predicted.value - predicted.low;
    const double of_observation = slower ? observed.value - observed.low : observed.high - observed.value;
    against.half_width_s = std::hypot(of_prediction, of_observation);
    against.z = math::normal_quantile(0.975) * against.difference_s / against.half_width_s;
    if (observed.half_width() > std::max(predicted.half_width(), 0.5 * std::abs(predicted.value)))
        against.verdict = Verdict::too_wide;
    else
        against.verdict = std::abs(against.difference_s) <= against.half_width_s ? Verdict::held : Verdict::missed;
    return against;
}

Score score_of(std::span<const Verdict> verdicts) {
    Score score;
    score.held = static_cast<int>(std::ranges::count(verdicts, Verdict::held));
    score.too_wide = static_cast<int>(std::ranges::count(verdicts, Verdict::too_wide));
    score.judged = static_cast<int>(verdicts.size()) - score.too_wide;
    score.share = math::share_95(score.held, score.judged);
    return score;
}

} // namespace lapwright::comparison
