// SPDX-License-Identifier: GPL-3.0-or-later
// A car over all its sessions as JSON and as tables.
#pragma once

#include "core/analysis/car_season.h"

#include <string>

namespace lapwright::commands {

[[nodiscard]] std::string together_json(const analysis::CarSeason& season);
[[nodiscard]] std::string together_table(const analysis::CarSeason& season);

} // namespace lapwright::commands
