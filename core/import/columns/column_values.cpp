// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/column_values.h"

#include "core/base/number_text.h"
#include "core/import/columns/sentinels.h"
#include "core/import/text/moment.h"
#include "core/import/vocabulary/measured_text.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>

namespace lapwright::import {
namespace {

using recording::Meaning;

constexpr double seconds_a_day = 86400.0;

// The forms in the order in which they are tried: a date or a clock reading is never a number, but a packed one is.
std::vector<CellForm> forms_for(Role role, Meaning meaning) {
    if (role == Role::date) return {CellForm::date, CellForm::packed_date, CellForm::moment, CellForm::number};
    if (role == Role::north_south || role == Role::east_west) return {CellForm::hemisphere};
    using enum CellForm;
    // "0.5 s" is half a second of a time and half a degree south of a latitude.
    const bool angle_first =
        role == Role::channel && (meaning == Meaning::other || recording::quantity(meaning) == base::Quantity::angle);
    if (angle_first) return {number, clock, moment, date, hemisphere, angle, number_with_unit};
    return {number, clock, moment, date, number_with_unit, hemisphere, angle};
}

// The first cell with a unit; nothing where others measure another quantity.
std::optional<MeasuredText> unit_of_cells(const Samples& samples, std::size_t column, NumberStyle style) {
    std::optional<MeasuredText> first;
    for (const SampleRow& row : samples.rows) {
        const auto cell = means_absent(row[column]) ? std::nullopt : read_measured(row[column], style);
        if (!cell) continue;
        if (!first) first = cell;
        if (base::quantity(cell->unit) != base::quantity(first->unit)) return std::nullopt;
    }
    return first;
}

bool bears_percent(const Samples& samples, std::size_t column) {
    return std::ranges::any_of(samples.rows, [&](const SampleRow& row) { return row[column].ends_with('%'); });
}

// How unevenly the stamps advance, as a part of their usual step; nothing where they cannot be read in that form.
std::optional<double> unevenness(const Samples& samples, std::size_t column, CellForm form) {
    std::vector<double> steps;
    double before = std::numeric_limits<double>::quiet_NaN();
    for (std::size_t row = 0; row < samples.rows.size(); ++row) {
        const auto reading_s = read_clock(samples.rows[row][column], parts_a_second(form));
        if (!reading_s) continue;
        if (*reading_s > before && !std::ranges::binary_search(samples.block_starts, row))
            steps.push_back(*reading_s - before);
        before = *reading_s;
    }
    if (steps.empty()) return std::nullopt;
    const double usual = math::median(steps);
    double uneven = 0.0;
    for (const double step : steps)
        uneven += std::abs(step - usual) / (usual * static_cast<double>(steps.size()));
    return uneven;
}

// "10:20:03:12": hundredths or frames of a second, of which the number is written nowhere: with the right one the
// stamps advance evenly.  Nothing where the cells have no such last part.
std::optional<CellForm> clock_with_parts(const Samples& samples, std::size_t column) {
    using enum CellForm;
    constexpr int any_parts = 1000;
    constexpr double as_even = 0.01;
    std::size_t cells = 0;
    long most_parts = -1;
    for (const SampleRow& row : samples.rows) {
        const std::string& cell = row[column];
        if (std::ranges::count(cell, ':') != 3 || read_clock(cell) || !read_clock(cell, any_parts)) continue;
        ++cells;
        most_parts = std::max(most_parts, base::parse_integer(cell.substr(cell.rfind(':') + 1)).value_or(0L));
    }
    if (2 * cells <= samples.rows.size()) return std::nullopt;
    std::optional<std::pair<double, CellForm>> best;
    for (const CellForm form : {clock_hundredths, clock_25_frames, clock_30_frames, clock_50_frames, clock_60_frames,
                                clock_24_frames, clock_tenths}) {
        if (most_parts >= parts_a_second(form)) continue;
        const auto uneven = unevenness(samples, column, form);
        if (uneven && (!best || *uneven < best->first - as_even)) best = {*uneven, form};
    }
    return best ? std::optional(best->second) : std::nullopt;
}

// Rows without a fix bear one and the same number that no place has: 99.9999, 999.9, 181.
void blank_no_fix(std::vector<double>& numbers, double limit) {
    constexpr std::size_t enough_places = 20;
    std::set<double> beyond;
    std::set<double> within;
    for (const double number : numbers) {
        if (std::abs(number) > limit) beyond.insert(number);
        if (std::abs(number) <= limit) within.insert(number);
    }
    if (beyond.size() != 1 || within.size() < enough_places) return;
    std::ranges::replace(numbers, *beyond.begin(), std::numeric_limits<double>::quiet_NaN());
}

std::size_t decimals_of(std::string_view cell, char decimal_mark) {
    const std::size_t at = cell.rfind(decimal_mark);
    return at == std::string_view::npos ? 0 : cell.size() - at - 1;
}

} // namespace

ColumnValues judge_column(const Samples& samples, std::size_t column, NumberStyle style, Role role, Meaning meaning) {
    ColumnValues values;
    for (const SampleRow& row : samples.rows)
        if (!means_absent(row[column])) ++values.filled;
    const auto with_parts = clock_with_parts(samples, column);
    for (CellForm form : forms_for(role, meaning)) {
        if (form == CellForm::clock) form = with_parts.value_or(form);
        std::vector<double> numbers;
        std::size_t read = 0;
        for (const SampleRow& row : samples.rows) {
            const auto value = means_absent(row[column]) ? std::nullopt : read_cell(row[column], form, style);
            numbers.push_back(value.value_or(std::numeric_limits<double>::quiet_NaN()));
            if (value) ++read;
        }
        if (read == 0 || 2 * read < values.filled) continue;
        values.form = form;
        values.numbers = std::move(numbers);
        break;
    }
    if (values.form == CellForm::number_with_unit) {
        const auto unit = unit_of_cells(samples, column, style);
        if (!unit) return {};
        values.unit = unit->unit;
        values.unit_text = unit->unit_text;
        for (double& number : values.numbers)
            number = base::from_si(number, values.unit);
    }
    if (values.form == CellForm::number && bears_percent(samples, column)) {
        values.unit = base::Unit::percent;
        values.unit_text = "%";
    }
    if (values.form == CellForm::number && role == Role::channel) blank_sentinels(values.numbers, meaning);
    if (values.form == CellForm::number && meaning == Meaning::latitude) blank_no_fix(values.numbers, 90.0);
    if (values.form == CellForm::number && meaning == Meaning::longitude) blank_no_fix(values.numbers, 180.0);
    for (const double number : values.numbers)
        if (!std::isnan(number)) values.largest = std::max(values.largest, std::abs(number));
    if (values.form == CellForm::number)
        for (const SampleRow& row : samples.rows)
            values.decimals = std::max(values.decimals, decimals_of(row[column], style.decimal_mark));
    values.leading_zeros = values.form == CellForm::number && std::ranges::any_of(samples.rows, [&](const auto& row) {
                               return row[column].size() > 1 && row[column][0] == '0' && is_digit(row[column][1]);
                           });
    return values;
}

bool looks_like_packed_clock(const std::vector<double>& numbers, bool leading_zeros) {
    // Seconds since midnight would show seconds of 60 and more in four places of ten: in some of six minutes, or where
    // samples that stand close reach a full minute by a leap from 59 to 100.
    constexpr std::size_t enough_minutes = 6;
    constexpr std::size_t enough_samples = 20;
    constexpr double close_s = 20.0;
    std::set<double> minutes;
    std::size_t samples = 0;
    bool past_midnight = false;
    double widest_step_s = 0.0;
    double before = std::numeric_limits<double>::quiet_NaN();
    for (const double number : numbers) {
        if (std::isnan(number)) continue;
        const bool midnight = before > 230000.0 && number < before;
        past_midnight = past_midnight || midnight;
        const auto clock_s = unpack_clock(number);
        if (!clock_s || (number < 100.0 && !past_midnight && !leading_zeros)) return false;
        const double step_s = *clock_s - unpack_clock(before).value_or(*clock_s) + (midnight ? seconds_a_day : 0.0);
        widest_step_s = std::max(widest_step_s, std::abs(step_s));
        minutes.insert(std::floor(number / 100.0));
        before = number;
        ++samples;
    }
    return minutes.size() >= enough_minutes ||
           (minutes.size() >= 2 && samples >= enough_samples && widest_step_s < close_s);
}

bool looks_like_day_count(const ColumnValues& values) {
    // 2009 to 2064, as spreadsheets count or from the year 0.
    const auto is_day = [](double n) { return (n > 40'000.0 && n < 60'000.0) || (n > 733'000.0 && n < 754'000.0); };
    double least = std::numeric_limits<double>::infinity();
    double most = -least;
    for (const double number : values.numbers) {
        if (std::isnan(number)) continue;
        if (!is_day(number)) return false;
        least = std::min(least, number);
        most = std::max(most, number);
    }
    // A session of days, told to better than a second.
    return values.decimals >= 5 && most > least && most - least < 1.0;
}

bool looks_like_degrees_minutes(const std::vector<double>& numbers) {
    bool beyond_degrees = false;
    for (const double number : numbers) {
        if (std::isnan(number)) continue;
        if (!unpack_degrees(number)) return false;
        beyond_degrees = beyond_degrees || std::abs(number) > 360.0;
    }
    return beyond_degrees;
}

double median_advance(const Samples& samples, const std::vector<double>& numbers) {
    std::vector<double> steps;
    for (std::size_t i = 1; i < numbers.size(); ++i)
        if (numbers[i] > numbers[i - 1] && !std::ranges::binary_search(samples.block_starts, i))
            steps.push_back(numbers[i] - numbers[i - 1]);
    return steps.empty() ? 0.0 : math::median(steps);
}

} // namespace lapwright::import
