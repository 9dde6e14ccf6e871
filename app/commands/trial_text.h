// SPDX-License-Identifier: GPL-3.0-or-later
// A setup trial as a table for people and as JSON.
#pragma once

#include "core/analysis/trial_run.h"

#include <string>

namespace lapwright::commands {

[[nodiscard]] std::string trial_table(const analysis::TrialReport& report);
[[nodiscard]] std::string trial_json(const analysis::TrialReport& report);

} // namespace lapwright::commands
