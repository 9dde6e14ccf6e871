// SPDX-License-Identifier: GPL-3.0-or-later
// Which side of a pairing is the person's own car: the rule by which window, command line and sheet know whom "try
// next" speaks to.
#pragma once

#include "core/analysis/analysis.h"
#include "core/car/names.h"
#include "core/causes/explanation.h"

#include <optional>

namespace lapwright::analysis {

// What is kept of a side that was said to be mine: its names, or the file's name for the car where it has none.
[[nodiscard]] car::Names names_to_keep(const Session& session);

// Both: two sessions of mine.
struct MySides {
    bool a = false;
    bool b = false;

    bool operator==(const MySides&) const = default;
};

// The side whose car has the kept name; of two sessions of that car the one with the kept driver.  Where a car has no
// name the driver's alone counts.
[[nodiscard]] MySides my_sides(const std::optional<car::Names>& mine, const Pairing& pairing);

// Whom "try next" speaks to; nothing: both, because neither is mine or both are.
[[nodiscard]] std::optional<causes::Side> spoken_to(const MySides& mine);

} // namespace lapwright::analysis
