// SPDX-License-Identifier: GPL-3.0-or-later
// What is known beside the laps, as priors of the two fits, and whether the laps agree: a figure of the person's, and
// the downforce that suspension travel shows.
#pragma once

#include "core/car/driving_force.h"
#include "core/car/grip_model.h"
#include "core/car/suspension.h"

#include <string>
#include <vector>

namespace lapwright::car {

// Two independent statements of one figure as one: weighted by the inverse of their variances.
[[nodiscard]] KnownFigure joined(const KnownFigure& one, const KnownFigure& other);

// The usual prior with what is known of this car.
[[nodiscard]] GripPrior with_known(const GripPrior& usual, const CarData& data,
                                   const std::optional<SuspensionDownforce>& suspension);
// A stated power is the engine's most; what the fit calls power is its mean over the straights, by the curve seen.
[[nodiscard]] DrivingPrior with_known(const DrivingPrior& usual, const CarData& data,
                                      const std::optional<PowerCurveSeen>& curve);

[[nodiscard]] bool knows_downforce(const CarData& data, const std::optional<SuspensionDownforce>& suspension);
[[nodiscard]] bool knows_driving(const CarData& data);

// "the drag area given, 1.05 ±0.10 m², and the laps' 0.81 ±0.06 disagree by 2.9 standard errors"; nothing where they
// agree to twice their standard error.
[[nodiscard]] std::string disagreement(const std::string& what, const KnownFigure& known, const KnownFigure& laps,
                                       const std::string& unit, int decimals);

} // namespace lapwright::car
