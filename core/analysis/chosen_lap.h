// SPDX-License-Identifier: GPL-3.0-or-later
// Which lap of a session, placed on a common line, is meant.
#pragma once

#include "core/analysis/common_track.h"
#include "core/base/result.h"
#include "core/lap/lap.h"

#include <optional>

namespace lapwright::analysis {

// Half way round `lap`: what ties a lap on the common line to one of the session's own count, and back.
[[nodiscard]] bool holds_middle(const lap::Lap& own, const lap::Lap& lap);

// The number of the session's own count in which the middle of a lap on the common line lies: people know laps by it.
[[nodiscard]] int own_number(const Session& session, const lap::Lap& lap);

// The lap that was asked for, or the fastest clean one on the common line: only there do the laps of both begin at the
// same place.  It bears the number of the session's own count in which its middle lies.
[[nodiscard]] base::Result<lap::Lap> chosen_lap(const Placed& side, std::optional<int> number);

} // namespace lapwright::analysis
