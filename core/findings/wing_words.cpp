// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/wing_words.h"

#include "core/base/display.h"
#include "core/base/number_text.h"
#include "core/base/wording.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {
namespace {

// "0.8 m² more", "0.3 m² less", "as much as now"
std::string amount(double m2, const std::string& unit) {
    const std::string text = base::fixed_text(std::abs(m2), 1);
    if (text.find_first_not_of("0.") == std::string::npos) return "as much as now";
    return text + unit + (m2 > 0.0 ? " more" : " less");
}

std::string signed_text(double m2) {
    const std::string text = base::fixed_text(std::abs(m2), 1);
    if (text.find_first_not_of("0.") == std::string::npos) return text;
    return (m2 > 0.0 ? "+" : "−") + text;
}

} // namespace

std::string wing_sentence(const causes::AeroBalance& balance, const std::string& whose, bool on_a_tonne) {
    const std::string unit = on_a_tonne ? " m² on a tonne" : " m²";
    if (!balance.untold.empty()) return whose + ": how much downforce is best cannot be told: " + balance.untold + ".";
    const std::string flat = "Within " + base::fixed_text(causes::flat_s, 2) + " s of the quickest it is from " +
                             signed_text(balance.flat_from_m2) + " to " + signed_text(balance.flat_to_m2) + unit + ".";
    const bool sure = balance.gain.told() && balance.gain.high < 0.0;
    if (!sure || !balance.best_m2.told())
        return whose + ": whether more or less downforce than now is quicker here cannot be told. " + flat;
    const double half = balance.gain.half_width();
    const std::string gain = base::fixed_text(-balance.gain.value, std::max(1, base::decimals_for(half, 3))) + " " +
                             base::plus_minus_text(half, 3) + " s a lap";
    if (balance.at_the_end) {
        const double end =
            balance.best_m2.value > 0.0 ? balance.steps.back().downforce_m2 : balance.steps.front().downforce_m2;
        return whose + " gets quicker all the way to " + amount(end, unit) + ", worth " + gain + " there.";
    }
    return whose + " is quickest with downforce " + amount(balance.best_m2.value, unit) + " (" +
           signed_text(balance.best_m2.low) + " to " + signed_text(balance.best_m2.high) + "), worth " + gain + ". " +
           flat;
}

std::string drag_cost_text(const causes::DragCost& cost) {
    return base::fixed_text(cost.per_downforce, 2) + " " + base::plus_minus_text(base::half_width_95(cost.sd), 2) +
           " m² of drag for each m² of downforce";
}

} // namespace lapwright::findings
