// SPDX-License-Identifier: GPL-3.0-or-later
// What is told before what: single causes, and the sums that the laps may know better than their parts.  The one place
// that decides, for sentence, findings, matrix, what-if and sheet.
//
// All are seconds a lap, so the information of a statement is −ln of its interval's width (the entropy of a normal, up
// to a constant): of a sum and its part the narrower goes first.  A part that is known less well than the sum, or that
// cannot be told where the sum can, comes behind it: with its interval, and never as the first thing said.
#pragma once

#include "core/causes/explanation.h"

#include <optional>
#include <string_view>
#include <vector>

namespace lapwright::causes {

[[nodiscard]] std::string_view key(Term term);     // as in JSON: "grip_and_downforce"
[[nodiscard]] const char* english_name(Term term); // "tyre grip and downforce"
[[nodiscard]] std::string name(Term term);
[[nodiscard]] const Seconds& of(const Row& row, Term term);

// The sum that goes before `term`; absent where it stands on its own.  Aero leans on the split of grip from downforce
// and of drag from power; before grip with downforce goes what corners show, the drivers' use of the grip included.
[[nodiscard]] std::optional<Term> comes_behind(const Row& total, Term term);

// A column of the matrix.  Those that are no part of another add up to all that the cars explain.
struct Column {
    Term term = Term::tyre_grip;
    std::optional<Term> part_of = {}; // a sum that has the column before
    bool behind = false;
};

// The causes, and before two of them their sum where one of them comes behind it.
[[nodiscard]] std::vector<Column> columns(const Row& total);

} // namespace lapwright::causes
