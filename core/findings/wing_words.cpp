// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/wing_words.h"

#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {
namespace {

using base::said;
using base::word;

// "0.8 m² more", "0.3 m² less", "as much as now"
std::string amount(double m2, const std::string& unit) {
    const std::string text = base::shown_text(std::abs(m2), 1);
    if (base::shows_zero(text)) return said("as much as now");
    return said(m2 > 0.0 ? word("%1 more") : word("%1 less"), {text + unit});
}

std::string signed_text(double m2) {
    const std::string text = base::shown_text(std::abs(m2), 1);
    if (base::shows_zero(text)) return text;
    return (m2 > 0.0 ? "+" : "−") + text;
}

} // namespace

std::string wing_sentence(const causes::AeroBalance& balance, const std::string& whose, bool on_a_tonne) {
    const std::string unit = " " + (on_a_tonne ? said("m² on a tonne") : "m²");
    if (!balance.untold.empty())
        return said("%1: how much downforce is best cannot be told: %2.", {whose, balance.untold});
    const std::string flat = said("Within %1 s of the quickest it is from %2 to %3.",
                                  {base::shown_text(causes::flat_s, 2), signed_text(balance.flat_from_m2),
                                   signed_text(balance.flat_to_m2) + unit});
    const bool sure = balance.gain.told() && balance.gain.high < 0.0;
    if (!sure || !balance.best_m2.told())
        return said("%1: whether more or less downforce than now is quicker here cannot be told.", {whose}) + " " +
               flat;
    const double half = balance.gain.half_width();
    const std::string gain =
        said("%1 s a lap", {base::shown_text(-balance.gain.value, std::max(1, base::decimals_for(half, 3))) + " " +
                            base::plus_minus_text(half, 3)});
    if (balance.at_the_end) {
        const double end =
            balance.best_m2.value > 0.0 ? balance.steps.back().downforce_m2 : balance.steps.front().downforce_m2;
        return said("%1 gets quicker all the way to %2, worth %3 there.", {whose, amount(end, unit), gain});
    }
    return said("%1 is quickest with downforce %2 (%3 to %4), worth %5.",
                {whose, amount(balance.best_m2.value, unit), signed_text(balance.best_m2.low),
                 signed_text(balance.best_m2.high), gain}) +
           " " + flat;
}

std::string drag_cost_text(const causes::DragCost& cost) {
    return said("%1 m² of drag for each m² of downforce", {base::shown_text(cost.per_downforce, 2) + " " +
                                                           base::plus_minus_text(base::half_width_95(cost.sd), 2)});
}

} // namespace lapwright::findings
