// SPDX-License-Identifier: GPL-3.0-or-later
// A car's figures from all its sessions at once, and what each change of its setup did to them: the whole book as
// evidence.  An afternoon with and without a wing tells a downforce that neither session tells alone.
#pragma once

#include "core/base/estimate.h"
#include "core/base/fit_outcome.h"
#include "core/car/figure_changes.h"
#include "core/season/outing.h"

#include <cstddef>
#include <string>
#include <vector>

namespace lapwright::season {

// As they were in one session.
struct FiguresThen {
    base::Estimate grip; // of the tyres, at the car's own weight
    base::Estimate downforce_area_m2;
    base::Estimate drag_area_m2;
    base::Estimate power_w; // at the wheels
};

// An item's value against the first that it had.
struct ItemEffect {
    std::string item;
    std::string before;
    std::string after;
    car::FigureChanges change; // rests on corners and straights of all sessions
};

struct CarOverOutings {
    std::vector<FiguresThen> figures; // one an outing
    std::vector<ItemEffect> effects;
    bool on_a_tonne = false; // a session's mass is unknown: areas and watts are on a tonne
    base::FitOutcome corner_fit;
    base::FitOutcome straight_fit;
};

// outings: of one car, in the order of time, at least one.  What the laps do not tell is untold, with the reason.
[[nodiscard]] CarOverOutings car_over_outings(std::vector<Outing> outings);

} // namespace lapwright::season
