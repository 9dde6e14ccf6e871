// SPDX-License-Identifier: GPL-3.0-or-later
// Who drove what, by one rule: the setup sheet's driver and car, which a person wrote for this session, else the
// recording's, whose logger may still name its last owner.  Each of the two for itself; empty where neither tells it.
#pragma once

#include "core/car/setup_sheet.h"
#include "core/recording/recording.h"

#include <string>

namespace lapwright::car {

struct Names {
    std::string driver;
    std::string car;

    bool operator==(const Names&) const = default;
};

// On one line each, without blanks around them.
[[nodiscard]] Names names_of(const recording::Recording& recording, const SetupSheet& sheet);

// "Ylva Torrance — Plover", or the one that is known; empty without names.
[[nodiscard]] std::string title_of(const Names& names);

// The recording bears them from now on.
void take_names(recording::Recording& recording, const SetupSheet& sheet);

} // namespace lapwright::car
