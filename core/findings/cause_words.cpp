// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/cause_words.h"

#include "core/base/translation.h"

#include <algorithm>

namespace lapwright::findings {
namespace {

using base::said;
using causes::Cause;
using causes::Explanation;
using causes::Seconds;
using causes::Term;

About about(Term term) {
    switch (term) {
    case Term::tyre_grip:
        return About::tyre_grip;
    case Term::downforce:
        return About::downforce;
    case Term::drag:
        return About::drag;
    case Term::power:
        return About::power;
    case Term::mass:
        return About::mass;
    case Term::cornering:
        return About::cornering;
    case Term::aero:
        return About::aero;
    case Term::straights:
        return About::straights;
    case Term::cornering_as_driven:
        return About::cornering_as_driven;
    }
    return About::driver_and_rest;
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

void place(Finding& f, const Explanation& e, const std::vector<double>& values) {
    const auto best = most_of(values, f.seconds >= 0.0 ? 1.0 : -1.0);
    if (!best) return;
    f.segment = best;
    f.start_m = e.segments[*best].segment.start_m;
    f.end_m = e.segments[*best].segment.end_m;
}

} // namespace

std::string capital(std::string text) {
    if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') text[0] = static_cast<char>(text[0] - 'a' + 'A');
    return text;
}

Certainty certainty_of_cause(const Seconds& s) {
    if (!s.told()) return Certainty::cannot_be_told;
    return certainty_of(s.value, s.low, s.high);
}

std::string figures_behind(const Explanation& e, Cause cause, base::UnitSystem units) {
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
    std::string what = causes::name(cause);
    if (cause == Cause::downforce || cause == Cause::drag) {
        unit = " m²";
        what = cause == Cause::downforce ? said("downforce area") : said("drag area");
    }
    if (cause == Cause::power) unit = " " + std::string(base::symbol(base::shown_unit(base::Quantity::power, units)));
    if (cause == Cause::mass) unit = " " + std::string(base::symbol(base::shown_unit(base::Quantity::mass, units)));
    return said("%1: A %2, B %3%4.", {capital(what), a, b, unit});
}

Finding of_seconds(const Explanation& e, About about, const Seconds& total, const std::vector<double>& by_segment) {
    Finding f;
    f.about = about;
    f.seconds = total.value;
    f.low = total.low;
    f.high = total.high;
    f.certainty = certainty_of_cause(total);
    f.worth = worth_text(total.value, total.low, total.high);
    place(f, e, by_segment);
    return f;
}

Finding of_term(const Explanation& e, Term term) {
    Finding f = of_seconds(e, about(term), causes::of(e.total, term), by_segment(e, term));
    if (const auto sum = causes::comes_behind(e.total, term)) f.behind = about(*sum);
    return f;
}

} // namespace lapwright::findings
