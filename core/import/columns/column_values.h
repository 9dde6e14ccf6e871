// SPDX-License-Identifier: GPL-3.0-or-later
// What the sampled cells of a column say by themselves: how they are written, and their numbers.
#pragma once

#include "core/base/units.h"
#include "core/import/tables/cell_form.h"
#include "core/import/tables/samples.h"
#include "core/import/vocabulary/column_names.h"

#include <string>
#include <string_view>
#include <vector>

namespace lapwright::import {

struct ColumnValues {
    CellForm form = CellForm::text;
    std::vector<double> numbers;        // a row, NaN where the cell is no value or a code for none
    base::Unit unit = base::Unit::none; // that the cells bear, in which the numbers are
    std::string unit_text;
    double largest = 0.0;       // by magnitude
    std::size_t filled = 0;     // cells that hold anything
    std::size_t decimals = 0;   // the most behind a decimal mark
    bool leading_zeros = false; // "002722": written in a fixed width
};

// `meaning` is what the name says, which tells a code for "no value" from a value.
[[nodiscard]] ColumnValues judge_column(const Samples& samples, std::size_t column, NumberStyle style, Role role,
                                        recording::Meaning meaning = recording::Meaning::other);

// Whether most readings are of the form hhmmss and none can be anything else.
[[nodiscard]] bool looks_like_packed_clock(const std::vector<double>& numbers, bool leading_zeros = false);

// Days with the time of day as a fraction, that advance by no more than minutes.
[[nodiscard]] bool looks_like_day_count(const ColumnValues& values);

// Whether all readings can be degrees and minutes without a mark between them, and not degrees.
[[nodiscard]] bool looks_like_degrees_minutes(const std::vector<double>& numbers);

// Median of the advances between rows that stand one below the other; 0 where there is none.
[[nodiscard]] double median_advance(const Samples& samples, const std::vector<double>& numbers);

} // namespace lapwright::import
