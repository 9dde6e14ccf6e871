// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/next_test_words.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/causes/next_test.h"
#include "core/causes/telling_order.h"
#include "core/findings/wording.h"

#include <algorithm>
#include <cmath>

namespace lapwright::findings {
namespace {

using base::Quantity;
using base::said;
using base::UnitSystem;
using causes::NextTest;
using causes::Term;
using causes::Test;

// To a digit, or two where the first is a 1.
std::string half_width(double value, int places) {
    const std::string both = with_half_width(0.0, value, places);
    return both.substr(both.find("±"));
}

std::string arrow(const causes::Width& width, double scale, int places, const std::string& unit) {
    return half_width(width.before * scale, places) + " → " + half_width(width.after * scale, places) + " " + unit;
}

std::string of_figure(const NextTest& t, UnitSystem units) {
    const auto shown = [&](const std::string& name, Quantity quantity) {
        const base::Unit unit = base::shown_unit(quantity, units);
        const double scale = std::abs(base::from_si(1.0, unit) - base::from_si(0.0, unit));
        return name + " " + arrow(t.of_figure, scale, 1, std::string(base::symbol(unit)));
    };
    switch (t.figure) {
    case Term::mass:
        return shown(said("mass"), Quantity::mass);
    case Term::power:
        return shown(said("power at the wheels"), Quantity::power);
    case Term::drag:
        return said("drag area") + " " + arrow(t.of_figure, 1.0, 3, "m²");
    default:
        return said("downforce area") + " " + arrow(t.of_figure, 1.0, 2, "m²");
    }
}

std::string promise(const NextTest& t, Term question, UnitSystem units) {
    if (t.test == Test::wing_trial)
        return said("what the change is worth on this track, to %1 s a lap", {half_width(t.of_figure.after, 2)});
    if (std::isnan(t.of_figure.before))
        return said("forces and power in place of figures per kilogram, and mass as a cause");
    std::string text = of_figure(t, units);
    if (t.of_question.information() > 0.05)
        text += said("; what %1 is worth %2", {causes::name(question), arrow(t.of_question, 1.0, 2, said("s a lap"))});
    return text;
}

std::string rounded_speed(double mps, UnitSystem units) {
    const double shown = base::from_si(mps, base::shown_unit(Quantity::speed, units));
    return base::shown_text(10.0 * std::round(shown / 10.0), 0);
}

std::string what_to_do(const NextTest& t, UnitSystem units) {
    switch (t.test) {
    case Test::enter_springs:
        return said("enter the spring rates in the setup (suspension travel was recorded)");
    case Test::weigh:
        return said("weigh the car with driver and fuel as driven, and enter the mass, good to 3 kg");
    case Test::coast_down:
        return said(
            "coast with the clutch down from %1 to %2 on the longest straight, and enter the drag area that it "
            "gives, 2 × mass × (deceleration − %3 m/s²) / (air density × speed²), good to %4 m²",
            {rounded_speed(t.from_mps, units),
             rounded_speed(t.to_mps, units) + " " + std::string(base::symbol(base::shown_unit(Quantity::speed, units))),
             base::shown_text(0.14, 2), base::shown_text(t.reading_sd, 2)});
    case Test::dynamometer:
        return said("enter the power at the wheels from a dynamometer, good to 3 %");
    case Test::wing_trial:
        return said("three laps, three with one step of the wing, three as before, held together as a trial");
    }
    return {};
}

std::string caution(Test test) {
    switch (test) {
    case Test::coast_down:
        return said("Only with a clear track behind and where the organiser allows it.");
    case Test::wing_trial:
        return said("Change front and rear together so that the balance stays, and feel it out before a quick lap.");
    default:
        return {};
    }
}

} // namespace

std::vector<TestWords> next_tests(const causes::Explanation& e, UnitSystem units, std::optional<causes::Side> my_car,
                                  std::size_t most) {
    std::vector<TestWords> all;
    for (const NextTest& t : e.next_tests.tests) {
        const bool of_a = t.side == causes::Side::a;
        if (all.size() == most || !speaks_to(my_car, of_a)) continue;
        all.push_back({base::labelled(of_a ? "A" : "B", what_to_do(t, units)), promise(t, e.next_tests.question, units),
                       caution(t.test)});
    }
    return all;
}

std::string sentence(const TestWords& words) {
    return said("%1: %2.", {words.what, words.promise}) + (words.caution.empty() ? "" : " " + words.caution);
}

} // namespace lapwright::findings
