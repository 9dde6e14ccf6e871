// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/findings/driver_display.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/comparison/driver_difference.h"
#include "core/findings/wording.h"

#include <algorithm>
#include <cmath>
#include <string_view>

namespace lapwright::findings {
namespace {

using base::Quantity;
using base::said;
using base::UnitSystem;
using base::word;
using comparison::Figure;
using comparison::MaybeFigure;

const std::string absent = "—";

std::string marked(const Figure& f, const std::string& text) {
    return (f.derived ? "≈" : "") + text;
}

std::string metres(const MaybeFigure& f, UnitSystem units) {
    if (!f) return absent;
    return marked(*f, with_minus(base::known_figure(f->value, f->sd, Quantity::length, units, 0, true)));
}

std::string seconds(const MaybeFigure& f) {
    if (!f) return absent;
    if (!f->sd) return marked(*f, with_minus(base::shown_text(f->value, 2)));
    const double half_width = base::half_width_95(*f->sd);
    const int decimals = std::clamp(base::decimals_for(half_width, 3), 2, 3);
    return marked(*f, with_minus(base::shown_text(f->value, decimals)) + " ±" + base::shown_text(half_width, decimals));
}

std::string percent(double share) {
    if (!std::isfinite(share)) return absent;
    return base::shown_text(100.0 * share, 0) + " %";
}

MaybeFigure after(const MaybeFigure& place, const MaybeFigure& slowest) {
    if (!place || !slowest) return std::nullopt;
    return Figure{place->value - slowest->value, place->sd, place->derived};
}

// Below `least` a difference is none; one inside its error is small where it surely lies within `little`.
struct Limits {
    double least;
    double little;
};
constexpr Limits metre_limits{0.5, base::little_m};
constexpr Limits second_limits{min_told_s, 0.02};

// `difference` is positive where it favours A; `amount` words its size, `ends` what A then does more or sooner.
void say(DriverFigure& figure, const MaybeFigure& difference, const Limits& limits, const std::string& amount,
         const char* english) {
    if (!difference) return;
    const auto& [value, sd, derived] = *difference;
    if (sd && !base::stands_out(value, sd)) {
        figure.says = base::untold_text(value, base::half_width_95(*sd), limits.little);
        return;
    }
    if (std::abs(value) < limits.least) {
        figure.says = said("level");
        return;
    }
    figure.says = said(english, {value > 0.0 ? "A" : "B", amount});
    figure.favours = value > 0.0 ? Favours::a : Favours::b;
}

void say_metres(DriverFigure& figure, const MaybeFigure& difference, UnitSystem units, const char* english) {
    if (!difference) return;
    const std::string unit(base::symbol(base::shown_unit(Quantity::length, units)));
    const std::string amount =
        base::known_figure(std::abs(difference->value), difference->sd, Quantity::length, units, 0, true);
    say(figure, difference, metre_limits, amount + "\u00a0" + unit, english);
}

void say_seconds(DriverFigure& figure, const MaybeFigure& difference, const char* english) {
    if (!difference) return;
    Figure size = *difference;
    size.value = std::abs(size.value);
    size.derived = false;
    say(figure, difference, second_limits, seconds(size) + "\u00a0s", english);
}

void add_rolling(std::vector<DriverFigure>& all, const comparison::SegmentFigures& a,
                 const comparison::SegmentFigures& b, const comparison::DriverDifference& d) {
    const auto add = [&](const char* name, const MaybeFigure& of_a, const MaybeFigure& of_b, const MaybeFigure& less) {
        if (!of_a && !of_b) return;
        DriverFigure figure{said(name), seconds(of_a), seconds(of_b), "", Favours::neither};
        say_seconds(figure, less, word("%1 %2 less"));
        all.push_back(std::move(figure));
    };
    add(word("lift to brakes, s"), a.lift_to_brakes_s, b.lift_to_brakes_s, d.brakes_sooner_after_lift_s);
    add(word("neither pedal, s"), a.coasting_s, b.coasting_s, d.coasts_less_s);
}

void add_shifts(std::vector<DriverFigure>& all, const MaybeFigure& count_a, const MaybeFigure& count_b,
                const MaybeFigure& cost_a, const MaybeFigure& cost_b, const MaybeFigure& less) {
    const auto count = [](const MaybeFigure& f) { return f ? base::shown_text(f->value, 0) : absent; };
    if (count_a || count_b) all.push_back({said("shifts"), count(count_a), count(count_b), "", Favours::neither});
    if (!cost_a && !cost_b) return;
    DriverFigure lost{said("lost in shifts, s"), seconds(cost_a), seconds(cost_b), "", Favours::neither};
    say_seconds(lost, less, word("%1 %2 less"));
    all.push_back(std::move(lost));
}

// Sum over the segments that have the figure; absent where none has.
MaybeFigure sum(const causes::Explanation& e, bool of_a, MaybeFigure comparison::SegmentFigures::* member) {
    MaybeFigure total;
    double variance = 0.0;
    bool known = true;
    for (const causes::SegmentRow& row : e.segments) {
        const MaybeFigure& one = (of_a ? row.driving_a : row.driving_b).*member;
        if (!one) continue;
        if (!total) total = Figure{};
        total->value += one->value;
        total->derived = total->derived || one->derived;
        known = known && one->sd.has_value();
        variance += one->sd ? *one->sd * *one->sd : 0.0;
    }
    if (total && known) total->sd = std::sqrt(variance);
    return total;
}

double mean_use(const causes::Explanation& e, track::SegmentKind kind, double causes::SegmentRow::* use) {
    double total = 0.0;
    double length = 0.0;
    for (const causes::SegmentRow& row : e.segments) {
        if (row.segment.kind != kind || !std::isfinite(row.*use)) continue;
        total += row.*use * row.segment.length_m();
        length += row.segment.length_m();
    }
    return length > 0.0 ? total / length : std::nan("");
}

} // namespace

std::vector<DriverFigure> driver_figures(const causes::SegmentRow& row, UnitSystem units) {
    const comparison::SegmentFigures& a = row.driving_a;
    const comparison::SegmentFigures& b = row.driving_b;
    const comparison::DriverDifference d = comparison::driver_difference(a, b);
    const bool corner = row.segment.kind == track::SegmentKind::corner;
    const std::string unit(base::symbol(base::shown_unit(Quantity::length, units)));
    std::vector<DriverFigure> all{{corner ? said("tyres used") : said("engine used"), percent(row.use_a),
                                   percent(row.use_b), "", Favours::neither}};
    const auto place = [&](std::string name, const MaybeFigure& of_a, const MaybeFigure& of_b,
                           const MaybeFigure& difference, const char* english) {
        if (!of_a && !of_b) return;
        DriverFigure figure{std::move(name), metres(of_a, units), metres(of_b, units), "", Favours::neither};
        say_metres(figure, difference, units, english);
        all.push_back(std::move(figure));
    };
    place(said("brakes, %1 before slowest", {unit}), comparison::braking_before_slowest_m(a),
          comparison::braking_before_slowest_m(b), d.brakes_later_m, word("%1 %2 later"));
    place(said("throttle opens, %1 after slowest", {unit}), after(a.throttle_opens_m, a.min_speed_at_m),
          after(b.throttle_opens_m, b.min_speed_at_m), d.opens_earlier_m, word("%1 %2 sooner"));
    place(said("full throttle, %1 after slowest", {unit}), after(a.full_throttle_m, a.min_speed_at_m),
          after(b.full_throttle_m, b.min_speed_at_m), d.full_earlier_m, word("%1 %2 sooner"));
    add_rolling(all, a, b, d);
    add_shifts(all, a.shifts, b.shifts, a.shift_cost_s, b.shift_cost_s, d.shifts_cost_less_s);
    return all;
}

std::vector<DriverFigure> driver_figures(const causes::Explanation& e) {
    using comparison::SegmentFigures;
    std::vector<DriverFigure> all;
    const auto use = [&](const char* name, track::SegmentKind kind) {
        const double a = mean_use(e, kind, &causes::SegmentRow::use_a);
        const double b = mean_use(e, kind, &causes::SegmentRow::use_b);
        if (std::isfinite(a)) all.push_back({said(name), percent(a), percent(b), "", Favours::neither});
    };
    use(word("tyres used in corners"), track::SegmentKind::corner);
    use(word("engine used on straights"), track::SegmentKind::straight);
    SegmentFigures a;
    SegmentFigures b;
    for (const auto member : {&SegmentFigures::lift_to_brakes_s, &SegmentFigures::coasting_s, &SegmentFigures::shifts,
                              &SegmentFigures::shift_cost_s}) {
        a.*member = sum(e, true, member);
        b.*member = sum(e, false, member);
    }
    const comparison::DriverDifference d = comparison::driver_difference(a, b);
    add_rolling(all, a, b, d);
    add_shifts(all, a.shifts, b.shifts, a.shift_cost_s, b.shift_cost_s, d.shifts_cost_less_s);
    return all;
}

std::string driver_figures_note() {
    return said("≈ taken from the motion, because the pedal was not recorded");
}

} // namespace lapwright::findings
