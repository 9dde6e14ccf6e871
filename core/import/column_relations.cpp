// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/column_relations.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/import/column_units.h"
#include "core/import/speed_check.h"

#include <algorithm>
#include <cmath>

namespace lapwright::import {
namespace {

using base::Quantity;
using base::Unit;
using recording::Meaning;

// A unit is believed where it fits the positions this well: mph and knots are 15 % apart.
constexpr double good_fit = 0.05;
// A written unit is doubted where it is off by more.
constexpr double bad_fit = 0.2;

// Readings that only ever advance, evenly.
bool only_advances(const Samples& samples, const std::vector<double>& numbers) {
    const double step = median_advance(samples, numbers);
    if (numbers.size() < 4 || step <= 0.0) return false;
    std::size_t even = 0;
    for (std::size_t i = 1; i < numbers.size(); ++i) {
        const double advance = numbers[i] - numbers[i - 1];
        if (!(advance >= 0.0)) return false;
        const bool jump = std::ranges::binary_search(samples.block_starts, i);
        if (jump || std::abs(advance - step) <= 0.5 * step) ++even;
    }
    return 4 * even >= 3 * (numbers.size() - 1);
}

void find_unnamed_time(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                       const Samples& samples) {
    if (time_column(guesses)) return;
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        ColumnGuess& guess = guesses[i];
        const CellForm form = values[i].form;
        const bool unnamed = guess.role == Role::skip || guess.meaning == Meaning::other;
        const bool clock = form == CellForm::clock || form == CellForm::moment;
        if (!unnamed || (!clock && form != CellForm::number) || !only_advances(samples, values[i].numbers)) continue;
        guess.role = Role::time;
        guess.form = form;
        guess.confidence = clock ? 0.8 : 0.5;
        guess.reason = "its name is not known, but its readings advance evenly like a clock's";
        if (clock)
            guess.unit = Unit::second;
        else if (base::quantity(guess.unit) != Quantity::time)
            guess_time_unit(guess, values[i], median_advance(samples, values[i].numbers));
        if (!clock && guess.doubt.empty()) guess.doubt = "taken as the time, because it advances evenly";
        return;
    }
}

// Two columns side by side with five decimals and more that hardly change are latitude and longitude.
void find_unnamed_positions(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values) {
    const auto is_position = [&](std::size_t i, double limit) {
        if (guesses[i].role != Role::channel || guesses[i].meaning != Meaning::other || values[i].decimals < 5 ||
            values[i].largest > limit)
            return false;
        double low = limit;
        double high = -limit;
        for (const double number : values[i].numbers) {
            if (std::isnan(number)) continue;
            low = std::min(low, number);
            high = std::max(high, number);
        }
        return high > low && high - low < 0.5;
    };
    if (std::ranges::any_of(guesses, [](const auto& guess) { return guess.meaning == Meaning::latitude; })) return;
    for (std::size_t i = 0; i + 1 < guesses.size(); ++i) {
        if (!is_position(i, 90.0) || !is_position(i + 1, 180.0)) continue;
        for (const std::size_t k : {i, i + 1}) {
            guesses[k].meaning = k == i ? Meaning::latitude : Meaning::longitude;
            guesses[k].unit = Unit::degree;
            guesses[k].confidence = 0.5;
            guesses[k].reason = "its name is not known, but its values look like a position";
            guesses[k].doubt = k == i ? "taken as latitude by its values" : "taken as longitude by its values";
        }
        return;
    }
}

// Latitude and longitude are written alike: what one cannot be, the other is not.
void match_positions(std::vector<ColumnGuess>& guesses) {
    const auto find = [&](Meaning meaning) {
        return std::ranges::find_if(
            guesses, [&](const auto& guess) { return guess.role == Role::channel && guess.meaning == meaning; });
    };
    const auto latitude = find(Meaning::latitude);
    const auto longitude = find(Meaning::longitude);
    if (latitude == guesses.end() || longitude == guesses.end()) return;
    const auto copy = [](const ColumnGuess& from, ColumnGuess& to) {
        to.form = from.form;
        to.scale = from.scale;
        to.reason += "; written like the " + std::string(recording::name(from.meaning));
        to.confidence = std::min(to.confidence, from.confidence);
    };
    const auto unusual = [](const ColumnGuess& guess) {
        return guess.scale != 1.0 || guess.form == CellForm::degrees_minutes;
    };
    if (unusual(*latitude) && longitude->form == CellForm::number)
        copy(*latitude, *longitude);
    else if (unusual(*longitude) && latitude->form == CellForm::number)
        copy(*longitude, *latitude);
    if (!unusual(*latitude) && (latitude->doubt.empty() || longitude->doubt.empty())) {
        for (ColumnGuess* guess : {&*latitude, &*longitude}) {
            if (!guess->doubt.empty()) guess->confidence = std::max(latitude->confidence, longitude->confidence);
            guess->doubt.clear();
        }
    }
}

std::vector<double> si_numbers(const ColumnGuess& guess, const ColumnValues& values) {
    std::vector<double> numbers = values.numbers;
    const auto& unit = base::definition(guess.unit);
    for (double& number : numbers)
        number = number * guess.scale * unit.factor + unit.offset;
    return numbers;
}

class Relations {
  public:
    Relations(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples)
        : guesses_(guesses), values_(values) {
        const auto time = time_column(guesses);
        const auto latitude = find(Meaning::latitude);
        const auto longitude = find(Meaning::longitude);
        const auto plain = [&](std::optional<std::size_t> i) {
            return i && (guesses[*i].form == CellForm::number || is_angle(guesses[*i].form));
        };
        if (!time || !plain(latitude) || !plain(longitude)) return;
        speed_mps_ = speed_by_positions(samples, si_numbers(guesses[*time], values[*time]),
                                        si_numbers(guesses[*latitude], values[*latitude]),
                                        si_numbers(guesses[*longitude], values[*longitude]));
        source_ = "the positions";
    }

