// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/findings.h"

#include "core/base/wording.h"
#include "core/findings/wording.h"

#include <algorithm>
#include <cmath>
#include <initializer_list>

namespace lapwright::findings {
namespace {

constexpr double probable = 0.8;
constexpr double min_worth_s = 0.01;

} // namespace

namespace {

void come_after(std::vector<Finding>& all, About whole, std::initializer_list<About> parts) {
    const auto sum = std::ranges::find(all, whole, &Finding::about);
    if (sum == all.end() || sum->certainty == Certainty::cannot_be_told) return;
    for (Finding& finding : all)
        if (std::ranges::find(parts, finding.about) != parts.end())
            finding.rank = std::min(finding.rank, 0.5 * sum->rank);
}

} // namespace

std::string_view words(Certainty certainty) {
    switch (certainty) {
    case Certainty::is:
        return "is";
    case Certainty::is_probably:
        return "is probably";
    case Certainty::cannot_be_told:
        return "cannot be told";
    }
    return "cannot be told";
}

double chance_of_sign(double value, double low, double high) {
    // The side that the value lies on decides: intervals need not be even.
    const double reach = value >= 0.0 ? value - low : high - value;
    if (!std::isfinite(reach)) return 1.0;
    if (!(reach > 0.0)) return 1.0;
    return 0.5 * std::erfc(-std::abs(value) / (reach / base::half_width_95(1.0)) / std::sqrt(2.0));
}

Certainty certainty_of(double value, double low, double high) {
    if (low > 0.0 || high < 0.0 || !std::isfinite(low) || !std::isfinite(high)) return Certainty::is;
    return chance_of_sign(value, low, high) >= probable ? Certainty::is_probably : Certainty::cannot_be_told;
}

std::vector<Finding> findings(const comparison::Comparison& comparison,
                              const std::vector<comparison::Repeatability>& repeatability,
                              const causes::Explanation* explanation, base::UnitSystem units, const Advice& advice) {
    std::vector<Finding> all = segment_findings(comparison, repeatability, explanation, units, advice);
    if (explanation != nullptr)
        for (Finding& finding : cause_findings(*explanation, units, advice.my_car))
            all.push_back(std::move(finding));
    for (Finding& finding : all) {
        const double chance =
            chance_of_sign(finding.seconds, finding.low.value_or(-INFINITY), finding.high.value_or(INFINITY));
        // Twice the excess over a coin: what cannot be told is worth nothing.
        finding.rank = std::abs(finding.seconds) * (2.0 * chance - 1.0);
        finding.favours = finding.certainty != Certainty::is ? Favours::neither // no colour for what may be chance
                          : finding.seconds >= 0.0           ? Favours::a
                                                             : Favours::b;
    }
    // A part of a sum comes after it: downforce and drag after the aero, and all that leans on the split of grip and
    // downforce after the two together.
    come_after(all, About::aero, {About::downforce, About::drag});
    come_after(all, About::cornering, {About::tyre_grip, About::downforce, About::aero});
    std::erase_if(all, [](const Finding& f) { return f.about == About::segment && f.rank < min_worth_s; });
    std::ranges::stable_sort(all, [](const Finding& x, const Finding& y) {
        const bool untold_x = x.certainty == Certainty::cannot_be_told;
        const bool untold_y = y.certainty == Certainty::cannot_be_told;
        return untold_x != untold_y ? untold_y : x.rank > y.rank;
    });
    return all;
}

} // namespace lapwright::findings
