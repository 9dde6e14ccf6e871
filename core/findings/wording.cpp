// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/wording.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {
namespace {

using base::said;

constexpr double mostly = 0.6;  // this share of a cause lies on the straights: say so
constexpr double second = 0.55; // a second place is named when it is worth this much of the first

bool straight(const causes::SegmentRow& row) {
    return row.segment.kind == track::SegmentKind::straight;
}

} // namespace

bool speaks_to(std::optional<causes::Side> my_car, bool side_is_a) {
    return !my_car || (*my_car == causes::Side::a) == side_is_a;
}

std::string letter_of(double seconds) {
    return seconds >= 0.0 ? "A" : "B";
}

std::string with_minus(std::string figure) {
    if (!figure.starts_with('-')) return figure;
    const bool nothing = figure.find_first_of("123456789") >= figure.find(' ');
    return (nothing ? "" : "−") + figure.substr(1);
}

std::string with_half_width(double value, double half_width, int max_decimals) {
    double step = 1.0;
    if (std::isfinite(half_width) && half_width >= 1.95) {
        step = std::pow(10.0, std::floor(std::log10(half_width)));
        if (half_width / step < 1.95) step /= 10.0; // as decimals_for: a leading 1 keeps a second digit
    }
    const int decimals = base::decimals_for(half_width, max_decimals);
    const auto rounded = [&](double x) { return base::shown_text(step * std::round(x / step), decimals); };
    if (step == 1.0)
        return with_minus(base::shown_text(value, decimals)) + " ±" + base::shown_text(half_width, decimals);
    return with_minus(rounded(value)) + " ±" + rounded(half_width);
}

int seconds_decimals(double half_width, int max_decimals) {
    return std::clamp(base::decimals_for(half_width, max_decimals), 1, max_decimals);
}

std::string amount(double seconds, double half_width) {
    const int decimals = seconds_decimals(half_width);
    return base::shown_text(std::abs(seconds), decimals) + " s";
}

std::string worth_text(double seconds, double low, double high) {
    const double half = 0.5 * (high - low);
    const bool known = std::isfinite(half);
    const int decimals = known ? seconds_decimals(half) : 2;
    const std::string size = base::shown_text(std::abs(seconds), decimals);
    // What is rounded to nothing has no winner.
    const bool nothing = size.find_first_of("123456789") == std::string::npos;
    return (nothing ? "" : letter_of(seconds) + " ") + size + (known ? " ±" + base::shown_text(half, decimals) : "");
}

std::vector<double> by_segment(const causes::Explanation& explanation, causes::Term term) {
    std::vector<double> values;
    for (const causes::SegmentRow& row : explanation.segments) {
        const causes::Seconds& s = causes::of(row.row, term);
        values.push_back(s.told() ? s.value : 0.0);
    }
    return values;
}

std::vector<double> rest_by_segment(const causes::Explanation& explanation) {
    std::vector<double> values;
    for (const causes::SegmentRow& row : explanation.segments)
        values.push_back(row.row.driver_and_rest.told() ? row.row.driver_and_rest.value : 0.0);
    return values;
}

std::optional<std::size_t> most_of(std::span<const double> by_segment, double sign) {
    std::optional<std::size_t> best;
    for (std::size_t k = 0; k < by_segment.size(); ++k)
        if (by_segment[k] * sign > 0.0 && (!best || by_segment[k] * sign > by_segment[*best] * sign)) best = k;
    return best;
}

std::string where_most(const causes::Explanation& explanation, std::span<const double> by_segment) {
    double total = 0.0;
    double on_straights = 0.0;
    for (std::size_t k = 0; k < by_segment.size(); ++k) {
        total += by_segment[k];
        if (straight(explanation.segments[k])) on_straights += by_segment[k];
    }
    const double sign = total >= 0.0 ? 1.0 : -1.0;
    if (on_straights * sign > mostly * total * sign) return said("on the straights");
    const auto first = most_of(by_segment, sign);
    if (!first) return said("nowhere in particular");
    std::vector<double> rest(by_segment.begin(), by_segment.end());
    rest[*first] = 0.0;
    const std::string& name = explanation.segments[*first].segment.name;
    const auto next = most_of(rest, sign);
    if (next && rest[*next] * sign > second * by_segment[*first] * sign)
        return said("in %1 and %2", {name, explanation.segments[*next].segment.name});
    return said("in %1", {name});
}

} // namespace lapwright::findings
