// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/time_axis.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::import {
namespace {

constexpr double day_s = 86400.0;
// Rows out of order by no more than this many rows are dropped; more than that and the clock was set.
constexpr std::size_t max_rows_out_of_order = 8;
// A pause longer than this is no drop-out: the logger was off.
constexpr double pause_s = 60.0;
// Rows that stand further apart do not tell an hour that was set from one that passed.
constexpr double longest_row_s = 20.0;
// What goes on behind a jump where no step is known.
constexpr double min_step_s = 1e-3;
// With more repeated stamps than this the clock is coarse, and rows of one stamp are spread evenly.
constexpr double coarse_share = 0.2;

double median_step(std::span<const double> reading_s) {
    std::vector<double> steps;
    for (std::size_t i = 1; i < reading_s.size(); ++i)
        if (const double step = reading_s[i] - reading_s[i - 1]; step > 0.0) steps.push_back(step);
    return steps.empty() ? 0.0 : math::median(steps);
}

bool is_plain(std::span<const double> reading_s) {
    for (std::size_t i = 1; i < reading_s.size(); ++i)
        if (!(reading_s[i] > reading_s[i - 1] && reading_s[i] - reading_s[i - 1] <= pause_s)) return false;
    return !reading_s.empty() && std::isfinite(reading_s.front());
}

class Builder {
  public:
    Builder(std::span<const double> reading_s, std::span<const std::uint32_t> lines, ClockKind kind,
            std::span<const double> lap_numbers)
        : reading_s_(reading_s), lines_(lines), kind_(kind), lap_numbers_(lap_numbers),
          step_s_(median_step(reading_s)) {}

    TimeAxis build() {
        for (std::size_t i = 0; i < reading_s_.size(); ++i)
            add(i);
        tell();
        if (axis_.rows.size() == reading_s_.size()) axis_.rows.clear();
        return std::move(axis_);
    }

  private:
    void add(std::size_t i) {
        if (!std::isfinite(reading_s_[i])) return without_time_.add(lines_[i]);
        if (axis_.time_s.empty()) {
            axis_.first_reading_s = reading_s_[i];
            offset_s_ = -reading_s_[i];
            return keep(i, 0.0);
        }
        const double last = axis_.time_s.back();
        double time = reading_s_[i] + offset_s_;
        if ((kind_ == ClockKind::time_of_day && last - time > 0.5 * day_s) || passes_midnight(i)) {
            offset_s_ += day_s;
            time += day_s;
            midnight_.add(lines_[i]);
        }
        if (const double set_s = hour_set(time - last); set_s != 0.0) {
            offset_s_ -= set_s;
            time -= set_s;
            hours_.add(lines_[i]);
        }
        if (time == last) return repeated_.add(lines_[i]);
        if (time < last) {
            const bool new_lap = starts_with_lap(i);
            if (!new_lap && comes_back(i, last)) return backwards_.add(lines_[i]);
            const double next = last + (step_s_ > 0.0 ? step_s_ : min_step_s);
            if (!(next > last)) return repeated_.add(lines_[i]);
            offset_s_ += next - time;
            time = next;
            if (new_lap) {
                laps_.add(lines_[i]);
            } else {
                jumps_.add(lines_[i]);
                axis_.splits_s.push_back(time);
            }
        } else if (time - last > pause_s) {
            if (is_stray(i, last)) return backwards_.add(lines_[i]);
            time = step_over(i, last, time);
        }
        keep(i, time);
    }

    // An hour forward or back between rows that else stand one step apart: local time as it begins and ends.
    [[nodiscard]] double hour_set(double step_s) const {
        constexpr double hour_s = 3600.0;
        if (std::abs(step_s) < 0.5 * hour_s || !(step_s_ > 0.0 && step_s_ <= longest_row_s)) return 0.0;
        const double set_s = std::copysign(hour_s, step_s);
        const double left_s = step_s - set_s;
        return left_s > 0.0 && left_s < 2.5 * step_s_ ? set_s : 0.0;
    }

    // Seconds since midnight, whatever the column calls them: from the day's last minute to its first.
    [[nodiscard]] bool passes_midnight(std::size_t i) const {
        if (i == 0 || !(reading_s_[i - 1] <= day_s && day_s - reading_s_[i - 1] < pause_s)) return false;
        return reading_s_[i] >= 0.0 && reading_s_[i] < pause_s;
    }

