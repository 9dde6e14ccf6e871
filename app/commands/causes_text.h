// SPDX-License-Identifier: GPL-3.0-or-later
// The causes of a gap as JSON (SI units, null for what cannot be had) and as a table for people.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "core/causes/explanation.h"
#include "core/findings/findings.h"

#include <optional>
#include <string>
#include <vector>

namespace lapwright::commands {

// my_car: whom "try next" of the findings speaks to; absent: both.
[[nodiscard]] std::string causes_json(const analysis::Pairing& pairing, const causes::Explanation& explanation,
                                      const std::vector<findings::Finding>& findings,
                                      std::optional<causes::Side> my_car);
[[nodiscard]] std::string causes_table(const analysis::Pairing& pairing, const causes::Explanation& explanation,
                                       const std::vector<findings::Finding>& findings,
                                       std::optional<causes::Side> my_car, base::UnitSystem units);

} // namespace lapwright::commands
