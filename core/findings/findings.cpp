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

// The parts of aero, which its claim tells with it.
void come_after(std::vector<Finding>& all, About whole, std::initializer_list<About> parts) {
    const auto sum = std::ranges::find(all, whole, &Finding::about);
    if (sum == all.end() || sum->certainty == Certainty::cannot_be_told) return;
    for (Finding& finding : all)
        if (std::ranges::find(parts, finding.about) != parts.end())
            finding.rank = std::min(finding.rank, 0.5 * sum->rank);
}

bool untold(const Finding& f) {
    return f.certainty == Certainty::cannot_be_told;
}

// What is known less well than a sum has no more weight than half of it, or, where the sum's winner cannot be told,
// than half of the first thing that can.
void come_behind(std::vector<Finding>& all) {
    double first = 0.0;
    for (const Finding& f : all)
        if (!f.behind && !untold(f)) first = std::max(first, f.rank);
    for (Finding& f : all) {
        if (!f.behind) continue;
        const auto sum = std::ranges::find(all, *f.behind, &Finding::about);
        const double most = sum != all.end() && !untold(*sum) ? sum->rank : first;
        f.rank = std::min(f.rank, 0.5 * most);
    }
}

// A sum whose winner cannot be told would be among the last: it goes before the first of its parts.  Some are parts of
// others, hence the order.
void sums_before_their_parts(std::vector<Finding>& all) {
    for (const About about : {About::aero, About::straights, About::cornering, About::cornering_as_driven}) {
        const auto sum = std::ranges::find(all, about, &Finding::about);
        const auto part = std::ranges::find(all, std::optional(about), &Finding::behind);
        if (sum != all.end() && part < sum) std::rotate(part, sum, std::next(sum));
    }
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
    come_after(all, About::aero, {About::downforce, About::drag});
    come_behind(all);
    std::erase_if(all, [](const Finding& f) { return f.about == About::segment && f.rank < min_worth_s; });
    std::ranges::stable_sort(
        all, [](const Finding& x, const Finding& y) { return untold(x) != untold(y) ? untold(y) : x.rank > y.rank; });
    sums_before_their_parts(all);
    return all;
}

} // namespace lapwright::findings
