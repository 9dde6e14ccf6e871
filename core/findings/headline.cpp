// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/headline.h"

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
using comparison::Comparison;
using comparison::Figure;
using comparison::Repeatability;

constexpr int max_decimals = 3;
constexpr int decimals_without_sd = 2;
constexpr double min_worth_telling_s = 0.02;

// Letters of the side that a positive (negative) time favours.
std::string letter(double seconds) {
    return seconds >= 0.0 ? "A" : "B";
}

std::string seconds_text(const Figure& figure) {
    const int decimals =
        figure.sd ? base::decimals_for(base::half_width_95(*figure.sd), max_decimals) : decimals_without_sd;
    return base::shown_text(std::abs(figure.value), std::max(1, decimals)) + " s";
}

bool told_apart(const Figure& figure) {
    return base::stands_out(figure.value, figure.sd);
}

// "A was quicker there in 5 of 6 clean laps": the winner's laps against the middle of the other's.
std::string repeats(const Repeatability& r, bool a_wins) {
    const std::vector<double>& winner = a_wins ? r.times_a_s : r.times_b_s;
    std::vector<double> other = a_wins ? r.times_b_s : r.times_a_s;
    if (winner.size() < 2 || other.empty()) return {};
    std::ranges::sort(other);
    const double middle = 0.5 * (other[(other.size() - 1) / 2] + other[other.size() / 2]);
    const auto times = std::ranges::count_if(winner, [&](double t) { return t < middle; });
    const std::string of = base::integer_text(static_cast<std::int64_t>(winner.size()));
    const std::string who = a_wins ? "A" : "B";
    if (times == static_cast<long>(winner.size())) return said("%1 is quicker there in all %2 clean laps", {who, of});
    return said("%1 is quicker there in %2 of %3 clean laps", {who, base::integer_text(times), of});
}

// A difference that the laps do not repeat is only this lap's; the words say so.
bool is_sure(const Repeatability& r) {
    return !r.low_s || !r.high_s || *r.low_s > 0.0 || *r.high_s < 0.0;
}

std::optional<std::size_t> largest_for(const Comparison& comparison, bool a_wins) {
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < comparison.segments.size(); ++i) {
        const double gain = (a_wins ? 1.0 : -1.0) * comparison.segments[i].gain_s.value;
        if (gain <= min_worth_telling_s || !told_apart(comparison.segments[i].gain_s)) continue;
        if (!best || gain > (a_wins ? 1.0 : -1.0) * comparison.segments[*best].gain_s.value) best = i;
    }
    return best;
}

double straights_s(const Comparison& comparison) {
    double sum = 0.0;
    for (const auto& s : comparison.segments)
        if (s.segment.kind == track::SegmentKind::straight) sum += s.gain_s.value;
    return sum;
}

std::string deciding_sentence(const Comparison& comparison, const Repeatability& repeatability, std::size_t i,
                              bool a_wins) {
    const auto& s = comparison.segments[i];
    const double part = s.gain_s.value / comparison.gap_at_end_s.value;
    const std::string who = letter(a_wins ? 1.0 : -1.0);
    const char* most = is_sure(repeatability) ? word("Most of it is %1: %2 gains %3 there")
                                              : word("Most of it is probably %1: %2 gains %3 there");
    const char* largest = is_sure(repeatability) ? word("The largest part is %1: %2 gains %3 there")
                                                 : word("The largest part is probably %1: %2 gains %3 there");
    const std::string text = said(part > 0.5 ? most : largest, {s.segment.name, who, seconds_text(s.gain_s)});
    const std::string again = repeats(repeatability, a_wins);
    return again.empty() ? said("%1.", {text}) : said("%1; %2.", {text, again});
}

std::string straights_sentence(const Comparison& comparison, bool a_ahead) {
    const double straights = straights_s(comparison);
    if (std::abs(straights) < min_worth_telling_s) return {};
    const bool same = (straights > 0.0) == a_ahead;
    return " " + said(same ? word("%1 is also quicker on the straights, worth %2 s in all.")
                           : word("%1 is quicker on the straights, worth %2 s in all."),
                      {letter(straights), base::shown_text(std::abs(straights), decimals_without_sd)});
}

} // namespace

Headline headline(const Comparison& comparison, const std::vector<Repeatability>& repeatability) {
    Headline result;
    const Figure& gap = comparison.gap_at_end_s;
    if (gap.sd) result.uncertainty = base::plus_minus_text(base::half_width_95(*gap.sd), max_decimals);
    const bool apart = told_apart(gap) && std::abs(gap.value) >= 0.0005;
    const bool a_ahead = gap.value >= 0.0;
    if (!apart) {
        result.verdict = said("A and B are level");
        result.sentence = said("Which lap is quicker cannot be told from these recordings.");
    } else {
        result.ahead = a_ahead ? Favours::a : Favours::b;
        result.verdict = said("%1 ahead by %2", {letter(gap.value), seconds_text(gap)});
    }
    if (const auto best = largest_for(comparison, a_ahead)) {
        result.deciding_segment = comparison.segments[*best].segment.name;
        const Repeatability none;
        const Repeatability& r = *best < repeatability.size() ? repeatability[*best] : none;
        if (apart) result.sentence = deciding_sentence(comparison, r, *best, a_ahead);
    } else if (apart) {
        result.sentence = said("It is spread over the lap: no single segment stands out.");
    }
    if (apart) result.sentence += straights_sentence(comparison, a_ahead);
    return result;
}

} // namespace lapwright::findings
