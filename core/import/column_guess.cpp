// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/column_guess.h"

#include "core/import/angle_text.h"
#include "core/import/moment.h"
#include "core/import/units_in_text.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::import {
namespace {

using base::Quantity;
using base::Unit;
using recording::Meaning;

constexpr std::size_t shown_values = 8;

struct Values {
    std::vector<double> numbers; // in the order of the rows, absent cells left out
    CellForm form = CellForm::text;
};

template <typename Read>
std::size_t count_read(const std::vector<std::string_view>& cells, const Read& read) {
    return static_cast<std::size_t>(
        std::ranges::count_if(cells, [&](std::string_view c) { return read(c).has_value(); }));
}

// The form that most filled cells have; numbers first.
Values judge_cells(const std::vector<std::string_view>& filled, NumberStyle style) {
    const auto number = [&](std::string_view c) { return read_number(c, style); };
    const auto angle = [&](std::string_view c) { return read_angle(c, style.decimal_mark); };
    const std::array counts{
        std::pair{CellForm::number, count_read(filled, number)},
        std::pair{CellForm::clock, count_read(filled, read_clock)},
        std::pair{CellForm::moment, count_read(filled, read_moment)},
        std::pair{CellForm::date, count_read(filled, read_date)},
        std::pair{CellForm::hemisphere, count_read(filled, read_hemisphere)},
        std::pair{CellForm::angle, count_read(filled, angle)},
    };
    const auto best = std::ranges::max_element(counts, {}, [](const auto& pair) { return pair.second; });
    Values values;
    if (filled.empty() || 2 * best->second < filled.size()) return values;
    values.form = best->first;
    for (const std::string_view cell : filled)
        if (const auto value = number(cell)) values.numbers.push_back(*value);
    return values;
}

double median_step(const std::vector<double>& numbers) {
    std::vector<double> steps;
    for (std::size_t i = 1; i < numbers.size(); ++i)
        if (numbers[i] > numbers[i - 1]) steps.push_back(numbers[i] - numbers[i - 1]);
    if (steps.empty()) return 0.0;
    const auto middle = steps.begin() + static_cast<std::ptrdiff_t>(steps.size() / 2);
    std::ranges::nth_element(steps, middle);
    return *middle;
}

double largest(const std::vector<double>& numbers) {
    double most = 0.0;
    for (const double value : numbers)
        most = std::max(most, std::abs(value));
    return most;
}

// Which meaning a unit turns a name into: "lat" in g is no latitude.
Meaning meaning_with_unit(Meaning meaning, Unit unit) {
    const Quantity quantity = base::quantity(unit);
    if (unit == Unit::none || quantity == recording::quantity(meaning)) return meaning;
    if (meaning == Meaning::latitude && quantity == Quantity::acceleration) return Meaning::lateral_acceleration;
    if (meaning == Meaning::longitude && quantity == Quantity::acceleration) return Meaning::longitudinal_acceleration;
    if (meaning == Meaning::brake && quantity == Quantity::pressure) return Meaning::brake_pressure;
    if (meaning == Meaning::brake_pressure && quantity == Quantity::share) return Meaning::brake;
    const bool count = recording::quantity(meaning) == Quantity::none;
    return count ? meaning : Meaning::other;
}

// The unit of a meaning where the file states none: by what its values can only be.
void guess_unit(ColumnGuess& guess, const std::vector<double>& numbers) {
    const double most = largest(numbers);
    const auto settle = [&](Unit unit, double confidence, std::string reason, std::string doubt = "") {
        guess.unit = unit;
        guess.confidence = std::min(guess.confidence, confidence);
        guess.reason += "; " + std::move(reason);
        guess.doubt = std::move(doubt);
    };
    switch (recording::quantity(guess.meaning)) {
    case Quantity::angle:
        if (guess.meaning == Meaning::latitude || guess.meaning == Meaning::longitude || most > 6.5)
            return settle(Unit::degree, 0.9, "no unit written, degrees by its values");
        return settle(Unit::degree, 0.5, "no unit written, taken as degrees",
                      "degrees and radians are both plausible: taken as degrees");
    case Quantity::speed:
        return settle(Unit::kilometre_per_hour, 0.5, "no unit written, taken as km/h",
                      "no unit is written and km/h, mph and m/s are all plausible: taken as km/h");
    case Quantity::acceleration:
        if (most > 4.5) return settle(Unit::metre_per_second_squared, 0.7, "no unit written, m/s² by its values");
        return settle(Unit::standard_gravity, 0.7, "no unit written, g by its values");
    case Quantity::angular_rate:
        if (most > 4.0)
            return settle(Unit::degree_per_second, 0.8, "no unit written, degrees per second by its values");
        return settle(Unit::radian_per_second, 0.5, "no unit written, taken as rad/s",
                      "rad/s and degrees per second are both plausible: taken as rad/s");
    case Quantity::share:
        if (most > 1.5) return settle(Unit::percent, 0.85, "no unit written, percent by its values");
        return settle(Unit::fraction, 0.8, "no unit written, parts of one by its values");
    case Quantity::rotation:
        return settle(Unit::revolution_per_minute, most > 300.0 ? 0.9 : 0.6, "no unit written, taken as rpm");
    case Quantity::length:
        return settle(Unit::metre, 0.6, "no unit written, taken as metres");
    case Quantity::temperature:
        return settle(Unit::celsius, 0.6, "no unit written, taken as °C");
    case Quantity::time:
        return settle(Unit::second, 0.6, "no unit written, taken as seconds");
    case Quantity::pressure:
        if (most > 20'000.0) return settle(Unit::pascal, 0.7, "no unit written, Pa by its values");
        if (most > 300.0)
            return settle(Unit::kilopascal, 0.5, "no unit written, taken as kPa", "the unit of pressure is not sure");
        return settle(Unit::bar, 0.5, "no unit written, taken as bar",
                      "the unit of pressure is not sure: taken as bar");
    default:
        guess.unit = Unit::none;
    }
}

void guess_time_unit(ColumnGuess& guess, const std::vector<double>& numbers) {
    const double most = largest(numbers);
    const double step = median_step(numbers);
    if (guess.unit_written && base::quantity(guess.unit) == Quantity::time) return;
    if (most > 1e14)
        guess.unit = Unit::microsecond;
    else if (most > 1e11)
        guess.unit = Unit::millisecond;
    else if (most > 1e8)
        guess.unit = Unit::second;
    else if (step >= 2.0)
        guess.unit = Unit::millisecond;
    else
        guess.unit = Unit::second;
    guess.reason += "; no unit written, " + std::string(base::symbol(guess.unit)) + " by its steps";
    if (step >= 0.9 && step < 2.0 && most < 1e8) {
        guess.doubt = "its steps of 1 could be seconds or milliseconds: taken as seconds";
        guess.confidence = std::min(guess.confidence, 0.5);
    }
}

void settle_unit(ColumnGuess& guess, const Values& values) {
    switch (guess.form) {
    case CellForm::angle:
        guess.unit = Unit::degree;
        return;
    case CellForm::clock:
    case CellForm::moment:
    case CellForm::date:
        guess.unit = Unit::second;
        return;
    default:
        break;
    }
    if (guess.role == Role::time) return guess_time_unit(guess, values.numbers);
    if (guess.role == Role::channel && !guess.unit_written && guess.meaning != Meaning::other)
        guess_unit(guess, values.numbers);
}

void settle_role(ColumnGuess& guess, const Values& values) {
    guess.form = values.form;
    const bool is_letter = values.form == CellForm::hemisphere;
    if (values.form == CellForm::text)
        guess.role = Role::skip;
    else if ((guess.role == Role::north_south || guess.role == Role::east_west) != is_letter)
        guess.role = Role::skip;
    else if (guess.role == Role::date && values.form != CellForm::date && values.form != CellForm::number)
        guess.role = values.form == CellForm::moment ? Role::time : Role::skip;
    else if (guess.role == Role::skip && values.form == CellForm::moment) {
        guess.role = Role::time;
        guess.confidence = 0.7;
    } else if (guess.role == Role::channel && guess.meaning == Meaning::other && values.form == CellForm::clock) {
        guess.role = Role::skip;
    }
}

ColumnGuess guess_column(const Layout& layout, std::size_t column, const SampleRows& rows) {
    ColumnGuess guess;
    guess.header = layout.names[column];
    NameAndUnit parted = part_name_and_unit(guess.header);
    if (parted.unit_text.empty() && column < layout.units.size() && !layout.units[column].empty()) {
        parted.unit_text = layout.units[column];
        parted.unit = parse_unit(parted.unit_text);
    }
    guess.name = parted.name.empty() ? guess.header : parted.name;
    guess.unit_text = parted.unit_text;
    guess.unit_written = parted.unit.has_value();
    guess.unit = parted.unit.value_or(Unit::none);

    std::vector<std::string_view> filled;
    for (const auto& row : rows) {
        const std::string& cell = row[column];
        if (guess.first_values.size() < shown_values) guess.first_values.push_back(cell);
        if (!means_absent(cell)) filled.push_back(cell);
    }
    const Values values = judge_cells(filled, layout.style);

    if (const auto named = meaning_of_name(guess.name)) {
        guess.role = named->role;
        guess.confidence = named->confidence;
        guess.from_satellites = named->from_satellites;
        guess.meaning = meaning_with_unit(named->meaning, guess.unit);
        guess.reason = "named \"" + guess.name + "\"";
    } else {
        guess.role = Role::channel;
        guess.confidence = 0.9;
        guess.reason = "its name is not known: kept as it is";
    }
    if (guess.unit_written) guess.reason += ", unit " + guess.unit_text + " as written";
    settle_role(guess, values);
    settle_unit(guess, values);
    return guess;
}

// A column of readings that only ever advance, evenly, is the time where no name says so.
bool only_advances(const std::vector<double>& readings) {
    const double step = median_step(readings);
    if (readings.size() < 4 || step <= 0.0) return false;
    std::size_t even = 0;
    for (std::size_t i = 1; i < readings.size(); ++i) {
        const double advance = readings[i] - readings[i - 1];
        if (advance < 0.0) return false;
        if (std::abs(advance - step) <= 0.5 * step) ++even;
    }
    return 4 * even >= 3 * (readings.size() - 1);
}

void find_unnamed_time(std::vector<ColumnGuess>& guesses, const Layout& layout, const SampleRows& rows) {
    if (std::ranges::any_of(guesses, [](const auto& guess) { return guess.role == Role::time; })) return;
    for (std::size_t column = 0; column < guesses.size(); ++column) {
        ColumnGuess& guess = guesses[column];
        const bool unnamed = guess.role == Role::skip || guess.meaning == Meaning::other;
        if (!unnamed || (guess.form != CellForm::clock && guess.form != CellForm::number)) continue;
        std::vector<double> readings;
        for (const auto& row : rows) {
            const std::string& cell = row[column];
            const auto reading = guess.form == CellForm::clock ? read_clock(cell) : read_number(cell, layout.style);
            if (reading) readings.push_back(*reading);
        }
        if (!only_advances(readings)) continue;
        guess.role = Role::time;
        guess.confidence = guess.form == CellForm::clock ? 0.8 : 0.5;
        guess.reason = "its name is not known, but its readings advance evenly like a clock's";
        if (guess.form == CellForm::number) guess.doubt = "taken as the time because it advances evenly";
        guess.unit = guess.form == CellForm::clock ? Unit::second : guess.unit;
        if (guess.form == CellForm::number) guess_time_unit(guess, readings);
        return;
    }
}

} // namespace

std::vector<ColumnGuess> guess_columns(const Layout& layout, const SampleRows& rows) {
    std::vector<ColumnGuess> guesses;
    for (std::size_t i = 0; i < layout.columns; ++i)
        guesses.push_back(guess_column(layout, i, rows));
    find_unnamed_time(guesses, layout, rows);
    return guesses;
}

} // namespace lapwright::import
