// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/car/withhold_figures.h"

#include "core/base/translation.h"

#include <initializer_list>
#include <limits>
#include <optional>
#include <utility>

namespace lapwright::car {
namespace {

using base::said;

// What any car may have, from a kart to a racing car with all its wings (common practice, no source).
constexpr double min_grip = 0.3;
constexpr double max_grip = 3.0;
constexpr double min_downforce_area_m2 = -3.0;
constexpr double max_downforce_area_m2 = 15.0;
constexpr double max_drag_area_m2 = 5.0;
constexpr double max_power_w = 2e6;

void withhold(CarFigure& figure, std::string why) {
    if (figure.told()) figure = {base::untold(std::move(why)), figure.decided_by};
}

void judge(CarFigure& figure, double least, double most) {
    if (!(figure.low <= figure.value && figure.value <= figure.high))
        withhold(figure, said("a few draws run away from the others"));
    else if (figure.high > most || figure.low < least)
        withhold(figure, said("the laps allow more than a car can have"));
}

CarFigure* of(std::optional<CarFigure>& figure) {
    return figure ? &*figure : nullptr;
}

void withhold_unless(const base::FitOutcome& fit, const std::string& why, std::initializer_list<CarFigure*> figures) {
    if (fit.converged()) return;
    for (CarFigure* figure : figures)
        if (figure) withhold(*figure, why);
}

} // namespace

void withhold_what_cannot_be_told(CarFigures& f) {
    constexpr double any = std::numeric_limits<double>::infinity();
    judge(f.grip, min_grip, max_grip);
    judge(f.grip_as_used, min_grip, max_grip);
    judge(f.downforce_area_m2_per_kg, -any, any);
    judge(f.apparent_downforce_area_m2_per_kg, -any, any);
    judge(f.drag_area_m2_per_kg, 0.0, any);
    judge(f.power_w_per_kg, 0.0, any);
    if (f.downforce_area_m2) judge(*f.downforce_area_m2, min_downforce_area_m2, max_downforce_area_m2);
    if (f.drag_area_m2) judge(*f.drag_area_m2, 0.0, max_drag_area_m2);
    if (f.power_w) judge(*f.power_w, 0.0, max_power_w);
    withhold_unless(f.corner_fit.outcome, said("the fit of the corners has not settled"),
                    {&f.grip, &f.grip_as_used, &f.downforce_area_m2_per_kg, &f.apparent_downforce_area_m2_per_kg,
                     &f.load_exponent, of(f.downforce_area_m2)});
    withhold_unless(f.straight_fit, said("the fit of the straights has not settled"),
                    {&f.drag_area_m2_per_kg, &f.power_w_per_kg, of(f.drag_area_m2), of(f.power_w)});
}

} // namespace lapwright::car
