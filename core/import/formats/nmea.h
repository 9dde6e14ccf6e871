// SPDX-License-Identifier: GPL-3.0-or-later
// NMEA 0183 sentences to a Recording: GGA, GNS, GLL, RMC, VTG, ZDA of any talker of the
// standard.  Each sentence is "$", address, fields, "*" and the XOR of the characters
// between as two hexadecimal digits; one whose sum is wrong is counted and skipped.  Time is
// that of the fixes, UTC; speeds are in knots, courses in degrees, altitude above the geoid.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/recording/recording.h"

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

namespace lapwright::import {

// Whether a text is mostly such sentences, or has those that tell positions among other lines, a tenth at least.
[[nodiscard]] bool looks_like_nmea(std::string_view head);

[[nodiscard]] base::Result<recording::Recording> read_nmea(std::string_view text, const std::string& name,
                                                           const base::Progress& progress);

} // namespace lapwright::import
