// SPDX-License-Identifier: GPL-3.0-or-later
// A cell that bears its own unit: "48 km/h", "0,35g", "12.5 °C".
#pragma once

#include "core/base/units.h"
#include "core/import/text/number_scan.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::import {

struct MeasuredText {
    double value = 0.0; // in the unit
    base::Unit unit = base::Unit::none;
    std::string unit_text;
};

// Nothing where the cell is no number, or no known unit stands behind it.
[[nodiscard]] std::optional<MeasuredText> read_measured(std::string_view cell, NumberStyle style);

} // namespace lapwright::import
