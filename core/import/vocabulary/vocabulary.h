// SPDX-License-Identifier: GPL-3.0-or-later
// What names of columns, units and lines above a table say, read from text that a person can read and extend:
// resources/vocabulary, compiled in, and a file of the same form of the person's own.
//
//     what how-sure: name, name, …            "lateral_acceleration 0.95: lateral acceleration, lat acc"
//     what how-sure with quantity: name, …    known only beside a unit of that quantity
//     unit symbol: spelling, spelling, …      "unit km/h: km/h, kph"; "unit in in brackets: in"
//     from satellites: …   at a wheel: …   no matter: …   in g: …   towards west: …
//     fact driver: …                          also car, track, date, clock, start, rate
//
// Lines that are indented go on with the line above; "#" begins a comment.
#pragma once

#include "core/base/result.h"
#include "core/base/units.h"
#include "core/recording/meaning.h"

#include <map>
#include <memory>
#include <optional>
#include <set>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

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

struct UnitSpelling {
    base::Unit unit{};
    bool in_brackets = false; // only there: "brake in" is no brake in inches
};

// "Lon W": a position whose name says where it is positive.
struct Side {
    bool across = false; // of a longitude
    double sign = 1.0;   // of a positive number
};

enum class FactKey { driver, car, track, date, clock, start, rate };

// Keys are plain words (words.h) in alphabetical order; spellings of units are folded, without blanks.
struct Vocabulary {
    std::map<std::pair<base::Quantity, std::string>, NamedColumn> columns; // Quantity::none: whatever the unit
    std::map<std::string, UnitSpelling> units;
    std::set<std::string> from_satellites;
    std::set<std::string> at_wheel;
    std::set<std::string> no_matter;
    std::set<std::string> in_g;
    std::map<std::string, Side> sides;
    std::map<std::string, FactKey> facts;
};

// What the program knows by itself.
[[nodiscard]] const Vocabulary& built_in_vocabulary();

// The known words and those of the text; a name that the text gives again is what the text says.  `name` stands for the
// file in the error (value_not_readable), which names the line.
[[nodiscard]] base::Result<Vocabulary> with_words(Vocabulary known, std::string_view text, const std::string& name);

// Words of a phrase, parted by blanks, and the key that the same words have in any order.
[[nodiscard]] std::vector<std::string> split_words(std::string_view phrase);
[[nodiscard]] std::string key_of(std::vector<std::string> words);
// The key under which a spelling of a unit stands.
[[nodiscard]] std::string unit_key(std::string_view spelling);

// By its symbol; "" is none, "0..1" parts of one.
[[nodiscard]] std::string unit_name(base::Unit unit);
[[nodiscard]] std::optional<base::Unit> unit_of_name(std::string_view name);

[[nodiscard]] std::string_view name(Role role);
[[nodiscard]] std::optional<Role> parse_role(std::string_view text);

} // namespace lapwright::import
