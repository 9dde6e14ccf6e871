// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing a track wants: the lap over downforce that is added or taken away together with the drag that it costs,
// and where it is quickest.  The same simulation and driver as what_if.h; a driver who gets used to more or less of it
// is no part of it.
#pragma once

#include "core/causes/explanation.h"

#include <cstddef>
#include <vector>

namespace lapwright::causes {

// Drag area that a square metre of downforce area costs.  What a splitter or a wing of a club car costs differs by a
// factor of two (common practice, no source); a trial of one's own wing knows it better.
struct DragCost {
    double per_downforce = 0.15;
    double sd = 0.05;
};

// As a trial told it, to a tenth.
[[nodiscard]] inline DragCost told_cost(double per_downforce) {
    return {per_downforce, 0.1 * per_downforce};
}

struct AeroStep {
    double downforce_m2 = 0.0; // more than now, on a tonne where figures are per kilogram
    Seconds lap;               // change of the lap time, negative: quicker
};

struct AeroBalance {
    std::vector<AeroStep> steps; // evenly spaced, 0 among them; empty where `untold` says why
    std::string untold;
    Seconds best_m2; // where the lap is quickest, over the draws
    Seconds gain;    // of the step that is quickest on the whole: change of the lap time
    // How flat it is: within a twentieth of a second of the quickest from … to.
    double flat_from_m2 = 0.0;
    double flat_to_m2 = 0.0;
    bool at_the_end = false; // quicker still beyond the steps
};

inline constexpr double aero_step_m2 = 0.25;
inline constexpr double flat_s = 0.05;

// figures: those of the model's car.  Some 20 ms a step on a lap of 4 km.
[[nodiscard]] AeroBalance aero_balance(const CarModel& model, const car::CarFigures& figures, const DragCost& cost = {},
                                       std::size_t draws = 40);

} // namespace lapwright::causes
