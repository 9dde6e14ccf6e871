// SPDX-License-Identifier: GPL-3.0-or-later
// What a column's name says it is.  Words that only say where a value comes from or at which wheel it was taken ("GPS",
// "front left") do not matter, nor does the order of words; any other word left over means that the name is not known:
// "brake temperature" is no brake.
#pragma once

#include "core/import/vocabulary/vocabulary.h"

#include <optional>
#include <string_view>

namespace lapwright::import {

// Whether text in brackets is no unit but says where a value comes from, or nothing at all: "GPS", "front left", "#".
[[nodiscard]] bool only_says_where(std::string_view text, const Vocabulary& known = built_in_vocabulary());

// Whether the name itself says that values are in g: "Lat G", "GLong".
[[nodiscard]] bool names_gravity(std::string_view name, const Vocabulary& known = built_in_vocabulary());

// The name without those words.
[[nodiscard]] std::string without_gravity(std::string_view name, const Vocabulary& known = built_in_vocabulary());

// Nothing where the name is not known.  `written` is the quantity of the unit that stands beside the name: "Lateral" is
// known with an acceleration's.
[[nodiscard]] std::optional<NamedColumn> meaning_of_name(std::string_view name,
                                                         base::Quantity written = base::Quantity::none,
                                                         const Vocabulary& known = built_in_vocabulary());

// "Lat N", "Longitude (W)", "LonWest": a position whose name says where its numbers are positive.  A letter alone
// counts as a capital.
struct SidedPosition {
    NamedColumn column;
    double sign = 1.0;
};
[[nodiscard]] std::optional<SidedPosition> sided_position(std::string_view name,
                                                          const Vocabulary& known = built_in_vocabulary());

} // namespace lapwright::import
