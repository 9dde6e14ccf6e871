// SPDX-License-Identifier: GPL-3.0-or-later
// The number of the lap where no column bears it: a lap time that runs and starts again, or a way in the lap that does,
// counts the laps.
#pragma once

#include "core/recording/recording.h"

#include <optional>

namespace lapwright::import {

// On the stamps of the channel that starts again, from 0; nothing where the laps are numbered or marked already, or
// none starts again twice and more.
[[nodiscard]] std::optional<recording::Channel> counted_laps(const recording::Recording& recording);

} // namespace lapwright::import
