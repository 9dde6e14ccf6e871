// SPDX-License-Identifier: GPL-3.0-or-later
// What both drivers do in a segment, or over the lap, in words and shown units: how much of the car they use, braking
// and throttle points, time with neither pedal, gear changes.  So that "driver & rest" can be read.
#pragma once

#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "core/findings/headline.h"

#include <string>
#include <vector>

namespace lapwright::findings {

// One figure of both drivers.  A value taken from motion, because the pedal was not recorded, begins with "≈".
struct DriverFigure {
    std::string name; // with its unit: "full throttle, m after slowest"
    std::string a;    // "12 ±3"; "—" where it is not known
    std::string b;
    std::string says; // who does more of it: "A 12 ±4 m later"; may be empty
    // Whom that usually favours; neither where it may be chance.
    Favours favours = Favours::neither;
};

// Those that either driver has.
[[nodiscard]] std::vector<DriverFigure> driver_figures(const causes::SegmentRow& row, base::UnitSystem units);
// The same over the whole lap: means of use, sums of seconds and shifts.
[[nodiscard]] std::vector<DriverFigure> driver_figures(const causes::Explanation& explanation);

// What "≈" means.
[[nodiscard]] std::string driver_figures_note();

} // namespace lapwright::findings
