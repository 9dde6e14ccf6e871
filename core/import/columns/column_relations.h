// SPDX-License-Identifier: GPL-3.0-or-later
// What columns say of each other: which one is the time where no name says so, which two are positions in a file
// without names, in which unit a speed or a distance must be to fit, which of two speeds is the wheels', which of two
// columns of one meaning is it.
#pragma once

#include "core/import/columns/column_guess.h"

#include <vector>

namespace lapwright::import {

void relate_columns(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples,
                    bool has_names);

// What a column reads as it is guessed, in SI; NaN where a cell is no value.
[[nodiscard]] std::vector<double> si_numbers(const ColumnGuess& guess, const ColumnValues& values);
// Nothing where none is written.
[[nodiscard]] std::optional<base::Unit> written_unit(const ColumnGuess& guess);

// The steps of it, and what letters beside a position say.

// The units in which speeds, positions, distance and time agree where rows stand beside each other.
void relate_speeds(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples);

// Two columns side by side that move like a vehicle on the globe, in a file that names nothing; "X" and "Y" in degrees.
void find_unnamed_positions(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                            const Samples& samples, bool has_names);

// Two columns of names that say nothing, whose way is that of a speed, or where none is named of a column that may be
// one: the pair that fits it best, told as a guess.
void find_positions_by_speed(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                             const Samples& samples);

// Where nothing tells the motion: two columns side by side, whatever they are called, that drive like a car.
void find_positions_by_driving(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                               const Samples& samples);

// Counts of time and whole parts of a degree, where nothing says how much one is: by the motion.
void settle_countings(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                      const Samples& samples);

// East and north without a written unit that never leave half a unit, with five decimals and more, are degrees.
void settle_degrees(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values);

// A column of letters beside the numbers of a latitude or longitude belongs to it, whatever it is called: without it a
// place south or west would be mirrored.
void find_unnamed_letters(const Samples& samples, const std::vector<ColumnValues>& values,
                          std::vector<ColumnGuess>& guesses);

// Angles with the letters of a latitude or longitude are that, whatever the column is called.
void find_lettered_positions(const Samples& samples, const std::vector<ColumnValues>& values,
                             std::vector<ColumnGuess>& guesses);

// Sets the form of the columns in which O stands, and their doubt.
void settle_letter_o(const Layout& layout, const Samples& samples, std::vector<ColumnGuess>& guesses);

} // namespace lapwright::import
