// SPDX-License-Identifier: GPL-3.0-or-later
// Power and drag of one car over many outings.  Each outing has them with an error of its own, one that it shares with
// the others on that track (hills that nobody measured), and one that it shares with all (rolling resistance, rotating
// parts); what is the same in two outings drops out of their difference.
//
//   P_s = power (1 + items + day_s) + e_s + e_track + e_car,   A_s = area + items + the same three
//
// Linear and normal, so that the posterior is exact.  Stated priors: those of fit_car.h and of setup_levels.h; from day
// to day fuel and the engine's temper are worth 1 % of the power (common practice, no source).
#pragma once

#include "core/base/fit_outcome.h"
#include "core/season/outing.h"
#include "core/season/setup_levels.h"

#include <cstdint>
#include <vector>

namespace lapwright::season {

// In the order of the outings; effects as in grip_over_outings.h, those of power relative.
struct PushOverDraw {
    std::vector<double> power_w;
    std::vector<double> drag_area_m2;
    std::vector<std::vector<double>> power_effects;
    std::vector<std::vector<double>> drag_effects;
};

struct PushOverOutings {
    base::FitOutcome outcome; // rests on outings; failed where none tells power and drag
    std::vector<PushOverDraw> draws;
};

[[nodiscard]] PushOverOutings fit_push_over(const std::vector<Outing>& outings, const std::vector<SetupLevels>& levels,
                                            std::size_t draws, std::uint64_t seed);

} // namespace lapwright::season
