// SPDX-License-Identifier: GPL-3.0-or-later
// A pairing's debrief sheet.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"
#include "core/car/setup_sheet.h"
#include "core/causes/explanation.h"
#include "core/sheet/sheet.h"

#include <string>
#include <vector>

namespace lapwright::analysis {

// What the sheet says besides the two laps; all of it may be missing.
struct SheetExtras {
    const causes::Explanation* explanation = nullptr; // then causes and findings are on the sheet
    car::SetupSheet setup_a;
    car::SetupSheet setup_b;
    std::vector<std::string> notes;
    std::vector<sheet::StillPair> stills;
    std::optional<causes::Side> my_car; // whom "try next" speaks to; absent: both
};

[[nodiscard]] sheet::Sheet debrief_sheet(const Pairing& pairing, base::UnitSystem units, const std::string& version,
                                         const SheetExtras& extras = {});

} // namespace lapwright::analysis
