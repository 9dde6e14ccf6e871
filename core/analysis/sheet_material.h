// SPDX-License-Identifier: GPL-3.0-or-later
// A pairing's debrief sheet.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "core/sheet/sheet.h"

#include <string>

namespace lapwright::analysis {

[[nodiscard]] sheet::Sheet debrief_sheet(const Pairing& pairing, base::UnitSystem units, const std::string& version);

} // namespace lapwright::analysis