    // A speed with a unit tells degrees from radians: they are 57 times apart.
    void settle_positions() {
        const auto latitude = find(Meaning::latitude);
        const auto longitude = find(Meaning::longitude);
        if (speed_mps_.empty() || guesses_[*latitude].doubt.empty() || guesses_[*latitude].form != CellForm::number)
            return;
        for (std::size_t i = 0; i < guesses_.size(); ++i) {
            if (!is_speed(guesses_[i]) || !guesses_[i].unit_written) continue;
            const auto ratio = ratio_of(i);
            if (!ratio) continue;
            constexpr double degrees_a_radian = 180.0 / base::pi;
            const bool degrees = std::abs(*ratio - 1.0) < bad_fit;
            const bool radians = std::abs(*ratio / degrees_a_radian - 1.0) < bad_fit;
            if (!degrees && !radians) continue;
            for (ColumnGuess* guess : {&guesses_[*latitude], &guesses_[*longitude]}) {
                guess->unit = degrees ? Unit::degree : Unit::radian;
                guess->reason += degrees ? "; degrees fit the speed" : "; radians fit the speed";
                guess->confidence = 0.9;
                guess->doubt.clear();
            }
            if (radians)
                for (double& speed : speed_mps_)
                    speed *= degrees_a_radian;
            return;
        }
    }

    void settle_speeds() {
        for (std::size_t i = 0; i < guesses_.size(); ++i)
            if (is_speed(guesses_[i]) && guesses_[i].unit_written) check_written(i);
        use_written_speed();
        for (std::size_t i = 0; i < guesses_.size(); ++i)
            if (is_speed(guesses_[i]) && !guesses_[i].unit_written) settle_unwritten(i);
    }

    // A speed without a name in a file with positions.
    void find_unnamed_speed() {
        if (speed_mps_.empty() || find(Meaning::speed)) return;
        for (std::size_t i = 0; i < guesses_.size(); ++i) {
            ColumnGuess& guess = guesses_[i];
            if (guess.role != Role::channel || guess.meaning != Meaning::other || guess.unit_written) continue;
            const auto ratio = ratio_to_speed(values_[i].numbers, speed_mps_);
            if (!ratio || unit_of_ratio(*ratio).misfit > good_fit) continue;
            guess.meaning = Meaning::speed;
            guess.unit = unit_of_ratio(*ratio).unit;
            guess.confidence = 0.6;
            guess.reason = "its name is not known, but it is the speed between the positions in " +
                           std::string(base::symbol(guess.unit));
            guess.doubt =
                "taken as the speed in " + std::string(base::symbol(guess.unit)) + ", because it fits the positions";
            return;
        }
    }

  private:
    static bool is_speed(const ColumnGuess& guess) {
        return guess.role == Role::channel && guess.form == CellForm::number &&
               (guess.meaning == Meaning::speed || guess.meaning == Meaning::wheel_speed);
    }

