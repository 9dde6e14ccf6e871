// SPDX-License-Identifier: GPL-3.0-or-later
// Why a person is asked what a column is, as a kind with its parameters; its words are made in column_doubt.cpp alone.
#pragma once

#include <string>
#include <vector>

namespace lapwright::recording {

enum class DoubtKind {
    none,

    // What the column is; texts: what it is taken for, as words.
    name_unsure,            // its name does not say it for sure
    taken_by_values,        // its name is not known
    taken_as_degrees,       // its name says a place without a unit
    taken_by_advance,       // it advances evenly
    taken_by_motion,        // it follows what the car does; texts: the unit and what it follows behind the meaning
    axis_without_direction, // its name says an axis alone
    axis_elsewhere,         // an acceleration that does not point there; without a meaning
    moves_like,             // without a meaning, though it does as that would; texts: the unit behind the meaning
    not_confirmed,          // without a meaning, though its unit says that it may be that; texts: the unit behind
    one_of_two,             // without a meaning; texts: the meaning, the column that is taken for it
    name_contradicted,      // not used; texts: what its name says
    exchanged_impossible,   // latitude and longitude, because one is beyond 90°
    exchanged_fits,         // the same, because only so they fit the speed
    beyond_percent,         // without a meaning
    laps_too_short,         // without a meaning; figures: how often it changes, s
    letter_o,               // east or west; taken as east

    // In which unit or form; texts: the one that is taken, then the others.
    unit_open,          // none is written
    form_open,          // a second way to read the digits
    minutes_by_size,    // of arc; nothing else
    part_of_unit,       // texts: how much one is, the unit; so it fits the positions
    written_unit_taken, // texts: the unit as written, the one that the values speak for
    written_unit_wrong, // texts: the unit as written, the one that fits the positions and is taken
};

struct ColumnDoubt {
    DoubtKind kind = DoubtKind::none;
    std::vector<std::string> texts{};
    std::vector<double> figures{};

    [[nodiscard]] bool empty() const { return kind == DoubtKind::none; }
    void clear() { *this = {}; }
    bool operator==(const ColumnDoubt&) const = default;
};

// No full stop: "no unit is written; km/h and mph are both plausible: taken as km/h".
[[nodiscard]] std::string words(const ColumnDoubt& doubt);

// "its unit is written as mph, but it fits the positions in km/h"
[[nodiscard]] std::string fits_otherwise(const std::string& written, const std::string& fitting);

} // namespace lapwright::recording
