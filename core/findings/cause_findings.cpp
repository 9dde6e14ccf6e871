// SPDX-License-Identifier: GPL-3.0-or-later
// What the causes are worth, in words, and the sentence on top of the Causes page.
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/findings/cause_words.h"

#include <algorithm>
#include <cmath>
#include <functional>

namespace lapwright::findings {
namespace {

using base::said;
using base::word;
using causes::Cause;
using causes::Explanation;
using causes::Seconds;
using causes::Term;

constexpr double min_sentence_s = 0.05;

// "10 % less drag is worth 0.12 s to A": what the loser's sensitivity says.
std::string sensitivity_text(const Explanation& e, bool loser_is_a, Cause cause) {
    const auto& all = loser_is_a ? e.sensitivities_a : e.sensitivities_b;
    const auto found = std::ranges::find(all, cause, &causes::Sensitivity::of);
    if (found == all.end()) return {};
    const Seconds& lap = found->prediction.lap;
    if (!lap.told()) return {};
    const bool gains = lap.value < 0.0;
    return said(gains ? word("%1 would be worth %2 a lap to %3") : word("%1 would cost %2 a lap to %3"),
                {found->what, amount(lap.value, std::max(0.02, lap.half_width())), loser_is_a ? "A" : "B"});
}

// What the loser of a cause may do to the car; "" where its effect cannot be told.
std::string next_try(const Explanation& e, Cause cause, bool a_wins) {
    const bool loser_is_a = !a_wins;
    const std::string loser = loser_is_a ? "A: " : "B: ";
    const std::string effect = sensitivity_text(e, loser_is_a, cause);
    const auto with = [&](const char* english) {
        return effect.empty() ? std::string() : loser + said(english, {effect});
    };
    switch (cause) {
    case Cause::tyre_grip:
        if (effect.empty()) return loser + said("hold tyre, pressure and temperature against the other car's.");
        return with(word("hold tyre, pressure and temperature against the other car's; %1."));
    case Cause::downforce:
        return with(word("%1; try one step of the wing and come back to it."));
    case Cause::drag:
        return with(word("%1; try one step less wing and see what the corners pay."));
    case Cause::power:
        return e.per_kilogram ? "" : with(word("%1."));
    case Cause::mass:
        return e.per_kilogram ? "" : with(word("%1."));
    }
    return {};
}

Finding of_cause(const Explanation& e, Cause cause, base::UnitSystem units, std::optional<causes::Side> my_car) {
    const Seconds& s = e.total.of(cause);
    Finding f = of_term(e, causes::term(cause));
    if (f.certainty == Certainty::cannot_be_told) {
        f.claim = said("Whom %1 favours cannot be told from these laps.", {causes::name(cause)});
        f.try_next = test_for(e, causes::term(cause), units, my_car);
    } else {
        f.claim = said(f.certainty == Certainty::is ? word("%1 is worth %2 a lap to %3, most %4.")
                                                    : word("%1 is probably worth %2 a lap to %3, most %4."),
                       {capital(causes::name(cause)), amount(s.value, s.half_width()), letter_of(s.value),
                        where_most(e, by_segment(e, causes::term(cause)))});
        if (speaks_to(my_car, s.value < 0.0)) f.try_next = next_try(e, cause, s.value >= 0.0);
    }
    f.evidence = figures_behind(e, cause, units);
    return f;
}

Finding of_rest(const Explanation& e) {
    const Seconds& s = e.total.driver_and_rest;
    const std::vector<double> values = rest_by_segment(e);
    Finding f = of_seconds(e, About::driver_and_rest, s, values);
    if (f.certainty == Certainty::cannot_be_told)
        f.claim = said("What the drivers make of it cannot be told apart from the cars.");
    else
        f.claim =
            said(f.certainty == Certainty::is ? word("%1 is worth %2 a lap to %3, most %4.")
                                              : word("%1 is probably worth %2 a lap to %3, most %4."),
                 {said("Driver and rest"), amount(s.value, s.half_width()), letter_of(s.value), where_most(e, values)});
    return f;
}

bool has_sum(const std::vector<causes::Column>& columns, Term sum) {
    return std::ranges::find(columns, sum, &causes::Column::term) != columns.end();
}

bool worth_a_sentence(const Seconds& s) {
    return certainty_of_cause(s) != Certainty::cannot_be_told && std::abs(s.value) >= min_sentence_s;
}

// The terms that stand on their own and can be told, the largest first.
std::vector<Term> told_terms(const Explanation& e) {
    std::vector<Term> told;
    for (const causes::Column& column : causes::columns(e.total)) {
        if (column.term == Term::mass && e.per_kilogram) continue;
        if (column.behind) continue;
        const bool corners = column.term == Term::cornering;
        const Term term = corners ? causes::comes_behind(e.total, column.term).value_or(column.term) : column.term;
        if (worth_a_sentence(causes::of(e.total, term))) told.push_back(term);
    }
    std::ranges::sort(told, std::greater<>{}, [&](Term t) { return std::abs(causes::of(e.total, t).value); });
    return told;
}

// Causes of which neither they themselves nor a sum that they come behind can be told.
std::vector<std::string> untold_causes(const Explanation& e) {
    std::vector<std::string> untold;
    for (const Cause cause : causes::all_causes) {
        if (cause == Cause::mass && e.per_kilogram) continue;
        const Seconds& s = e.total.of(cause);
        const auto sum = causes::comes_behind(e.total, causes::term(cause));
        if (certainty_of_cause(s) != Certainty::cannot_be_told || (sum && worth_a_sentence(causes::of(e.total, *sum))))
            continue;
        if (!s.told() || s.half_width() > 0.1) untold.emplace_back(causes::name(cause));
    }
    return untold;
}

std::string untold_words(const std::vector<std::string>& untold) {
    if (untold.empty()) return {};
    return " " + said(untold.size() == 1 ? word("What %1 is worth cannot be told.")
                                         : word("What %1 are worth cannot be told."),
                      {base::listed(untold)});
}

std::string worth_words(const Explanation& e, Term term) {
    const Seconds& s = causes::of(e.total, term);
    const bool one = term < Term::cornering || term == Term::cornering_as_driven;
    const bool surely = certainty_of_cause(s) == Certainty::is;
    const char* sure = one ? word("%1 is worth %2 a lap to %3, most %4") : word("%1 are worth %2 a lap to %3, most %4");
    const char* likely = one ? word("%1 is probably worth %2 a lap to %3, most %4")
                             : word("%1 are probably worth %2 a lap to %3, most %4");
    return said(surely ? sure : likely, {causes::name(term), amount(s.value, s.half_width()), letter_of(s.value),
                                         where_most(e, by_segment(e, term))});
}

} // namespace

std::vector<Finding> cause_findings(const Explanation& e, base::UnitSystem units, std::optional<causes::Side> my_car) {
    if (e.same_car) return {};
    std::vector<Finding> all;
    // What was withheld makes no finding: the warnings say why.
    const std::vector<causes::Column> columns = causes::columns(e.total);
    if (causes::comes_behind(e.total, Term::cornering) && has_sum(columns, Term::cornering))
        all.push_back(of_sum(e, Term::cornering_as_driven, units, my_car));
    for (const Term sum : {Term::cornering, Term::straights})
        if (has_sum(columns, sum)) all.push_back(of_sum(e, sum, units, my_car));
    if (e.total.aero.told()) all.push_back(of_sum(e, Term::aero, units, my_car));
    for (const Cause cause : causes::all_causes) {
        if (cause == Cause::mass && e.per_kilogram) continue;
        if (e.total.of(cause).told()) all.push_back(of_cause(e, cause, units, my_car));
    }
    if (e.total.driver_and_rest.told()) all.push_back(of_rest(e));
    return all;
}

std::string causes_sentence(const Explanation& e) {
    if (e.same_car)
        return said("Both laps are of the same car in one session: what differs is the driving and chance.");
    // Aero is what people ask for first; where its downforce cannot be told from the grip, what corners show.
    const bool split = causes::comes_behind(e.total, Term::downforce) != Term::cornering;
    const Term together = causes::comes_behind(e.total, Term::cornering).value_or(Term::cornering);
    const Term first = split ? Term::aero : together;
    const Seconds& s = causes::of(e.total, first);
    if (!causes::comes_behind(e.total, first) && worth_a_sentence(s)) return sum_claim(e, first, certainty_of_cause(s));
    const std::vector<Term> told = told_terms(e);
    if (told.empty()) return said("What makes the difference between the cars cannot be told from these laps.");
    const std::string first_words = capital(worth_words(e, told[0]));
    const std::string all =
        told.size() > 1 ? said("%1; %2.", {first_words, worth_words(e, told[1])}) : said("%1.", {first_words});
    return all + untold_words(untold_causes(e));
}

} // namespace lapwright::findings
