// SPDX-License-Identifier: GPL-3.0-or-later
// What both drivers do in each segment, beside the causes: as JSON and as a table for people.
#pragma once

#include "core/base/display.h"
#include "core/causes/explanation.h"

#include <nlohmann/json.hpp>
#include <string>

namespace lapwright::commands {

// Places in metres from the gate; differences positive where they usually favour A; null for what cannot be had; the
// keys that were taken from motion, for want of a pedal channel, are listed under "derived".
[[nodiscard]] nlohmann::ordered_json driving_json(const causes::SegmentRow& row);

[[nodiscard]] std::string driving_table(const causes::Explanation& explanation, base::UnitSystem units);

} // namespace lapwright::commands
