// SPDX-License-Identifier: GPL-3.0-or-later
// The causes of a gap as JSON (SI units, null for what cannot be had) and as a table for people.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "core/findings/findings.h"

#include <string>
#include <vector>

namespace lapwright::commands {

[[nodiscard]] std::string causes_json(const causes::Explanation& explanation,
                                      const std::vector<findings::Finding>& findings,
                                      const std::vector<recording::Warning>& warnings);
[[nodiscard]] std::string causes_table(const causes::Explanation& explanation,
                                       const std::vector<findings::Finding>& findings,
                                       const std::vector<recording::Warning>& warnings, base::UnitSystem units);

} // namespace lapwright::commands
