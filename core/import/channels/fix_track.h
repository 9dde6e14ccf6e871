// SPDX-License-Identifier: GPL-3.0-or-later
// Fixes of a receiver, one after the other, to channels of a Recording: what GPX and NMEA have in common.  Each
// quantity keeps its own stamps; where the file has no speed it is derived from the positions and told to be.
#pragma once

#include "core/import/channels/time_axis.h"
#include "core/import/columns/column_guess.h"
#include "core/recording/recording.h"

#include <cstdint>
#include <limits>
#include <vector>

namespace lapwright::import {

struct Fix {
    static constexpr double absent = std::numeric_limits<double>::quiet_NaN();

    double time_s = absent; // of any origin, the same for all
    double latitude = absent;
    double longitude = absent;
    double altitude_m = absent;
    double speed_mps = absent;
    double course = absent; // rad, clockwise from north
    double satellites = absent;
    double dilution = absent;
    double accuracy_m = absent;
    bool new_segment = false; // the file says that reception was lost before
    std::uint32_t line = 0;
};

// What the file says beside the fixes, and what it was taken for.
struct FixColumn {
    ColumnGuess guess;
    std::vector<double> values; // as many as there are fixes, SI; NaN where absent
};

// Adds channels, stamps, splits and warnings; false where fewer than two fixes have a time and a position.
[[nodiscard]] bool add_fixes(recording::Recording& recording, const std::vector<Fix>& fixes, ClockKind kind,
                             double& first_reading_s, std::vector<FixColumn> columns = {});

} // namespace lapwright::import
