// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/what_if.h"

#include "core/base/translation.h"
#include "core/causes/simulated_change.h"
#include "core/causes/spread.h"

#include <algorithm>

namespace lapwright::causes {
namespace {

using base::said;

Changed changed(car::SimulatedCar car, const Change& change, bool per_kilogram) {
    Changed after;
    const auto add = [&](double amount, Cause cause, auto apply) {
        if (amount == 0.0) return;
        apply();
        after.emplace_back(cause, car);
    };
    add(change.grip_share, Cause::tyre_grip, [&] { car.grip *= 1.0 + change.grip_share; });
    add(change.downforce_share, Cause::downforce, [&] { car.downforce_n_per_mps2 *= 1.0 + change.downforce_share; });
    add(change.drag_share, Cause::drag, [&] { car.drag_n_per_mps2 *= std::max(0.0, 1.0 + change.drag_share); });
    if (per_kilogram) return after;
    add(change.power_w, Cause::power, [&] { car.power_w = std::max(1e3, car.power_w + change.power_w); });
    add(change.mass_kg, Cause::mass, [&] { car.mass_kg = std::max(100.0, car.mass_kg + change.mass_kg); });
    return after;
}

std::string why_untold(const CarModel& model, const Change& change) {
    const auto why = [&](double amount, Cause cause) {
        return amount != 0.0 ? model.untold[static_cast<std::size_t>(cause)] : std::string();
    };
    for (const std::string& one :
         {why(change.grip_share, Cause::tyre_grip), why(change.downforce_share, Cause::downforce),
          why(change.drag_share, Cause::drag), why(change.power_w, Cause::power), why(change.mass_kg, Cause::mass)})
        if (!one.empty()) return one;
    return {};
}

} // namespace

Prediction what_if(const CarModel& model, const Change& change, std::size_t draws) {
    const std::size_t count = std::min(draws, model.draws.size());
    Prediction prediction;
    const std::size_t segments = model.course.segments();
    if (const std::string why = why_untold(model, change); !why.empty())
        return {base::untold(why), std::vector<Seconds>(segments, base::untold(why))};
    std::vector<std::vector<double>> by_segment(segments, std::vector<double>(count, 0.0));
    std::vector<double> lap(count, 0.0);
    for (std::size_t i = 0; i < count; ++i) {
        const std::vector<double> by_now =
            simulated_change(model, i, changed(model.draws[i], change, model.per_kilogram));
        for (std::size_t k = 0; k < segments; ++k) {
            by_segment[k][i] = by_now[k];
            lap[i] += by_now[k];
        }
    }
    prediction.lap = spread_of(lap);
    for (const auto& values : by_segment)
        prediction.segments.push_back(spread_of(values));
    return prediction;
}

std::vector<Sensitivity> sensitivities(const CarModel& model, std::size_t draws) {
    std::vector<Sensitivity> all;
    const auto add = [&](std::string what, Cause of, const Change& change) {
        all.push_back({std::move(what), of, change, what_if(model, change, draws)});
    };
    add(said("1 % more grip"), Cause::tyre_grip, {.grip_share = 0.01});
    add(said("10 % more downforce"), Cause::downforce, {.downforce_share = 0.1});
    add(said("10 % less drag"), Cause::drag, {.drag_share = -0.1});
    if (!model.per_kilogram) {
        add(said("10 kW more power"), Cause::power, {.power_w = 10e3});
        add(said("10 kg less mass"), Cause::mass, {.mass_kg = -10.0});
    }
    return all;
}

} // namespace lapwright::causes
