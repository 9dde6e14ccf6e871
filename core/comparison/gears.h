// SPDX-License-Identifier: GPL-3.0-or-later
// Gears from engine speed, where no gear was recorded: in gear, engine speed over speed is one of a few fixed ratios.
// The ratios are those that the lap holds for a while; which of them a place has is its gear, counted from the
// shortest that is used (so the first need not be the gearbox's first).
#pragma once

#include "core/lap/lap.h"

#include <optional>

namespace lapwright::comparison {

// Values at the trace's grid points, 0 between two gears.  Absent where a gear was recorded, engine speed was not, or
// the ratios do not stand apart (a slipping or stepless drive).
[[nodiscard]] std::optional<lap::TraceChannel> gears_from_engine_speed(const lap::LapTrace& trace);

} // namespace lapwright::comparison
