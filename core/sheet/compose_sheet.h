// SPDX-License-Identifier: GPL-3.0-or-later
// Comparison -> Sheet: what to say, in which words, rounded to what is known.
#pragma once

#include "core/base/display.h"
#include "core/comparison/comparison.h"
#include "core/comparison/repeatability.h"
#include "core/lap/lap.h"
#include "core/sheet/sheet.h"
#include "core/track/track.h"

#include <string>
#include <vector>

namespace lapwright::sheet {

// One side of the pairing as the sheet names it.
struct SideFacts {
    std::string title; // driver and car
    std::string file;  // without its folder
    const lap::Lap* lap = nullptr;
    const lap::LapTrace* trace = nullptr;
    std::size_t clean_laps = 0;
    std::string driver;
    bool mine = false;      // the person's own car
    std::string conditions; // "21 °C, 1.176 kg/m³", empty where unknown
};

struct Material {
    const track::Track* track = nullptr;
    const comparison::Comparison* comparison = nullptr;
    const std::vector<comparison::Repeatability>* repeatability = nullptr;
    const findings::Headline* headline = nullptr;
    SideFacts a;
    SideFacts b;
    std::string date;              // of the session, may be empty
    std::vector<Finding> findings; // empty: the segments that decide, from the comparison alone
    std::vector<Pair> causes;
    std::vector<Pair> setup;
    std::vector<std::string> notes;
    std::vector<std::string> remarks;
    std::vector<StillPair> stills;
    std::string version;
};

// No pointer of the material may be null.
[[nodiscard]] Sheet compose_sheet(const Material& material, base::UnitSystem units);

} // namespace lapwright::sheet
