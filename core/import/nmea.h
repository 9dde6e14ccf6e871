// SPDX-License-Identifier: GPL-3.0-or-later
// NMEA 0183 sentences to a Recording: GGA, GLL, RMC, VTG, ZDA of the talkers GP, GN, GL, GA, GB (and BD).  Each
// sentence is "$", address, fields, "*" and the XOR of the characters between as two hexadecimal digits; one whose sum
// is wrong is counted and skipped.  Time is that of the fixes, UTC; speeds are in knots, courses in degrees, altitude
// above the geoid.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/recording/recording.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace lapwright::import {

// Whether the first lines of a text are mostly such sentences.
[[nodiscard]] bool looks_like_nmea(std::string_view head);

[[nodiscard]] base::Result<recording::Recording> read_nmea(std::string_view text, const std::string& name,
                                                           const base::Progress& progress);

} // namespace lapwright::import
