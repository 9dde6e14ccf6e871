// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/season/car_over_outings.h"

#include "core/base/check.h"
#include "core/base/constants.h"
#include "core/base/translation.h"
#include "core/base/wording.h"
#include "core/car/grip_priors.h"
#include "core/math/random.h"
#include "core/math/statistics.h"
#include "core/season/grip_over_outings.h"
#include "core/season/push_over_outings.h"
#include "core/season/setup_levels.h"

#include <algorithm>
#include <cmath>

namespace lapwright::season {
namespace {

using base::said;

constexpr double g = base::standard_gravity_mps2;
constexpr std::size_t draws = 4000;
constexpr std::uint64_t seed = 1;
constexpr double told_below = 0.7; // of what is usual for such an item: the laps have halved its variance

// What is off by the same share in all draws of one index.
struct SharedErrors {
    double grip = 1.0;
    double downforce = 1.0;
    double mass = 1.0;
    double length = 1.0;
};

std::vector<SharedErrors> shared_errors(const std::vector<Outing>& outings) {
    double mass_sd = 0.0;
    double length_sd = 0.0;
    for (const Outing& one : outings) {
        mass_sd = std::max(mass_sd, one.mass_sd_kg / one.mass_kg);
        length_sd = std::max(length_sd, one.length_sd);
    }
    math::Random random(seed, 53);
    std::vector<SharedErrors> all(draws);
    for (SharedErrors& e : all) {
        e.grip = 1.0 / car::driver_share(random.normal());
        e.downforce = std::exp(car::attitude_sd * random.normal());
        e.mass = std::exp(mass_sd * random.normal());
        e.length = std::exp(length_sd * random.normal());
    }
    return all;
}

template <typename Get>
base::Estimate estimate(Get get) {
    std::vector<double> values;
    for (std::size_t i = 0; i < draws; ++i)
        values.push_back(get(i));
    std::ranges::sort(values);
    return {math::sorted_quantile(values, 0.5), math::sorted_quantile(values, 0.025),
            math::sorted_quantile(values, 0.975)};
}

// Nothing but what such items usually do is no news.
template <typename Get>
base::Estimate effect(double usual, Get get) {
    const base::Estimate e = estimate(get);
    if (e.half_width() > told_below * base::half_width_95(usual))
        return base::untold(said("the sessions do not tell what it does to this"));
    return e;
}

void add_corners(CarOverOutings& result, const GripOverOutings& fit, const std::vector<SetupLevels>& levels,
                 const std::vector<SharedErrors>& errors) {
    result.corner_fit = fit.outcome;
    const bool told = fit.outcome.converged();
    const base::Estimate not_told =
        base::untold(said("the fit of grip and downforce over the sessions has not settled"));
    for (std::size_t s = 0; s < result.figures.size(); ++s) {
        FiguresThen& then = result.figures[s];
        then.grip = then.downforce_area_m2 = not_told;
        if (!told) continue;
        then.grip = estimate(
            [&](std::size_t i) { return std::exp(fit.draws[i].log_limit[s]) / g * errors[i].grip * errors[i].length; });
        then.downforce_area_m2 = estimate([&](std::size_t i) {
            const SharedErrors& e = errors[i];
            return fit.draws[i].downforce_area_m2[s] * e.downforce * e.mass / (e.length * e.length);
        });
    }
    auto row = result.effects.begin();
    for (std::size_t item = 0; item < levels.size(); ++item) {
        const UsualEffect usual = usual_effect(levels[item].kind);
        for (std::size_t value = 0; value + 1 < levels[item].values.size(); ++value, ++row) {
            row->change.grip = row->change.downforce_area_m2 = not_told;
            if (!told) continue;
            row->change.grip = effect(
                usual.log_grip, [&](std::size_t i) { return std::expm1(fit.draws[i].grip_effects[item][value]); });
            row->change.downforce_area_m2 = effect(usual.downforce_area_m2, [&](std::size_t i) {
                return fit.draws[i].area_effects[item][value] * errors[i].downforce * errors[i].mass;
            });
        }
    }
}

void add_straights(CarOverOutings& result, const PushOverOutings& fit, const std::vector<SetupLevels>& levels,
                   const std::vector<SharedErrors>& errors) {
    result.straight_fit = fit.outcome;
    const bool told = fit.outcome.converged();
    const base::Estimate not_told = base::untold(said("no session's straights tell power and drag"));
    for (std::size_t s = 0; s < result.figures.size(); ++s) {
        FiguresThen& then = result.figures[s];
        then.power_w = then.drag_area_m2 = not_told;
        if (!told) continue;
        then.power_w = estimate(
            [&](std::size_t i) { return fit.draws[i].power_w[s] * errors[i].mass * std::pow(errors[i].length, 2); });
        then.drag_area_m2 =
            estimate([&](std::size_t i) { return fit.draws[i].drag_area_m2[s] * errors[i].mass / errors[i].length; });
    }
    auto row = result.effects.begin();
    for (std::size_t item = 0; item < levels.size(); ++item) {
        const UsualEffect usual = usual_effect(levels[item].kind);
        for (std::size_t value = 0; value + 1 < levels[item].values.size(); ++value, ++row) {
            row->change.power = row->change.drag_area_m2 = not_told;
            if (!told) continue;
            row->change.power =
                effect(usual.log_power, [&](std::size_t i) { return fit.draws[i].power_effects[item][value]; });
            row->change.drag_area_m2 = effect(usual.drag_area_m2, [&](std::size_t i) {
                return fit.draws[i].drag_effects[item][value] * errors[i].mass;
            });
        }
    }
}

car::FigureChanges rests_on(const std::vector<Outing>& outings) {
    car::FigureChanges none;
    for (const Outing& one : outings) {
        none.corners += one.limit.corners.size();
        none.straights += one.straights;
    }
    return none;
}

} // namespace

CarOverOutings car_over_outings(std::vector<Outing> outings) {
    base::check(!outings.empty(), "a car's outings");
    CarOverOutings result;
    result.on_a_tonne = !std::ranges::all_of(outings, &Outing::mass_known);
    std::vector<car::SetupSheet> setups;
    for (Outing& one : outings) {
        if (result.on_a_tonne) one.mass_kg = base::tonne_kg;
        setups.push_back(one.setup);
    }
    const std::vector<SetupLevels> levels = setup_levels(setups);
    for (const SetupLevels& item : levels)
        for (std::size_t value = 1; value < item.values.size(); ++value)
            result.effects.push_back({item.item, item.values.front(), item.values[value], rests_on(outings)});
    for (ItemEffect& effect : result.effects)
        effect.change.on_a_tonne = result.on_a_tonne;
    result.figures.resize(outings.size());
    const std::vector<SharedErrors> errors = shared_errors(outings);
    add_corners(result, fit_grip_over(outings, levels, draws, seed), levels, errors);
    add_straights(result, fit_push_over(outings, levels, draws, seed), levels, errors);
    return result;
}

} // namespace lapwright::season
