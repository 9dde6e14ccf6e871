// SPDX-License-Identifier: GPL-3.0-or-later
// What the causes are worth, in words, and the sentence on top of the Causes page.
#include "core/findings/wording.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {
namespace {

using causes::Cause;
using causes::Explanation;
using causes::Seconds;

constexpr double min_sentence_s = 0.05;

About about(Cause cause) {
    switch (cause) {
    case Cause::tyre_grip:
        return About::tyre_grip;
    case Cause::downforce:
        return About::downforce;
    case Cause::drag:
        return About::drag;
    case Cause::power:
        return About::power;
    case Cause::mass:
        return About::mass;
    }
    return About::driver_and_rest;
}

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

Certainty certainty_of_cause(const Seconds& s) {
    if (!s.told()) return Certainty::cannot_be_told;
    return certainty_of(s.value, s.low, s.high);
}

std::string figure_text(const car::CarFigure& f, base::Quantity quantity, base::UnitSystem units) {
    if (!f.told()) return {};
    const double scale = std::abs(base::from_si(1.0, base::shown_unit(quantity, units)) -
                                  base::from_si(0.0, base::shown_unit(quantity, units)));
    return with_half_width(base::from_si(f.value, base::shown_unit(quantity, units)), f.half_width() * scale, 3);
}

std::string area_text(const car::CarFigure& f) {
    if (!f.told()) return {};
    return with_half_width(f.value, f.half_width(), 3);
}

// "A 312 ±8, B 384 ±9 kW" for the figure behind a cause; empty where it is not known.
std::string both(const Explanation& e, Cause cause, base::UnitSystem units) {
    const auto of = [&](const car::CarFigures& f) -> std::string {
        switch (cause) {
        case Cause::tyre_grip:
            return area_text(f.grip);
        case Cause::downforce:
            return f.downforce_area_m2 ? area_text(*f.downforce_area_m2) : "";
        case Cause::drag:
            return f.drag_area_m2 ? area_text(*f.drag_area_m2) : "";
        case Cause::power:
            return f.power_w ? figure_text(*f.power_w, base::Quantity::power, units) : "";
        case Cause::mass:
            return f.mass_kg ? figure_text(*f.mass_kg, base::Quantity::mass, units) : "";
        }
        return "";
    };
    const std::string a = of(e.car_a);
    const std::string b = of(e.car_b);
    if (a.empty() || b.empty()) return {};
    std::string unit;
    std::string what(causes::name(cause));
    if (cause == Cause::downforce || cause == Cause::drag) {
        unit = " m²";
        what += " area";
    }
    if (cause == Cause::power) unit = " " + std::string(base::symbol(base::shown_unit(base::Quantity::power, units)));
    if (cause == Cause::mass) unit = " " + std::string(base::symbol(base::shown_unit(base::Quantity::mass, units)));
    return capital(what) + ": A " + a + ", B " + b + unit + ".";
}

// "10 % less drag is worth 0.12 s to A": what the loser's sensitivity says.
std::string sensitivity_text(const Explanation& e, bool loser_is_a, std::string_view word) {
    const auto& all = loser_is_a ? e.sensitivities_a : e.sensitivities_b;
    const auto found = std::ranges::find_if(all, [&](const auto& s) { return s.what.find(word) != std::string::npos; });
    if (found == all.end()) return {};
    const Seconds& lap = found->prediction.lap;
    if (!lap.told()) return {};
    const bool gains = lap.value < 0.0;
    return found->what + (gains ? " would be worth " : " would cost ") +
           amount(lap.value, std::max(0.02, lap.half_width())) + " a lap to " + (loser_is_a ? "A" : "B");
}

// What the loser of a cause may do to the car; "" where its effect cannot be told.
std::string next_try(const Explanation& e, Cause cause, bool a_wins) {
    const bool loser_is_a = !a_wins;
    const std::string loser = loser_is_a ? "A: " : "B: ";
    const auto with = [&](std::string_view word, const std::string& then) {
        const std::string effect = sensitivity_text(e, loser_is_a, word);
        return effect.empty() ? std::string() : loser + effect + then;
    };
    switch (cause) {
    case Cause::tyre_grip: {
        const std::string effect = sensitivity_text(e, loser_is_a, "grip");
        return loser + "hold tyre, pressure and temperature against the other car's" +
               (effect.empty() ? "" : "; " + effect) + ".";
    }
    case Cause::downforce:
        return with("downforce", "; try one step of the wing and come back to it.");
    case Cause::drag:
        return with("drag", "; try one step less wing and see what the corners pay.");
    case Cause::power:
        return e.per_kilogram ? "" : with("power", ".");
    case Cause::mass:
        return e.per_kilogram ? "" : with("mass", ".");
    }
    return {};
}

void place(Finding& f, const Explanation& e, const std::vector<double>& values) {
    const auto best = most_of(values, f.seconds >= 0.0 ? 1.0 : -1.0);
    if (!best) return;
    f.segment = best;
    f.start_m = e.segments[*best].segment.start_m;
    f.end_m = e.segments[*best].segment.end_m;
}

Finding of_seconds(About what, const Seconds& s) {
    Finding f;
    f.about = what;
    f.seconds = s.value;
    f.low = s.low;
    f.high = s.high;
    f.certainty = certainty_of_cause(s);
    f.worth = worth_text(s.value, s.low, s.high);
    return f;
}

Finding of_cause(const Explanation& e, Cause cause, base::UnitSystem units, std::optional<causes::Side> my_car) {
    const Seconds& s = e.total.of(cause);
    const std::vector<double> values = by_segment(e, cause);
    Finding f = of_seconds(about(cause), s);
    place(f, e, values);
    const std::string what = capital(std::string(causes::name(cause)));
    if (f.certainty == Certainty::cannot_be_told) {
        f.claim = "Whom " + std::string(causes::name(cause)) + " favours cannot be told from these laps.";
        f.try_next = "More clean laps, or one session with nothing else changed, would tell.";
    } else {
        f.claim = what + " " + std::string(words(f.certainty)) + " worth " + amount(s.value, s.half_width()) +
                  " a lap to " + letter_of(s.value) + ", most " + where_most(e, values) + ".";
        if (speaks_to(my_car, s.value < 0.0)) f.try_next = next_try(e, cause, s.value >= 0.0);
    }
    f.evidence = both(e, cause, units);
    return f;
}

std::string aero_claim(const Explanation& e, Certainty certainty) {
    const Seconds& aero = e.total.aero;
    const Seconds& downforce = e.total.of(Cause::downforce);
    const Seconds& drag = e.total.of(Cause::drag);
    const std::string who = letter_of(aero.value);
    std::string text =
        who + "'s aero " + std::string(words(certainty)) + " worth " + amount(aero.value, aero.half_width()) + " a lap";
    const double sign = aero.value >= 0.0 ? 1.0 : -1.0;
    const auto part = [&](const Seconds& s, Cause cause, const std::string& what) {
        if (certainty_of_cause(s) == Certainty::cannot_be_told) return "what " + what + " does to it cannot be told";
        return what + (s.value * sign >= 0.0 ? " earns " : " costs ") + amount(s.value, s.half_width()) + ", most " +
               where_most(e, by_segment(e, cause));
    };
    return text + ": " + part(downforce, Cause::downforce, "downforce") + "; " + part(drag, Cause::drag, "drag") + ".";
}

Finding of_aero(const Explanation& e, base::UnitSystem units) {
    Finding f = of_seconds(About::aero, e.total.aero);
    place(f, e, by_segment(e, &causes::Row::aero));
    f.claim = f.certainty == Certainty::cannot_be_told
                  ? "Whether the aero of either car pays off cannot be told from these laps."
                  : aero_claim(e, f.certainty);
    const std::string areas = both(e, Cause::downforce, units);
    f.evidence = areas + (areas.empty() ? "" : " ") + both(e, Cause::drag, units);
    return f;
}

// Grip and downforce act alike in most corners: their sum goes
// first where a part is known less well, and none more surely.
bool sum_is_known_better(const Explanation& e) {
    const Seconds& sum = e.total.cornering;
    if (!sum.told()) return false;
    const auto wider = [&](Cause part) {
        return !e.total.of(part).told() || e.total.of(part).half_width() > sum.half_width();
    };
    const auto surer = [&](Cause part) { return certainty_of_cause(e.total.of(part)) < certainty_of_cause(sum); };
    return (wider(Cause::tyre_grip) || wider(Cause::downforce)) && !surer(Cause::tyre_grip) && !surer(Cause::downforce);
}

std::string cornering_claim(const Explanation& e, Certainty certainty) {
    const Seconds& s = e.total.cornering;
    std::string text = "Tyre grip and downforce together ";
    text += certainty == Certainty::is ? "are" : "are probably";
    text += " worth " + worth_text(s.value, s.low, s.high) + " s a lap, most " +
            where_most(e, by_segment(e, &causes::Row::cornering));
    const Seconds& part = e.total.of(Cause::downforce);
    if (certainty_of_cause(part) != Certainty::is) return text + "; how much of it is downforce cannot be told.";
    return text + "; of it downforce " + worth_text(part.value, part.low, part.high) + ".";
}

Finding of_cornering(const Explanation& e, base::UnitSystem units) {
    Finding f = of_seconds(About::cornering, e.total.cornering);
    place(f, e, by_segment(e, &causes::Row::cornering));
    f.claim = f.certainty == Certainty::cannot_be_told
                  ? "Whom tyre grip and downforce together favour cannot be told from these laps."
                  : cornering_claim(e, f.certainty);
    const std::string grip = both(e, Cause::tyre_grip, units);
    f.evidence = grip + (grip.empty() ? "" : " ") + both(e, Cause::downforce, units);
    f.try_next = "A session with one step of wing and nothing else changed would tell the two apart.";
    return f;
}

Finding of_rest(const Explanation& e) {
    const Seconds& s = e.total.driver_and_rest;
    Finding f = of_seconds(About::driver_and_rest, s);
    const std::vector<double> values = by_segment(e, &causes::Row::driver_and_rest);
    place(f, e, values);
    f.claim = f.certainty == Certainty::cannot_be_told
                  ? "What the drivers make of it cannot be told apart from the cars."
                  : "Driver and rest " + std::string(words(f.certainty)) + " worth " + amount(s.value, s.half_width()) +
                        " a lap to " + letter_of(s.value) + ", most " + where_most(e, values) + ".";
    return f;
}

} // namespace