    // A pause, or a clock that was set: receivers begin at some default date until the first fix.  The session then
    // begins where the right clock says.
    double step_over(std::size_t i, double last, double time) {
        const double next = last + (step_s_ > 0.0 ? step_s_ : min_step_s);
        if (time - last > day_s && next > last) {
            jumps_.add(lines_[i]);
            offset_s_ += next - time;
            time = next;
            axis_.first_reading_s = reading_s_[i] - time;
        } else {
            pauses_.add(lines_[i]);
        }
        axis_.splits_s.push_back(time);
        return time;
    }

    // Whether a few rows on the clock is where it would be without this row.
    [[nodiscard]] bool is_stray(std::size_t i, double last) const {
        const std::size_t end = std::min(reading_s_.size(), i + 1 + max_rows_out_of_order);
        for (std::size_t j = i + 1; j < end; ++j) {
            const double time = reading_s_[j] + offset_s_;
            if (time > last && time - last <= pause_s) return true;
        }
        return false;
    }

    // Whether the clock starts again near zero where the lap's number goes up.
    [[nodiscard]] bool starts_with_lap(std::size_t i) const {
        return !lap_numbers_.empty() && lap_numbers_[i] > lap_numbers_[i - 1] &&
               std::abs(reading_s_[i]) <= 2.0 * step_s_;
    }

    // Whether the clock is past `last` again within a few rows.
    [[nodiscard]] bool comes_back(std::size_t i, double last) const {
        const std::size_t end = std::min(reading_s_.size(), i + 1 + max_rows_out_of_order);
        for (std::size_t j = i + 1; j < end; ++j)
            if (reading_s_[j] + offset_s_ > last) return true;
        return false;
    }

    void keep(std::size_t i, double time) {
        axis_.time_s.push_back(time);
        axis_.rows.push_back(static_cast<std::uint32_t>(i));
    }

    void tell() {
        using enum recording::WarningKind;
        warn(rows_without_time, without_time_);
        warn(stamps_duplicated, repeated_);
        warn(stamps_backwards, backwards_);
        warn(midnight_passed, midnight_);
        warn(clock_jumped, jumps_);
        warn(clock_set_by_an_hour, hours_);
        warn(time_per_lap, laps_, {step_s_});
        warn(recording_paused, pauses_);
    }

    void warn(recording::WarningKind kind, const recording::LineTally& seen, std::vector<double> figures = {}) {
        if (seen.count > 0) axis_.warnings.push_back({.kind = kind, .seen = seen, .figures = std::move(figures)});
    }

    std::span<const double> reading_s_;
    std::span<const std::uint32_t> lines_;
    ClockKind kind_;
    std::span<const double> lap_numbers_;
    double step_s_;
    double offset_s_ = 0.0;
    TimeAxis axis_;
    recording::LineTally without_time_, repeated_, backwards_, midnight_, laps_, jumps_, hours_, pauses_;
};

// Rows that share a stamp, spread evenly to the next one.
std::vector<double> spread(std::span<const double> reading_s) {
    std::vector<double> spread_s(reading_s.begin(), reading_s.end());
    double usual_step = median_step(reading_s);
    for (std::size_t i = 0; i < spread_s.size();) {
        std::size_t end = i + 1;
        while (end < spread_s.size() && reading_s[end] == reading_s[i])
            ++end;
        const double step =
            end < spread_s.size() && reading_s[end] > reading_s[i] && reading_s[end] - reading_s[i] < 4.0 * usual_step
                ? reading_s[end] - reading_s[i]
                : usual_step;
        for (std::size_t k = i; k < end; ++k)
            spread_s[k] += step * static_cast<double>(k - i) / static_cast<double>(end - i);
        i = end;
    }
    return spread_s;
}

} // namespace

TimeAxis make_time_axis(std::span<const double> reading_s, std::span<const std::uint32_t> lines, ClockKind kind,
                        std::span<const double> lap_numbers) {
    if (is_plain(reading_s)) {
        TimeAxis axis;
        axis.first_reading_s = reading_s.front();
        axis.time_s.assign(reading_s.begin(), reading_s.end());
        for (double& time : axis.time_s)
            time -= axis.first_reading_s;
        return axis;
    }
    std::size_t repeated = 0;
    for (std::size_t i = 1; i < reading_s.size(); ++i)
        if (reading_s[i] == reading_s[i - 1]) ++repeated;
    if (static_cast<double>(repeated) <= coarse_share * static_cast<double>(reading_s.size()))
        return Builder(reading_s, lines, kind, lap_numbers).build();
    const std::vector<double> spread_s = spread(reading_s);
    TimeAxis axis = Builder(spread_s, lines, kind, lap_numbers).build();
    axis.warnings.push_back({.kind = recording::WarningKind::stamps_coarse});
    return axis;
}

} // namespace lapwright::import
