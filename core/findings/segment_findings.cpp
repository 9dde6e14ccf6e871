// SPDX-License-Identifier: GPL-3.0-or-later
// What the two laps show in a segment: who won time there, what he did otherwise, and what the other may try.
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/findings/wording.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {
namespace {

using base::Quantity;
using base::said;
using base::word;
using comparison::Figure;
using comparison::MaybeFigure;
using comparison::SegmentFigures;

constexpr double min_speed_mps = 0.4;
constexpr double min_place_m = 4.0;
constexpr double min_coasting_s = 0.1;

// A difference that its own error allows to be named.
std::optional<double> difference(const MaybeFigure& winner, const MaybeFigure& loser, double least) {
    if (!winner || !loser) return std::nullopt;
    const double d = winner->value - loser->value;
    const double error = base::half_width_95(std::hypot(winner->sd.value_or(0.0), loser->sd.value_or(0.0)));
    if (std::abs(d) < std::max(least, error)) return std::nullopt;
    return d;
}

struct Told {
    std::vector<std::string> evidence;
    std::vector<std::string> tries; // for the loser
};

// How far the loser may be asked to go.
struct Reach {
    double share = 0.0; // of the difference, that is the driver's and not the car's; 0: nothing is asked
    comparison::OwnReserve own;
};

constexpr double small_speed_mps = 0.5; // beyond what the driver has done on the day
constexpr double small_place_m = 3.0;

// "up to 1.3 km/h more …, as on another of your laps", or a first small step beyond them.
struct Step {
    double size = 0.0;
    bool seen; // on another of the own clean laps
};

Step step_of(double difference, double own, double small, double share) {
    const double wish = std::abs(difference) * share;
    if (own >= small) return {std::min(wish, own), true};
    return {std::min(wish, small), false};
}

// The wish, with how far the driver has already been.
std::string as_step(const std::string& wish, const Step& step) {
    return said(step.seen ? word("%1, as on another of your clean laps") : word("%1 as a first step"), {wish});
}

std::string speed_text(double mps, base::UnitSystem units) {
    return base::figure_with_unit(std::abs(mps), Quantity::speed, units, 1);
}

std::string length_text(double m, base::UnitSystem units) {
    return base::figure_with_unit(std::abs(m), Quantity::length, units, 0);
}

struct SpeedWords {
    const char* quicker;
    const char* slower;
};

void tell_speed(Told& told, const SpeedWords& words, const MaybeFigure& w, const MaybeFigure& l,
                base::UnitSystem units) {
    const auto d = difference(w, l, min_speed_mps);
    if (!d) return;
    told.evidence.push_back(said(*d > 0.0 ? words.quicker : words.slower, {speed_text(*d, units)}));
}

void tell_corner(Told& told, const SegmentFigures& w, const SegmentFigures& l, const Reach& reach,
                 base::UnitSystem units) {
    const auto ask = [&](const char* english, const Step& step, const std::string& size) {
        if (reach.share > 0.0) told.tries.push_back(as_step(said(english, {size}), step));
    };
    const SpeedWords slowest{word("quicker at the slowest point by %1"), word("slower at the slowest point by %1")};
    tell_speed(told, slowest, w.min_speed_mps, l.min_speed_mps, units);
    if (const auto d = difference(w.min_speed_mps, l.min_speed_mps, min_speed_mps); d && *d > 0.0)
        if (const Step s = step_of(*d, reach.own.min_speed_mps, small_speed_mps, reach.share); s.size > 0.0)
            ask(word("carry up to %1 more to the slowest point"), s, speed_text(s.size, units));
    if (const auto d = difference(w.braking_point_m, l.braking_point_m, min_place_m)) {
        told.evidence.push_back(
            said(*d > 0.0 ? word("brakes %1 later") : word("brakes %1 earlier"), {length_text(*d, units)}));
        if (*d > 0.0)
            if (const Step s = step_of(*d, reach.own.braking_m, small_place_m, reach.share); s.size >= 1.0)
                ask(word("move the braking point up to %1 later"), s, length_text(s.size, units));
    }
    if (const auto d = difference(w.full_throttle_m, l.full_throttle_m, min_place_m)) {
        told.evidence.push_back(said(*d < 0.0 ? word("full throttle %1 sooner") : word("full throttle %1 later"),
                                     {length_text(*d, units)}));
        if (*d < 0.0)
            if (const Step s = step_of(*d, reach.own.throttle_m, small_place_m, reach.share); s.size >= 1.0)
                ask(word("open the throttle up to %1 sooner"), s, length_text(s.size, units));
    }
    if (const auto d = difference(w.coasting_s, l.coasting_s, min_coasting_s)) {
        told.evidence.push_back(said(*d < 0.0 ? word("%1 s less coasting") : word("%1 s more coasting"),
                                     {base::shown_text(std::abs(*d), 2)}));
        if (*d < 0.0 && reach.share > 0.0) told.tries.push_back(said("coast less between throttle and brake"));
    }
    tell_speed(told, {word("quicker at the exit by %1"), word("slower at the exit by %1")}, w.exit_speed_mps,
               l.exit_speed_mps, units);
}

void tell_straight(Told& told, const SegmentFigures& w, const SegmentFigures& l, const Reach& reach,
                   base::UnitSystem units) {
    tell_speed(told, {word("quicker onto it by %1"), word("slower onto it by %1")}, w.entry_speed_mps,
               l.entry_speed_mps, units);
    tell_speed(told, {word("quicker at the top by %1"), word("slower at the top by %1")}, w.top_speed_mps,
               l.top_speed_mps, units);
    if (const auto d = difference(w.entry_speed_mps, l.entry_speed_mps, min_speed_mps); d && *d > 0.0)
        if (const Step s = step_of(*d, reach.own.entry_speed_mps, small_speed_mps, reach.share); s.size > 0.0)
            told.tries.push_back(
                as_step(said("look for up to %1 at the exit of the corner before it", {speed_text(s.size, units)}), s));
    if (const auto d = difference(w.shifts, l.shifts, 0.5); d && *d < 0.0)
        told.evidence.push_back(said("shifts less often"));
}

std::string joined(const std::vector<std::string>& parts, const std::string& between, std::size_t most) {
    std::string text;
    for (std::size_t i = 0; i < std::min(parts.size(), most); ++i)
        text += (i > 0 ? between : std::string()) + parts[i];
    return text;
}

// Whether other laps say the same; empty without laps.
std::string repeats(const comparison::Repeatability& r, double seconds) {
    if (!r.chance_a_wins || r.times_a_s.size() + r.times_b_s.size() < 4) return {};
    const double chance = seconds >= 0.0 ? *r.chance_a_wins : 1.0 - *r.chance_a_wins;
    return said("quicker there in %1 % of all pairs of clean laps", {base::shown_text(100.0 * chance, 0)});
}

// What the laps do not repeat is this lap's only: the interval over laps widens the claim's.
Certainty certainty_in(double seconds, double low, double high, const comparison::Repeatability& r) {
    const Certainty measured = certainty_of(seconds, low, high);
    if (measured == Certainty::cannot_be_told || !r.low_s || !r.high_s || !r.mean_difference_s) return measured;
    const bool same_sign = (*r.mean_difference_s >= 0.0) == (seconds >= 0.0);
    const Certainty repeated = certainty_of(*r.mean_difference_s, *r.low_s, *r.high_s);
    if (!same_sign || repeated == Certainty::cannot_be_told) return Certainty::is_probably;
    return std::max(measured, repeated);
}

} // namespace

namespace {

// Share of the gain in a segment that is the drivers': all of it in one car, none where that cannot be told.
double drivers_share(const causes::Explanation* e, std::size_t k, double gain) {
    if (e == nullptr || k >= e->segments.size() || gain == 0.0) return 0.0;
    if (e->same_car) return 1.0;
    const causes::Seconds& own = e->segments[k].row.driver_and_rest;
    if (!own.told() || (own.value > 0.0) != (gain > 0.0)) return 0.0;
    if (certainty_of(own.value, own.low, own.high) == Certainty::cannot_be_told) return 0.0;
    return std::min(1.0, own.value / gain);
}

Reach reach_of(const causes::Explanation* e, const Advice& advice, std::size_t k, double gain) {
    const auto& reserve = gain >= 0.0 ? advice.reserve_b : advice.reserve_a; // the loser's
    if (!speaks_to(advice.my_car, gain < 0.0)) return {};
    return {drivers_share(e, k, gain), k < reserve.size() ? reserve[k] : comparison::OwnReserve{}};
}

} // namespace

std::vector<Finding> segment_findings(const comparison::Comparison& comparison,
                                      const std::vector<comparison::Repeatability>& repeatability,
                                      const causes::Explanation* explanation, base::UnitSystem units,
                                      const Advice& advice) {
    std::vector<Finding> all;
    for (std::size_t k = 0; k < comparison.segments.size(); ++k) {
        const comparison::SegmentComparison& s = comparison.segments[k];
        const comparison::Repeatability none;
        const comparison::Repeatability& r = k < repeatability.size() ? repeatability[k] : none;
        Finding f;
        f.seconds = s.gain_s.value;
        if (s.gain_s.sd) {
            f.low = f.seconds - base::half_width_95(*s.gain_s.sd);
            f.high = f.seconds + base::half_width_95(*s.gain_s.sd);
        }
        const double low = f.low.value_or(-INFINITY);
        const double high = f.high.value_or(INFINITY);
        f.certainty = certainty_in(f.seconds, low, high, r);
        f.segment = k;
        f.start_m = s.segment.start_m;
        f.end_m = s.segment.end_m;
        f.worth = worth_text(f.seconds, low, high);
        const bool a_wins = f.seconds >= 0.0;
        const std::string winner = a_wins ? "A" : "B";
        const std::string half = amount(f.seconds, f.low ? 0.5 * (high - low) : 0.01);
        if (f.certainty == Certainty::cannot_be_told)
            f.claim = said("Who is quicker in %1 cannot be told.", {s.segment.name});
        else
            f.claim = said(f.certainty == Certainty::is ? word("%1 is quicker in %2, by %3.")
                                                        : word("%1 is probably quicker in %2, by %3."),
                           {winner, s.segment.name, half});
        Told told;
        const Reach reach = reach_of(explanation, advice, k, f.seconds);
        const SegmentFigures& w = a_wins ? s.a : s.b;
        const SegmentFigures& l = a_wins ? s.b : s.a;
        if (s.segment.kind == track::SegmentKind::corner)
            tell_corner(told, w, l, reach, units);
        else
            tell_straight(told, w, l, reach, units);
        if (const std::string again = repeats(r, f.seconds); !again.empty()) told.evidence.push_back(again);
        if (!told.evidence.empty()) f.evidence = said("%1: %2.", {winner, joined(told.evidence, said(", "), 5)});
        if (!told.tries.empty() && f.certainty != Certainty::cannot_be_told)
            f.try_next =
                said("%1, where you judge it safe: %2.", {a_wins ? "B" : "A", joined(told.tries, said("; "), 2)});
        all.push_back(std::move(f));
    }
    return all;
}

} // namespace lapwright::findings
