// SPDX-License-Identifier: GPL-3.0-or-later
// Both fits of one car, and what is known beside the laps held against them.  Stated priors (common practice, no
// source): a club car weighs about 1250 kg; CdA 0.9 m² ± 40 %; ClA 1.5 ± 2.0 m².
#pragma once

#include "core/car/driving_force.h"
#include "core/car/grip_model.h"
#include "core/car/limit_evidence.h"
#include "core/car/suspension.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::car {

inline constexpr double usual_mass_kg = 1250.0;
inline constexpr double usual_drag_area = 0.9;
inline constexpr double drag_area_share_sd = 0.4;
inline constexpr double usual_downforce_area = 1.5;
inline constexpr double downforce_area_sd = 2.0;

struct CarFits {
    DrivingForce driving;
    LimitEvidence evidence;
    GripPosterior grip;
    GripPrior grip_prior; // without what is known of this car
    std::optional<SuspensionDownforce> suspension;
    std::vector<std::string> disagreements; // between what was given and the laps, in words
};

// Error cannot_be_computed when no stretch at full throttle or no corner can be found.
[[nodiscard]] base::Result<CarFits> fit_car(const CarData& data, const FigureOptions& options);

} // namespace lapwright::car
