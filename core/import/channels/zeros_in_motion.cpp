// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/mend_values.h"

#include <cmath>
#include <limits>
#include <optional>

namespace lapwright::import {
namespace {

using recording::Meaning;

// More than a racing car's brakes or a launch give, with a receiver's noise upon it (common practice, no source).
constexpr double max_change_mps2 = 60.0;
constexpr double min_change_mps = 5.0;

// The table's rows that have a time, with it.
class TimedRows {
  public:
    explicit TimedRows(const TimeAxis& axis) : axis_(axis) {}
    [[nodiscard]] std::size_t size() const { return axis_.time_s.size(); }
    [[nodiscard]] std::size_t row(std::size_t i) const { return axis_.rows.empty() ? i : axis_.rows[i]; }
    [[nodiscard]] double time_s(std::size_t i) const { return axis_.time_s[i]; }

  private:
    const TimeAxis& axis_;
};

struct Reading {
    double time_s = 0.0;
    double speed_mps = 0.0;
};

bool is_leap(const std::optional<Reading>& from, const Reading& to) {
    if (!from) return false;
    const double change_mps = std::abs(to.speed_mps - from->speed_mps);
    return change_mps > min_change_mps && change_mps > max_change_mps2 * std::abs(to.time_s - from->time_s);
}

// Whether the column is a car's speed where it is not zero: hardly ever it leaps.
bool moves_like_a_car(const std::vector<double>& speed_mps, const TimedRows& rows) {
    constexpr std::size_t one_leap_in = 100;
    std::size_t steps = 0;
    std::size_t leaps = 0;
    std::optional<Reading> before;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const Reading reading{rows.time_s(i), speed_mps[rows.row(i)]};
        if (std::isnan(reading.speed_mps)) continue;
        if (before && before->speed_mps != 0.0 && reading.speed_mps != 0.0) {
            ++steps;
            if (is_leap(before, reading)) ++leaps;
        }
        before = reading;
    }
    return steps >= one_leap_in && one_leap_in * leaps <= steps;
}

// The rows of each run of zeros that the car cannot have entered and left.
std::vector<std::size_t> impossible_zeros(const std::vector<double>& speed_mps, const TimedRows& rows) {
    if (!moves_like_a_car(speed_mps, rows)) return {};
    std::vector<std::size_t> found;
    std::vector<std::size_t> run;
    std::optional<Reading> before; // the last that is not zero
    Reading first_zero;
    Reading last_zero;
    const auto end_run = [&](const std::optional<Reading>& after) {
        const bool entered = !before || is_leap(before, first_zero);
        const bool left = !after || is_leap(after, last_zero);
        if (entered && left && (before || after)) found.insert(found.end(), run.begin(), run.end());
        run.clear();
    };
    for (std::size_t i = 0; i < rows.size(); ++i) {
        const Reading reading{rows.time_s(i), speed_mps[rows.row(i)]};
        if (std::isnan(reading.speed_mps)) continue;
        if (reading.speed_mps == 0.0) {
            if (run.empty()) first_zero = reading;
            last_zero = reading;
            run.push_back(rows.row(i));
            continue;
        }
        if (!run.empty()) end_run(reading);
        before = reading;
    }
    if (!run.empty()) end_run(std::nullopt);
    return found;
}

} // namespace

std::vector<recording::Warning> blank_zeros_in_motion(Table& table, const std::vector<ColumnGuess>& guesses,
                                                      const TimeAxis& axis) {
    std::vector<bool> without_fix(table.lines.size(), false);
    const auto* const latitude = find_column(table, guesses, Role::channel, Meaning::latitude);
    const auto* const longitude = find_column(table, guesses, Role::channel, Meaning::longitude);
    for (std::size_t row = 0; latitude && longitude && row < without_fix.size(); ++row)
        without_fix[row] = latitude->values[row] == 0.0 && longitude->values[row] == 0.0;
    const TimedRows rows(axis);
    if (const auto* const speed = find_column(table, guesses, Role::channel, Meaning::speed))
        for (const std::size_t row : impossible_zeros(speed->values, rows))
            without_fix[row] = true;
    recording::LineTally blanked;
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        const Meaning meaning = guesses[i].meaning;
        const bool by_satellite =
            meaning == Meaning::speed || meaning == Meaning::course || meaning == Meaning::altitude;
        std::vector<double>& values = table.columns[i].values;
        if (guesses[i].role != Role::channel || !by_satellite || values.empty()) continue;
        for (std::size_t row = 0; row < values.size(); ++row) {
            if (!without_fix[row] || values[row] != 0.0) continue;
            values[row] = std::numeric_limits<double>::quiet_NaN();
            ++table.columns[i].absent;
            if (meaning == Meaning::speed) blanked.add(table.lines[row]);
        }
    }
    if (blanked.count == 0) return {};
    return {{.kind = recording::WarningKind::speeds_without_fix, .seen = blanked}};
}

} // namespace lapwright::import
