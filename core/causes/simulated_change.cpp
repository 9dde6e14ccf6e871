// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/causes/simulated_change.h"

#include "core/math/random.h"

#include <cmath>

namespace lapwright::causes {
namespace {

std::array<double, cause_count> factors(std::size_t draw) {
    math::Random random(draw + 1, 62);
    std::array<double, cause_count> all{};
    for (const Cause cause : all_causes) {
        const auto c = static_cast<std::size_t>(cause);
        const bool adapts = cause == Cause::tyre_grip || cause == Cause::downforce;
        all[c] = 1.0 + std::hypot(model_error_sd[c], adapts ? adaptation_sd : 0.0) * random.normal();
    }
    return all;
}

} // namespace

std::vector<double> simulated_change(const CarModel& model, std::size_t draw, const Changed& after) {
    const std::array<double, cause_count> factor = factors(draw);
    std::vector<double> before = model.segment_s[draw];
    std::vector<double> change(before.size(), 0.0);
    for (const auto& [cause, car] : after) {
        const car::SimulatedLap lap = car::simulate_lap(car, model.course, model.uses[draw]);
        for (std::size_t k = 0; k < change.size(); ++k)
            change[k] += factor[static_cast<std::size_t>(cause)] * (lap.segment_time_s[k] - before[k]);
        before = lap.segment_time_s;
    }
    return change;
}

} // namespace lapwright::causes
