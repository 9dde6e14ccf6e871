// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/time_choice.h"

#include "core/base/translation.h"
#include "core/import/columns/column_units.h"

#include <algorithm>
#include <cmath>

namespace lapwright::import {
namespace {

using base::Quantity;
using recording::Meaning;

// A clock that was passed over must stay behind the chosen one, whatever its form adds to its rank.
constexpr double passed_over = 0.2;
constexpr double min_chosen = 0.5;

// How the readings go from row to row.
struct Advance {
    std::size_t steps = 0;
    std::size_t forward = 0;
    std::size_t backward = 0;
    std::size_t even = 0;    // forward by the usual step
    std::size_t by_one = 0;  // forward by exactly one
    std::size_t between = 0; // backward from one place of the file to a later one

    [[nodiscard]] double share(std::size_t count) const {
        return steps == 0 ? 0.0 : static_cast<double>(count) / static_cast<double>(steps);
    }
};

Advance advance_of(const Samples& samples, const ColumnValues& values) {
    Advance advance;
    const double usual = median_advance(samples, values.numbers);
    // Written stamps are rounded; clocks are even otherwise.
    const double slack = 0.1 * usual + 1.5 * std::pow(10.0, -static_cast<double>(values.decimals));
    for (std::size_t i = 1; i < values.numbers.size(); ++i) {
        const double step = values.numbers[i] - values.numbers[i - 1];
        if (std::isnan(step)) continue;
        if (std::ranges::binary_search(samples.block_starts, i)) {
            if (step < 0.0) ++advance.between;
            continue;
        }
        ++advance.steps;
        if (step > 0.0) ++advance.forward;
        if (step < 0.0) ++advance.backward;
        if (step > 0.0 && std::abs(step - usual) <= slack) ++advance.even;
        if (step == 1.0) ++advance.by_one;
    }
    return advance;
}

// Seconds since 1970 are none, though they may go up by one a row.
bool is_counter(const Advance& advance, const ColumnValues& values) {
    return values.largest < 1e8 && advance.steps > 0 && advance.by_one == advance.steps;
}

bool is_clock_form(CellForm form) {
    return is_clock(form) || form == CellForm::moment;
}

// A column without a known name that advances as a clock does.
bool may_be_unnamed_clock(const ColumnGuess& guess, const ColumnValues& values, const Advance& advance) {
    const bool unnamed = guess.role == Role::skip || (guess.role == Role::channel && guess.meaning == Meaning::other);
    if (!unnamed || advance.steps < 3 || advance.backward > 0 || advance.between > 0 || advance.forward == 0)
        return false;
    const Quantity written = base::quantity(guess.unit);
    if (guess.unit_written && written != Quantity::time) return false;
    if (is_clock_form(values.form)) return true;
    return is_numeric(values.form) && !is_counter(advance, values) && 10 * advance.even >= 9 * advance.steps;
}

struct Candidate {
    std::size_t column = 0;
    double worth = 0.0;
    bool named = false;
};

std::vector<Candidate> candidates_of(const std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                                     const Samples& samples) {
    std::vector<Candidate> found;
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        const ColumnGuess& guess = guesses[i];
        const Advance advance = advance_of(samples, values[i]);
        const bool named = guess.role == Role::time;
        if (!named && !may_be_unnamed_clock(guess, values[i], advance)) continue;
        const double by_name = named ? guess.confidence : is_clock_form(values[i].form) ? 0.7 : 0.4;
        const double by_form = values[i].form == CellForm::number   ? 0.1
                               : values[i].form == CellForm::moment ? 0.05
                                                                    : 0.0;
        // A clock that shows whole seconds beside one that shows thousandths, or seconds that begin again each minute.
        const double by_advance = 0.5 * advance.share(advance.forward) - 2.0 * advance.share(advance.backward) -
                                  (advance.between > 1 ? 0.3 : 0.0);
        const double by_counting = named && is_counter(advance, values[i]) && !guess.unit_written ? -0.2 : 0.0;
        found.push_back({i, by_name + by_form + by_advance + by_counting, named});
    }
    return found;
}

void take_unnamed(ColumnGuess& guess, const ColumnValues& values, const Samples& samples) {
    const bool clock = is_clock_form(values.form);
    guess.role = Role::time;
    guess.form = values.form;
    guess.confidence = clock ? 0.8 : 0.5;
    guess.reason = base::said("its name is not known, but its readings advance evenly like a clock's");
    guess.doubt.clear();
    if (clock)
        guess.unit = base::Unit::second;
    else if (base::quantity(guess.unit) != Quantity::time)
        guess_time_unit(guess, values, median_advance(samples, values.numbers));
    if (!clock && guess.doubt.empty()) guess.doubt = {recording::DoubtKind::taken_by_advance, {"the time"}};
}

// Without any other clock, the time that starts again with each lap: its rows are put end to end (time_axis.h).
void take_running_lap_time(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                           const Samples& samples) {
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        if (guesses[i].role != Role::channel || guesses[i].meaning != Meaning::lap_time) continue;
        const Advance advance = advance_of(samples, values[i]);
        if (advance.steps < 3 || 10 * advance.even < 9 * advance.steps) continue;
        guesses[i].role = Role::time;
        guesses[i].confidence = std::max(guesses[i].confidence, min_chosen);
        guesses[i].reason = base::said("no other clock stands in the file, and it advances evenly from row to row");
        return;
    }
}

} // namespace

void choose_time(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples) {
    const auto candidates = candidates_of(guesses, values, samples);
    if (candidates.empty()) return take_running_lap_time(guesses, values, samples);
    const Candidate best = *std::ranges::max_element(candidates, {}, &Candidate::worth);
    if (!best.named) take_unnamed(guesses[best.column], values[best.column], samples);
    guesses[best.column].confidence = std::max(guesses[best.column].confidence, min_chosen);
    for (const Candidate& other : candidates)
        if (other.named && other.column != best.column)
            guesses[other.column].confidence = std::min(guesses[other.column].confidence, passed_over);
}

std::optional<std::size_t> time_column(const std::vector<ColumnGuess>& guesses) {
    std::optional<std::size_t> best;
    const auto rank = [](const ColumnGuess& guess) {
        const double form = guess.form == CellForm::number ? 0.2 : guess.form == CellForm::moment ? 0.1 : 0.0;
        return (guess.settled ? 1.0 : guess.confidence) + form;
    };
    for (std::size_t i = 0; i < guesses.size(); ++i)
        if (guesses[i].role == Role::time && (!best || rank(guesses[i]) > rank(guesses[*best]))) best = i;
    return best;
}

} // namespace lapwright::import
