// SPDX-License-Identifier: GPL-3.0-or-later
// The contract of the command line as JSON: SI units, the unit in the key, null for what cannot be had.
#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/further_laps.h"

#include <memory>
#include <nlohmann/json.hpp>
#include <string>
#include <vector>

namespace lapwright::commands {

// File, names, lap and time of one side.
[[nodiscard]] nlohmann::ordered_json side_json(const analysis::Side& side);
[[nodiscard]] std::string laps_json(const std::vector<std::shared_ptr<const analysis::Session>>& sessions);
[[nodiscard]] std::string compare_json(const analysis::Pairing& pairing,
                                       const std::vector<analysis::FurtherLap>& further = {});
// One lap over distance with every channel of its file.
[[nodiscard]] std::string traces_json(const analysis::Side& side);

} // namespace lapwright::commands
