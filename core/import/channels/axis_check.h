// SPDX-License-Identifier: GPL-3.0-or-later
// Whether an accelerometer's axis, which its column names by a letter, points the way that the positions say: a
// telephone lies in a car as it likes.
#pragma once

#include "core/recording/recording.h"

#include <optional>

namespace lapwright::import {

// The channel as a sum of the accelerations along the path and to its left, by least squares.
struct AxisFit {
    double along = 0.0;
    double left = 0.0;
    double correlation = 0.0; // of the channel with the sum, 0..1
};

// Over stretches of some two seconds between the positions.  Nothing without positions, or where they hardly
// accelerate.
[[nodiscard]] std::optional<AxisFit> fit_axis(const recording::Recording& recording, const recording::Channel& channel);

} // namespace lapwright::import
