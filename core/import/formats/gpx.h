// SPDX-License-Identifier: GPL-3.0-or-later
// GPX 1.1 (and 1.0) tracks to a Recording: WGS 84, metres, UTC.  The standard has no speed and no course; where a file
// has them (1.0, or an extension's element named speed or course) they are read as m/s and degrees, else speed is
// derived from the positions.  Entities are never expanded: a document type with declarations of them is refused.
#pragma once

#include "core/base/progress.h"
#include "core/base/result.h"
#include "core/recording/recording.h"

#include <string>
#include <string_view>

namespace lapwright::import {

// Whether the first bytes are XML whose root is gpx.
[[nodiscard]] bool looks_like_gpx(std::string_view head);

[[nodiscard]] base::Result<recording::Recording> read_gpx(std::string_view text, const std::string& name,
                                                          const base::Progress& progress);

} // namespace lapwright::import