    [[nodiscard]] std::optional<std::size_t> find(Meaning meaning) const {
        for (std::size_t i = 0; i < guesses_.size(); ++i)
            if (guesses_[i].role == Role::channel && guesses_[i].meaning == meaning) return i;
        return std::nullopt;
    }

    // The column's speed in m/s over the one by the positions; with positions in degrees that are radians also where
    // the latter seems to stand still.
    [[nodiscard]] std::optional<double> ratio_of(std::size_t i) const {
        std::vector<double> ratios;
        const double factor = base::definition(guesses_[i].unit).factor;
        for (std::size_t row = 0; row < speed_mps_.size(); ++row) {
            const double speed = values_[i].numbers[row] * factor;
            if (speed > 4.0 && speed_mps_[row] > 0.0) ratios.push_back(speed / speed_mps_[row]);
        }
        if (ratios.size() < 8) return std::nullopt;
        const auto middle = ratios.begin() + static_cast<std::ptrdiff_t>(ratios.size() / 2);
        std::ranges::nth_element(ratios, middle);
        return *middle;
    }

    void check_written(std::size_t i) {
        if (speed_mps_.empty()) return;
        const auto ratio = ratio_to_speed(values_[i].numbers, speed_mps_);
        ColumnGuess& guess = guesses_[i];
        if (!ratio) return;
        const double misfit = std::abs(*ratio * base::definition(guess.unit).factor - 1.0);
        const UnitFit fit = unit_of_ratio(*ratio);
        if (misfit < bad_fit || fit.unit == guess.unit || fit.misfit > good_fit) return;
        guess.confidence = 0.4;
        guess.doubt = "its unit is written as " + guess.unit_text + ", but it fits the positions in " +
                      std::string(base::symbol(fit.unit)) + ": taken as written";
    }

    // Without positions a speed with a unit is the measure for the others.
    void use_written_speed() {
        if (!speed_mps_.empty()) return;
        for (std::size_t i = 0; i < guesses_.size(); ++i) {
            if (!is_speed(guesses_[i]) || !guesses_[i].unit_written) continue;
            speed_mps_ = si_numbers(guesses_[i], values_[i]);
            source_ = "the column \"" + guesses_[i].name + "\"";
            return;
        }
    }

    void settle_unwritten(std::size_t i) {
        if (speed_mps_.empty()) return;
        const auto ratio = ratio_to_speed(values_[i].numbers, speed_mps_);
        if (!ratio) return;
        const UnitFit fit = unit_of_ratio(*ratio);
        if (fit.misfit > good_fit) return;
        ColumnGuess& guess = guesses_[i];
        guess.unit = fit.unit;
        guess.confidence = std::max(guess.confidence, 0.85);
        guess.reason = "named \"" + guess.name + "\"; no unit written, " + std::string(base::symbol(fit.unit)) +
                       " fits " + source_ + " to " + base::fixed_text(100.0 * fit.misfit, 1) + " %";
        guess.doubt.clear();
    }

    std::vector<ColumnGuess>& guesses_;
    const std::vector<ColumnValues>& values_;
    std::vector<double> speed_mps_; // a sampled row; empty where nothing is known
    std::string source_;
};

// Of several speeds the one from satellites is the speed over the ground, the others are the wheels'.
void part_speeds(std::vector<ColumnGuess>& guesses) {
    const auto is_speed = [](const ColumnGuess& guess) {
        return guess.role == Role::channel && guess.meaning == Meaning::speed;
    };
    const bool any =
        std::ranges::any_of(guesses, [&](const auto& guess) { return is_speed(guess) && guess.from_satellites; });
    if (!any) return;
    for (ColumnGuess& guess : guesses) {
        if (!is_speed(guess) || guess.from_satellites) continue;
        guess.meaning = Meaning::wheel_speed;
        guess.confidence = std::min(guess.confidence, 0.7);
        guess.reason += "; beside a speed from satellites, so taken as the wheels'";
    }
}

} // namespace

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

void relate_columns(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                    const Samples& samples) {
    find_unnamed_time(guesses, values, samples);
    find_unnamed_positions(guesses, values);
    match_positions(guesses);
    Relations relations(guesses, values, samples);
    relations.settle_positions();
    relations.settle_speeds();
    relations.find_unnamed_speed();
    part_speeds(guesses);
}

} // namespace lapwright::import
