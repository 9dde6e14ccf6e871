// SPDX-License-Identifier: GPL-3.0-or-later
// Channels held against each other over the whole session: a speed that contradicts the positions is no speed, whatever
// its name and unit say, a lap counter that goes up every row counts no laps.  Every such doubt is told.
#pragma once

#include "core/import/columns/column_guess.h"
#include "core/recording/recording.h"

#include <span>
#include <vector>

namespace lapwright::import {

// Speed between the positions, at most some thousand places of the session.
struct GroundSpeed {
    std::vector<double> time_s;
    std::vector<double> speed_mps;
};

// From chords of a second and more, none across a split or a gap; empty without positions.
[[nodiscard]] GroundSpeed ground_speed(const recording::Recording& recording);

// Acceleration from one such chord to the next, at most as many.
struct GroundAcceleration {
    double from_s = 0.0;
    double to_s = 0.0;
    double longitudinal_mps2 = 0.0;
    double lateral_mps2 = 0.0; // positive to the left
};

[[nodiscard]] std::vector<GroundAcceleration> ground_accelerations(const recording::Recording& recording);

// Settles unit and meaning of speeds, accelerations and lap numbers in channels and guesses alike; `columns` has the
// index of each channel's guess.  What a person has said of a column stays, and is only doubted.
[[nodiscard]] std::vector<recording::Warning>
hold_together(recording::Recording& recording, std::vector<ColumnGuess>& guesses, std::span<const std::size_t> columns);

} // namespace lapwright::import
