// SPDX-License-Identifier: GPL-3.0-or-later
// Learning a track: laps over time, as a table for people and as a document.
#pragma once

#include "core/analysis/learning_run.h"

#include <string>

namespace lapwright::commands {

[[nodiscard]] std::string learning_table(const analysis::LearningReport& report);
[[nodiscard]] std::string learning_json(const analysis::LearningReport& report);

} // namespace lapwright::commands
