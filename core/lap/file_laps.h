// SPDX-License-Identifier: GPL-3.0-or-later
// A file that marks its own laps is a witness: wherever the timing line lies, each of its laps passes it once.
#pragma once

#include "core/lap/lap.h"
#include "core/track/gate.h"

#include <optional>
#include <span>
#include <string>

namespace lapwright::lap {

// What the file's marks say against the passings (increasing) of a timing line, in one sentence; nothing where each lap
// of the usual length has one, or where fewer than two of them can be held against it.
[[nodiscard]] std::optional<std::string> against_file(std::span<const double> passings_s,
                                                      const track::RecordedPassings& marks);

} // namespace lapwright::lap
