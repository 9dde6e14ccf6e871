// SPDX-License-Identifier: GPL-3.0-or-later
// A setup trial as a table for people and as JSON.
#pragma once

#include "core/analysis/trial_run.h"

#include <nlohmann/json.hpp>
#include <string>

namespace lapwright::commands {

// What changed of a car, each figure with its interval or why it cannot be told.
[[nodiscard]] nlohmann::ordered_json figure_changes_json(const car::FigureChanges& changes);
[[nodiscard]] std::string trial_table(const analysis::TrialReport& report);
[[nodiscard]] std::string trial_json(const analysis::TrialReport& report);

} // namespace lapwright::commands
