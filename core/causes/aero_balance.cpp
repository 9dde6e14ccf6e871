// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/aero_balance.h"

#include "core/base/constants.h"
#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/causes/simulated_change.h"
#include "core/causes/spread.h"
#include "core/math/random.h"

#include <algorithm>
#include <cmath>

namespace lapwright::causes {
namespace {

using base::said;

constexpr double least_m2 = -1.5;
constexpr double most_m2 = 2.0;
constexpr double least_area_m2 = -0.25; // a car that lifts a little, without any wing
constexpr double least_cost = 0.02;

// The lowest point of the parabola through the lowest step and its neighbours.
double lowest_place(const std::vector<double>& laps, double from_m2) {
    const auto i = static_cast<std::size_t>(std::ranges::min_element(laps) - laps.begin());
    const double place = from_m2 + aero_step_m2 * static_cast<double>(i);
    if (i == 0 || i + 1 == laps.size()) return place;
    const double bend = laps[i - 1] - 2.0 * laps[i] + laps[i + 1];
    return bend > 0.0 ? place + 0.5 * aero_step_m2 * (laps[i - 1] - laps[i + 1]) / bend : place;
}

std::string why_untold(const CarModel& model) {
    for (const Cause cause : {Cause::downforce, Cause::drag})
        if (const std::string& why = model.untold[static_cast<std::size_t>(cause)]; !why.empty()) return why;
    if (model.draws.empty()) return said("the car is not known well enough to be simulated");
    return {};
}

} // namespace

AeroBalance aero_balance(const CarModel& model, const car::CarFigures& figures, const DragCost& cost,
                         std::size_t wanted) {
    AeroBalance balance;
    balance.untold = why_untold(model);
    if (!balance.untold.empty()) return balance;
    const std::size_t count = std::min(wanted, model.draws.size());
    const double half_density = 0.5 * figures.typical.density_kg_m3;
    const double per_area = model.per_kilogram ? half_density / base::tonne_kg : half_density;
    const double area = figures.typical.car.downforce_n_per_mps2 / per_area;
    const auto below =
        static_cast<int>(std::floor(std::min(-least_m2, std::max(0.0, area - least_area_m2)) / aero_step_m2));
    const int steps = below + static_cast<int>(most_m2 / aero_step_m2) + 1;
    const double from_m2 = -aero_step_m2 * below;
    math::Random random(1, 61);
    std::vector<double> costs;
    for (std::size_t i = 0; i < count; ++i)
        costs.push_back(std::max(least_cost, cost.per_downforce + cost.sd * random.normal()));
    std::vector<std::vector<double>> laps(count, std::vector<double>(static_cast<std::size_t>(steps), 0.0));
    base::parallel_for(count, 0, [&](std::size_t i) {
        for (int k = 0; k < steps; ++k) {
            if (k == below) continue; // as it is
            const double more = from_m2 + aero_step_m2 * k;
            car::SimulatedCar car = model.draws[i];
            Changed after;
            car.downforce_n_per_mps2 += per_area * more;
            after.emplace_back(Cause::downforce, car);
            car.drag_n_per_mps2 = std::max(0.2 * car.drag_n_per_mps2, car.drag_n_per_mps2 + per_area * costs[i] * more);
            after.emplace_back(Cause::drag, car);
            for (const double segment_s : simulated_change(model, i, after))
                laps[i][static_cast<std::size_t>(k)] += segment_s;
        }
    });
    std::vector<double> best;
    for (const std::vector<double>& lap : laps)
        best.push_back(lowest_place(lap, from_m2));
    balance.best_m2 = spread_of(best);
    std::vector<double> at_step(count, 0.0);
    for (int k = 0; k < steps; ++k) {
        for (std::size_t i = 0; i < count; ++i)
            at_step[i] = laps[i][static_cast<std::size_t>(k)];
        balance.steps.push_back({from_m2 + aero_step_m2 * k, spread_of(at_step)});
    }
    const auto quickest =
        std::ranges::min_element(balance.steps, {}, [](const AeroStep& step) { return step.lap.value; });
    balance.gain = quickest->lap;
    balance.at_the_end = quickest == balance.steps.begin() || quickest + 1 == balance.steps.end();
    balance.flat_from_m2 = balance.flat_to_m2 = quickest->downforce_m2;
    for (const AeroStep& step : balance.steps) {
        if (step.lap.value > quickest->lap.value + flat_s) continue;
        balance.flat_from_m2 = std::min(balance.flat_from_m2, step.downforce_m2);
        balance.flat_to_m2 = std::max(balance.flat_to_m2, step.downforce_m2);
    }
    return balance;
}

} // namespace lapwright::causes
