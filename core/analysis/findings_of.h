// SPDX-License-Identifier: GPL-3.0-or-later
// The findings of a pairing, with all that they need of it: window, command line and sheet ask here.
#pragma once

#include "core/analysis/analysis.h"
#include "core/findings/findings.h"

namespace lapwright::analysis {

// explanation: may be null, while it is being worked out.
[[nodiscard]] std::vector<findings::Finding> findings_of(const Pairing& pairing, const causes::Explanation* explanation,
                                                         base::UnitSystem units,
                                                         std::optional<causes::Side> my_car = {});

} // namespace lapwright::analysis
