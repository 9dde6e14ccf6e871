// SPDX-License-Identifier: GPL-3.0-or-later
// What sums of two causes are worth, in words.
#include "core/base/translation.h"
#include "core/findings/cause_words.h"
#include "core/findings/next_test_words.h"

namespace lapwright::findings {
namespace {

using base::said;
using base::word;
using causes::Cause;
using causes::Explanation;
using causes::Seconds;
using causes::Term;

std::string aero_claim(const Explanation& e, Certainty certainty) {
    const Seconds& aero = e.total.aero;
    const std::string who = letter_of(aero.value);
    const double sign = aero.value >= 0.0 ? 1.0 : -1.0;
    const auto part = [&](Cause cause) {
        const Seconds& s = e.total.of(cause);
        const std::string what = causes::name(cause);
        if (certainty_of_cause(s) == Certainty::cannot_be_told)
            return said("what %1 does to it cannot be told", {what});
        return said(s.value * sign >= 0.0 ? word("%1 earns %2, most %3") : word("%1 costs %2, most %3"),
                    {what, amount(s.value, s.half_width()), where_most(e, by_segment(e, causes::term(cause)))});
    };
    return said(certainty == Certainty::is ? word("%1's aero is worth %2 a lap: %3; %4.")
                                           : word("%1's aero is probably worth %2 a lap: %3; %4."),
                {who, amount(aero.value, aero.half_width()), part(Cause::downforce), part(Cause::drag)});
}

// Of the part that people ask for; nothing where its own interval leaves the sign open.
std::string of_it(const Explanation& e, Cause part) {
    const Seconds& s = e.total.of(part);
    const std::string what = causes::name(part);
    if (certainty_of_cause(s) != Certainty::is) return said("; how much of it is %1 cannot be told.", {what});
    return said("; of it %1 %2.", {what, worth_text(s.value, s.low, s.high)});
}

std::string together_claim(const Explanation& e, Term sum, Certainty certainty) {
    const Seconds& s = causes::of(e.total, sum);
    return said(certainty == Certainty::is ? word("%1 together are worth %2 s a lap, most %3")
                                           : word("%1 together are probably worth %2 s a lap, most %3"),
                {capital(causes::name(sum)), worth_text(s.value, s.low, s.high), where_most(e, by_segment(e, sum))}) +
           of_it(e, sum == Term::cornering ? Cause::downforce : Cause::drag);
}

// Corners show how fast they are driven, not how much the driver keeps in hand.
std::string as_driven_claim(const Explanation& e, Certainty certainty) {
    const Seconds& s = e.total.cornering_as_driven;
    const Seconds& cars = e.total.cornering;
    std::string of_cars;
    if (cars.told())
        of_cars = said("; grip and downforce alone %1, because what either driver keeps in hand is not seen",
                       {worth_text(cars.value, cars.low, cars.high)});
    const char* sure = word("Cornering as driven, which is tyres, downforce and how much of them the drivers use, is "
                            "worth %1 a lap to %2, most %3%4.");
    const char* likely = word("Cornering as driven, which is tyres, downforce and how much of them the drivers use, is "
                              "probably worth %1 a lap to %2, most %3%4.");
    return said(certainty == Certainty::is ? sure : likely,
                {amount(s.value, s.half_width()), letter_of(s.value),
                 where_most(e, by_segment(e, Term::cornering_as_driven)), of_cars});
}

std::string untold_claim(Term sum) {
    if (sum == Term::cornering_as_driven) return said("Who corners faster cannot be told from these laps.");
    if (sum == Term::aero) return said("Whether the aero of either car pays off cannot be told from these laps.");
    return said("Whom %1 together favour cannot be told from these laps.", {causes::name(sum)});
}

std::string grip_as_used(const Explanation& e) {
    const auto text = [](const car::CarFigure& f) { return with_half_width(f.value, f.half_width(), 3); };
    if (!e.car_a.grip_as_used.told() || !e.car_b.grip_as_used.told()) return {};
    return said("Grip as used: A %1, B %2.", {text(e.car_a.grip_as_used), text(e.car_b.grip_as_used)});
}

std::string figures_of_both(const Explanation& e, Cause one, Cause other, base::UnitSystem units) {
    const std::string first = figures_behind(e, one, units);
    return first + (first.empty() ? "" : " ") + figures_behind(e, other, units);
}

} // namespace

std::string sum_claim(const Explanation& e, Term sum, Certainty certainty) {
    if (sum == Term::cornering_as_driven) return as_driven_claim(e, certainty);
    return sum == Term::aero ? aero_claim(e, certainty) : together_claim(e, sum, certainty);
}

std::string test_for(const Explanation& e, Term question, base::UnitSystem units, std::optional<causes::Side> my_car) {
    if (e.next_tests.question != question) return {};
    const std::vector<TestWords> tests = next_tests(e, units, my_car, 1);
    return tests.empty() ? std::string() : sentence(tests.front());
}

Finding of_sum(const Explanation& e, Term sum, base::UnitSystem units, std::optional<causes::Side> my_car) {
    Finding f = of_term(e, sum);
    f.claim = f.certainty == Certainty::cannot_be_told ? untold_claim(sum) : sum_claim(e, sum, f.certainty);
    switch (sum) {
    case Term::cornering_as_driven:
        f.evidence = grip_as_used(e);
        break;
    case Term::cornering:
        f.evidence = figures_of_both(e, Cause::tyre_grip, Cause::downforce, units);
        f.try_next =
            test_for(e, e.next_tests.question == Term::downforce ? Term::downforce : Term::tyre_grip, units, my_car);
        break;
    case Term::straights:
        f.evidence = figures_of_both(e, Cause::drag, Cause::power, units);
        break;
    default:
        f.evidence = figures_of_both(e, Cause::downforce, Cause::drag, units);
    }
    return f;
}

} // namespace lapwright::findings
