// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/withhold.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/causes/spread.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <limits>

namespace lapwright::causes {
namespace {

using base::said;

constexpr double g = base::standard_gravity_mps2;
constexpr double margin = 1.25;             // on a whole lap, for what the exponents leave out
constexpr double segment_margin = 3.0;      // speed is carried over from the segment before
constexpr double allowance_s = 0.05;        // for equal cars
constexpr double max_segment_misfit = 0.05; // of the segment's time, and no less than:
constexpr double min_misfit_s = 0.10;
constexpr double max_lap_misfit = 0.01; // of the lap's
constexpr double min_share = 0.41;      // of tyres or engine: the ends of what is tried
constexpr double max_share = 1.20;      // more than all of it, beyond what the figures are unsure of
constexpr double sum_is_known_better = 0.8;

using Reasons = std::array<std::string, cause_count>;

const car::CarFigure& figure_behind(const car::CarFigures& f, Cause cause) {
    switch (cause) {
    case Cause::tyre_grip:
        return f.grip;
    case Cause::downforce:
        return f.downforce_area_m2_per_kg;
    case Cause::drag:
        return f.drag_area_m2_per_kg;
    default:
        return f.power_w_per_kg;
    }
}

// |ln| of the ratio of two figures at the far ends of their intervals.
double log_range(const car::CarFigure& a, const car::CarFigure& b) {
    if (!(a.low > 0.0 && b.low > 0.0)) return std::numeric_limits<double>::infinity();
    return std::max(std::abs(std::log(a.high / b.low)), std::abs(std::log(b.high / a.low)));
}

// The tyres' load per weight at the top speed, for the ends of an interval.
car::CarFigure load_at_top(const car::CarFigures& f) {
    const double per_area = 0.5 * f.typical.density_kg_m3 * f.fastest_mps * f.fastest_mps / g;
    const auto load = [&](double area_per_kg) { return std::max(0.05, 1.0 + per_area * area_per_kg); };
    const car::CarFigure& area = f.downforce_area_m2_per_kg;
    return {{load(area.value), load(area.low), load(area.high)}, area.decided_by};
}

// Why the figures of either car do not carry a cause: for single causes, and, where draws are not to be trusted at all,
// for whatever is made of them.
struct Grounds {
    Reasons single;
    std::string all;
};

void add_car(Grounds& grounds, const car::CarFigures& f, const std::string& letter) {
    for (const Cause cause : all_causes) {
        if (cause == Cause::mass) continue;
        std::string& why = grounds.single[static_cast<std::size_t>(cause)];
        const car::CarFigure& figure = figure_behind(f, cause);
        if (!why.empty()) continue;
        if (!figure.told())
            why = base::labelled(letter, figure.untold);
        else if (figure.decided_by == car::DecidedBy::prior)
            why = said("the laps do not tell the %1 of %2", {name(cause), letter});
    }
    if (!f.corner_fit.outcome.converged() && grounds.all.empty())
        grounds.all = said("the fit of the corners of %1 has not settled", {letter});
}

std::string misfit_of_lap(const Explanation& e) {
    double misfit = 0.0;
    double time = 0.0;
    for (const SegmentRow& row : e.segments) {
        misfit += row.misfit_s;
        time += row.longer_s();
    }
    if (!(misfit > max_lap_misfit * time && misfit > min_misfit_s)) return {};
    return said("the simulated cars miss the measured times by %1 s a lap", {base::shown_text(misfit, 1)});
}

void withhold(Seconds& s, const std::string& why) {
    if (s.told() && !why.empty()) s = base::untold(why);
}

std::string too_large(const Seconds& s, double most) {
    if (!s.told() || std::abs(s.value) <= most) return {};
    return said("it would be more than the two cars allow");
}

// A sum whose parts cannot be told is told where it is known better than they are.
void judge_sum(Seconds& sum, const Seconds& x, const std::string& why_x, const Seconds& y, const std::string& why_y) {
    const bool better = sum.half_width() < sum_is_known_better * std::max(x.half_width(), y.half_width());
    if (better) return;
    withhold(sum, why_x);
    withhold(sum, why_y);
}

// What the laps do not tell of the downforce, the tyres' grip is given or loses: where the sum is known better, grip
// alone rests on the downforce that is usual.
bool leans_on_untold_downforce(const Row& row, const Reasons& reasons) {
    return !reasons[static_cast<std::size_t>(Cause::downforce)].empty() && row.cornering.told() &&
           row.cornering.half_width() < sum_is_known_better * row.of(Cause::tyre_grip).half_width();
}

// time_s: NaN where no bound is known.
void judge_row(const Explanation& e, Row& row, const Grounds& grounds, const std::string& misfit, double time_s,
               double slack) {
    std::string all = grounds.all.empty() ? misfit : grounds.all;
    Reasons reasons = grounds.single;
    for (const Cause cause : all_causes) {
        const auto c = static_cast<std::size_t>(cause);
        const double most = allowance_s + slack * max_possible_s(e.car_a, e.car_b, cause, time_s);
        if (const std::string why = too_large(row.causes[c], most); !why.empty()) all = reasons[c] = why;
        if (!row.causes[c].told()) all = row.causes[c].untold;
    }
    std::string& grip = reasons[static_cast<std::size_t>(Cause::tyre_grip)];
    if (grip.empty() && leans_on_untold_downforce(row, reasons))
        grip = said("only grip and downforce together can be told");
    const auto why = [&](Cause cause) { return reasons[static_cast<std::size_t>(cause)]; };
    judge_sum(row.cornering, row.of(Cause::tyre_grip), why(Cause::tyre_grip), row.of(Cause::downforce),
              why(Cause::downforce));
    judge_sum(row.aero, row.of(Cause::downforce), why(Cause::downforce), row.of(Cause::drag), why(Cause::drag));
    judge_sum(row.straights, row.of(Cause::drag), why(Cause::drag), row.of(Cause::power), why(Cause::power));
    for (Seconds* s : {&row.cornering_as_driven, &row.cornering, &row.aero, &row.straights, &row.driver_and_rest})
        withhold(*s, all);
    for (std::size_t c = 0; c < cause_count; ++c) {
        withhold(row.causes[c], all);
        withhold(row.causes[c], reasons[c]);
    }
    if (row.driver_and_rest.told() &&
        (row.driver_and_rest.value < row.driver_and_rest.low || row.driver_and_rest.value > row.driver_and_rest.high))
        row.driver_and_rest = base::untold(said("a few draws run away from the others"));
}

std::string misfit_here(const SegmentRow& row) {
    const double time = row.longer_s();
    return row.misfit_s > std::max(min_misfit_s, max_segment_misfit * time) ? row.does_not_fit : std::string();
}

// A short straight may take any share of the engine: then its time tells nothing of the driver's use.
void judge_use(double& share) {
    if (!(share >= min_share && share <= max_share)) share = std::numeric_limits<double>::quiet_NaN();
}

} // namespace

double max_possible_s(const car::CarFigures& a, const car::CarFigures& b, Cause cause, double time_s) {
    switch (cause) {
    case Cause::tyre_grip:
        return 0.5 * time_s * log_range(a.grip, b.grip);
    case Cause::downforce:
        return 0.5 * time_s * log_range(load_at_top(a), load_at_top(b));
    case Cause::drag:
        return time_s / 3.0 * log_range(a.drag_area_m2_per_kg, b.drag_area_m2_per_kg);
    case Cause::power:
        return time_s / 3.0 * log_range(a.power_w_per_kg, b.power_w_per_kg);
    case Cause::mass:
        return a.mass_kg && b.mass_kg ? 0.5 * time_s * log_range(*a.mass_kg, *b.mass_kg) : 0.0;
    }
    return 0.0;
}

void withhold_what_cannot_be_told(Explanation& e) {
    Grounds grounds;
    add_car(grounds, e.car_a, "A");
    add_car(grounds, e.car_b, "B");
    const std::string misfit = misfit_of_lap(e);
    double lap_time = 0.0;
    for (SegmentRow& row : e.segments) {
        lap_time += row.longer_s();
        judge_use(row.use_a);
        judge_use(row.use_b);
        judge_row(e, row.row, grounds, misfit.empty() ? misfit_here(row) : misfit, row.longer_s(), segment_margin);
    }
    judge_row(e, e.total, grounds, misfit, lap_time, margin);
}

std::array<std::string, cause_count> why_not_what_if(const Explanation& e, Side side) {
    Grounds grounds;
    add_car(grounds, side == Side::a ? e.car_a : e.car_b, side == Side::a ? "A" : "B");
    const std::string all = grounds.all.empty() ? misfit_of_lap(e) : grounds.all;
    if (!all.empty()) grounds.single.fill(all);
    // A change of power or mass in its own unit needs no knowledge of either.
    if (all.empty()) grounds.single[static_cast<std::size_t>(Cause::power)].clear();
    return grounds.single;
}

} // namespace lapwright::causes