std::vector<Finding> cause_findings(const Explanation& explanation, base::UnitSystem units,
                                    std::optional<causes::Side> my_car) {
    if (explanation.same_car) return {};
    std::vector<Finding> all;
    // What was withheld makes no finding: the warnings say why.
    const causes::Row& total = explanation.total;
    if (sum_is_known_better(explanation)) all.push_back(of_cornering(explanation, units));
    if (total.aero.told()) all.push_back(of_aero(explanation, units));
    for (const Cause cause : causes::all_causes) {
        if (cause == Cause::mass && explanation.per_kilogram) continue;
        if (total.of(cause).told()) all.push_back(of_cause(explanation, cause, units, my_car));
    }
    if (total.driver_and_rest.told()) all.push_back(of_rest(explanation));
    return all;
}

std::string causes_sentence(const Explanation& e) {
    if (e.same_car) return "Both laps are of the same car in one session: what differs is the driving and chance.";
    const Certainty cornering = certainty_of_cause(e.total.cornering);
    if (sum_is_known_better(e) && cornering != Certainty::cannot_be_told &&
        std::abs(e.total.cornering.value) >= min_sentence_s)
        return cornering_claim(e, cornering);
    const Certainty aero = certainty_of_cause(e.total.aero);
    if (aero != Certainty::cannot_be_told && std::abs(e.total.aero.value) >= min_sentence_s) return aero_claim(e, aero);
    // Else the largest causes that can be told, each side's.
    std::vector<Cause> told;
    std::vector<std::string> untold;
    for (const Cause cause : causes::all_causes) {
        if (cause == Cause::mass && e.per_kilogram) continue;
        const Seconds& s = e.total.of(cause);
        if (certainty_of_cause(s) == Certainty::cannot_be_told) {
            if (!s.told() || s.half_width() > 0.1) untold.emplace_back(causes::name(cause));
        } else if (std::abs(s.value) >= min_sentence_s) {
            told.push_back(cause);
        }
    }
    std::ranges::sort(told,
                      [&](Cause x, Cause y) { return std::abs(e.total.of(x).value) > std::abs(e.total.of(y).value); });
    if (told.empty()) return "What makes the difference between the cars cannot be told from these laps.";
    std::string text;
    for (std::size_t i = 0; i < std::min<std::size_t>(2, told.size()); ++i) {
        const Seconds& s = e.total.of(told[i]);
        const std::string what(causes::name(told[i]));
        text += (i == 0 ? capital(what) : "; " + what) + " " + std::string(words(certainty_of_cause(s))) + " worth " +
                amount(s.value, s.half_width()) + " a lap to " + letter_of(s.value) + ", most " +
                where_most(e, by_segment(e, told[i]));
    }
    text += ".";
    if (!untold.empty()) {
        text += " What ";
        for (std::size_t i = 0; i < untold.size(); ++i)
            text += (i == 0 ? "" : i + 1 == untold.size() ? " and " : ", ") + untold[i];
        text += untold.size() == 1 ? " is worth cannot be told." : " are worth cannot be told.";
    }
    return text;
}

} // namespace lapwright::findings
