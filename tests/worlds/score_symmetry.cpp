// SPDX-License-Identifier: GPL-3.0-or-later
// Swapping A and B changes signs and letters, and nothing else.
#include <algorithm>
#include <cmath>

#include "tests/worlds/score_world.h"

namespace worlds {

using namespace lapwright;

namespace {

constexpr double tolerance = 1e-9;

bool same(double one, double other) {
    return std::abs(one - other) <= tolerance * std::max(1.0, std::abs(one)) || (std::isnan(one) && std::isnan(other));
}

bool same(const comparison::MaybeFigure& one, const comparison::MaybeFigure& other) {
    if (one.has_value() != other.has_value()) return false;
    return !one || (same(one->value, other->value) && one->sd.has_value() == other->sd.has_value() &&
                    (!one->sd || same(*one->sd, *other->sd)));
}

bool same(const comparison::SegmentFigures& one, const comparison::SegmentFigures& other) {
    return same(one.time_s, other.time_s) && same(one.entry_speed_mps, other.entry_speed_mps) &&
           same(one.exit_speed_mps, other.exit_speed_mps) && same(one.min_speed_mps, other.min_speed_mps) &&
           same(one.min_speed_at_m, other.min_speed_at_m) && same(one.top_speed_mps, other.top_speed_mps) &&
           same(one.lift_at_m, other.lift_at_m) && same(one.braking_point_m, other.braking_point_m) &&
           same(one.full_throttle_m, other.full_throttle_m) && same(one.shift_cost_s, other.shift_cost_s);
}

bool mirrored(const causes::Seconds& one, const causes::Seconds& other) {
    if (one.told() != other.told()) return false;
    return !one.told() || (same(one.value, -other.value) && same(one.low, -other.high) && same(one.high, -other.low));
}

std::string with_letters_swapped(std::string text) {
    const auto alone = [&](std::size_t i) {
        const auto letter = [&](std::size_t j) {
            return j < text.size() && std::isalpha(static_cast<unsigned char>(text[j]));
        };
        return (i == 0 || !letter(i - 1)) && !letter(i + 1);
    };
    for (std::size_t i = 0; i < text.size(); ++i)
        if ((text[i] == 'A' || text[i] == 'B') && alone(i)) text[i] = text[i] == 'A' ? 'B' : 'A';
    return text;
}

void compare_segments(const comparison::Comparison& one, const comparison::Comparison& other, Score& score) {
    if (one.segments.size() != other.segments.size()) {
        score.breaches.push_back({"asymmetric segments", "other segments"});
        return;
    }
    for (std::size_t i = 0; i < one.segments.size(); ++i) {
        const comparison::SegmentComparison& s = one.segments[i];
        const comparison::SegmentComparison& t = other.segments[i];
        if (s.segment.name != t.segment.name || !same(s.segment.start_m, t.segment.start_m) ||
            !same(s.gain_s.value, -t.gain_s.value) || !same(s.gain_s.sd.value_or(0.0), t.gain_s.sd.value_or(0.0)))
            score.breaches.push_back({"asymmetric gain", s.segment.name});
        if (!same(s.a, t.b) || !same(s.b, t.a)) score.breaches.push_back({"asymmetric figures", s.segment.name});
    }
}

void compare_causes(const causes::Explanation& one, const causes::Explanation& other, Score& score) {
    for (const causes::Cause cause : causes::all_causes)
        if (!mirrored(one.total.of(cause), other.total.of(cause)))
            score.breaches.push_back({"asymmetric cause", std::string(causes::name(cause))});
}

} // namespace

void score_symmetry(const Outcome& outcome, Score& score) {
    const analysis::Pairing& one = *outcome.pairing;
    const analysis::Pairing& other = *outcome.swapped;
    if (one.a.lap.number != other.b.lap.number || one.b.lap.number != other.a.lap.number)
        score.breaches.push_back({"asymmetric choice of laps", ""});
    const comparison::GapTrace& gap = one.comparison.gap;
    const comparison::GapTrace& back = other.comparison.gap;
    bool same_gap = gap.gap_s.size() == back.gap_s.size();
    for (std::size_t i = 0; same_gap && i < gap.gap_s.size(); ++i)
        same_gap = same(gap.gap_s[i], -back.gap_s[i]) && (gap.low_s.empty() || same(gap.low_s[i], -back.high_s[i]));
    if (!same_gap) score.breaches.push_back({"asymmetric gap", ""});
    compare_segments(one.comparison, other.comparison, score);
    const std::string said = one.headline.verdict + ". " + one.headline.sentence;
    const std::string back_said = with_letters_swapped(other.headline.verdict + ". " + other.headline.sentence);
    // "A and B are level" begins with A either way.
    if (said != back_said && one.headline.ahead != findings::Favours::neither)
        score.breaches.push_back({"asymmetric headline", said + " | " + back_said});
    if ((outcome.explanation == nullptr) != (outcome.swapped_explanation == nullptr))
        score.breaches.push_back({"asymmetric explanation", "one way round only"});
    else if (outcome.explanation)
        compare_causes(*outcome.explanation, *outcome.swapped_explanation, score);
}

} // namespace worlds
