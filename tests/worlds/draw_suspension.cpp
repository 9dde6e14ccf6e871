// SPDX-License-Identifier: GPL-3.0-or-later
// Suspension travel in one table of five, with spring rates that the person knows to 5 %.
#include <array>

#include "tests/worlds/draws.h"
#include "tests/worlds/world.h"

namespace worlds {

void draw_suspension(std::uint64_t seed, std::uint64_t stream, Entry& entry) {
    LoggerPlan& plan = entry.logger;
    truth::Random random(seed, 71'000 + stream);
    if (plan.form != FileForm::table || !chance(random, 0.2)) return;
    plan.spec.suspension = plan.spec.pedals;
    plan.spec.suspension_truth = truth::draw_suspension(random);
    static constexpr std::array<std::array<const char*, 4>, 3> namings{
        {{"Damper FL", "Damper FR", "Damper RL", "Damper RR"},
         {"Susp travel front left", "Susp travel front right", "Susp travel rear left", "Susp travel rear right"},
         {"Shock_Pot_LF", "Shock_Pot_RF", "Shock_Pot_LR", "Shock_Pot_RR"}}};
    const auto& names = one_of(random, namings);
    for (int wheel = truth::front_left; wheel <= truth::rear_right; ++wheel)
        plan.dialect.columns.push_back(
            {static_cast<truth::Quantity>(static_cast<int>(truth::Quantity::suspension_front_left_m) + wheel),
             names[static_cast<std::size_t>(wheel)], "mm", 1000.0, 2});
    const auto stated = [&](double truly) { return truly * (1.0 + 0.05 * random.normal()); };
    entry.stated.springs =
        Springs{stated(plan.spec.suspension_truth.front_n_per_m), stated(plan.spec.suspension_truth.rear_n_per_m)};
}

} // namespace worlds
