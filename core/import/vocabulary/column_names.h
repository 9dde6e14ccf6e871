// SPDX-License-Identifier: GPL-3.0-or-later
// What a column's name says it is, in English, German, French, Spanish, Italian and Dutch.  Words that only say where a
// value comes from or at which wheel it was taken ("GPS", "front left") do not matter, nor does the order of words;
// any other word left over means that the name is not known: "brake temperature" is no brake.
// Common practice, no source: the words were collected by hand.
#pragma once

#include "core/recording/meaning.h"

#include <optional>
#include <string_view>

namespace lapwright::import {

// What a column is for.  Only channels reach the recording; the others make its stamps and positions.
enum class Role {
    skip,
    channel,
    time, // elapsed, time of day or a moment: the cells and the unit say which
    date,
    north_south, // the letter that belongs to a latitude
    east_west,
};

struct NamedColumn {
    Role role = Role::skip;
    recording::Meaning meaning = recording::Meaning::other;
    double confidence = 0.0;      // 0..1
    bool from_satellites = false; // the name says GPS, GNSS or the like
    bool at_wheel = false;        // the name says wheel, or front, rear, left, right
};

// Whether text in brackets is no unit but says where a value comes from, or nothing at all: "GPS", "front left", "#".
[[nodiscard]] bool only_says_where(std::string_view text);

// Whether the name itself says that values are in g: "Lat G", "GLong".
[[nodiscard]] bool names_gravity(std::string_view name);

// Nothing where the name is not known.  `written` is the quantity of the unit that stands beside the name: "Lateral" is
// known with an acceleration's.
[[nodiscard]] std::optional<NamedColumn> meaning_of_name(std::string_view name,
                                                         base::Quantity written = base::Quantity::none);

} // namespace lapwright::import
