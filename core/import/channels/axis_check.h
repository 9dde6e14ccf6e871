// SPDX-License-Identifier: GPL-3.0-or-later
// Whether an accelerometer's axis, which its column names by a letter, points the way that the positions say: a
// telephone lies in a car as it likes.
#pragma once

#include "core/import/columns/axis_fit.h"
#include "core/recording/recording.h"

#include <optional>

namespace lapwright::import {

// Over stretches of some two seconds between the positions.
// Nothing without positions, or where they hardly accelerate.
[[nodiscard]] std::optional<AxisFit> fit_axis(const recording::Recording& recording, const recording::Channel& channel);

// How many times as much the channel reads as the positions say of the one axis, over the same stretches; nothing where
// the two have little to do with each other.
[[nodiscard]] std::optional<double> size_of_axis(const recording::Recording& recording,
                                                 const recording::Channel& channel, bool lateral);

} // namespace lapwright::import
