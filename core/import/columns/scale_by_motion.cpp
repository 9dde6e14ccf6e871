// SPDX-License-Identifier: GPL-3.0-or-later
// In what the time is counted, and by how much whole degrees are multiplied, where nothing in the file says it: only
// one way makes the way between the positions the one of a recorded speed.  Where no speed is recorded, only one makes
// it that of a car.
#include "core/base/translation.h"
#include "core/import/columns/column_relations.h"
#include "core/import/columns/speed_check.h"
#include "core/import/columns/time_choice.h"

#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::DoubtKind;
using recording::Meaning;

struct Counting {
    Unit unit{};
    double scale = 1.0;
    const char* one = ""; // of them, as a doubt says it
    bool whole = false;   // only where the numbers are
};

constexpr std::array time_countings{Counting{Unit::second},
                                    Counting{Unit::millisecond},
                                    Counting{Unit::microsecond},
                                    Counting{Unit::day},
                                    Counting{Unit::minute},
                                    Counting{Unit::hour},
                                    Counting{Unit::second, 0.01, "0.01", true},
                                    Counting{Unit::second, 0.1, "0.1", true},
                                    Counting{Unit::second, 1e-4, "0.0001", true},
                                    Counting{Unit::microsecond, 10.0, "10", true},
                                    Counting{Unit::nanosecond}};
constexpr std::array place_countings{Counting{Unit::degree, 1e-7, "0.0000001"},
                                     Counting{Unit::degree, 1e-6, "0.000001"}, Counting{Unit::degree, 1e-5, "0.00001"},
                                     Counting{Unit::degree, 1e-8, "0.00000001"}};
constexpr double slowest_drive_mps = 5.0; // at the tenth part of the time in which it is fastest
constexpr double fastest_drive_mps = 110.0;

class Countings {
  public:
    Countings(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples)
        : guesses_(guesses), values_(values), samples_(samples), time_(time_column(guesses)),
          latitude_(find(Meaning::latitude)), longitude_(find(Meaning::longitude)) {}

    void settle() {
        const auto plain = [&](std::optional<std::size_t> i) {
            return i && (is_numeric(guesses_[*i].form) || is_angle(guesses_[*i].form));
        };
        if (!time_ || !plain(latitude_) || !plain(longitude_)) return;
        ColumnGuess& time = guesses_[*time_];
        ColumnGuess& place = guesses_[*latitude_];
        constexpr double moment_from = 1e8; // seconds since 1970, or finer
        const bool time_open = !time.settled && !time.unit_written && time.form == CellForm::number &&
                               values_[*time_].largest < moment_from * 1e3;
        const bool place_open = !place.settled && place.scale != 1.0 && place.form == CellForm::number &&
                                guesses_[*longitude_].form == CellForm::number && values_[*latitude_].decimals == 0;
        if ((!time_open && !place_open) || misfit()) return;
        if (time_open) try_all(time_countings, {*time_});
        if (place_open && !misfit()) try_all(place_countings, {*latitude_, *longitude_});
    }

  private:
    [[nodiscard]] std::optional<std::size_t> find(Meaning meaning) const {
        for (std::size_t i = 0; i < guesses_.size(); ++i)
            if (guesses_[i].role == Role::channel && guesses_[i].meaning == meaning) return i;
        return std::nullopt;
    }

    // Of the way between the positions to a recorded speed, nothing where it is not that of the car.
    [[nodiscard]] std::optional<double> misfit() const {
        const auto speed_mps = speed_by_positions(samples_, numbers(*time_), numbers(*latitude_), numbers(*longitude_));
        std::optional<double> best;
        bool recorded = false;
        for (std::size_t i = 0; i < guesses_.size(); ++i) {
            const ColumnGuess& guess = guesses_[i];
            const bool speed = guess.meaning == Meaning::speed || guess.meaning == Meaning::wheel_speed;
            if (guess.role != Role::channel || !speed || !is_numeric(guess.form)) continue;
            recorded = true;
            const auto off = misfit_of(i, speed_mps);
            if (off && (!best || *off < *best)) best = off;
        }
        if (recorded) return best;
        std::vector<double> known = speed_mps;
        std::erase_if(known, [](double speed) { return !std::isfinite(speed); });
        if (known.size() < 8) return std::nullopt;
        const double fast_mps = math::quantile(known, 0.9);
        return fast_mps > slowest_drive_mps && fast_mps < fastest_drive_mps ? std::optional(0.0) : std::nullopt;
    }

    // Whole tenths, hundredths or thousandths of a usual unit of speed are likelier than such parts of a second.
    [[nodiscard]] std::optional<double> misfit_of(std::size_t i, const std::vector<double>& speed_mps) const {
        const auto off = misfit_to_speed(values_[i].numbers, written_unit(guesses_[i]), speed_mps);
        if (off || guesses_[i].unit_written || values_[i].decimals > 0) return off;
        for (const double part : {0.1, 0.01, 0.001}) {
            std::vector<double> whole = values_[i].numbers;
            for (double& number : whole)
                number *= part;
            if (const auto fit = misfit_to_speed(whole, std::nullopt, speed_mps)) return fit;
        }
        return std::nullopt;
    }

    [[nodiscard]] std::vector<double> numbers(std::size_t i) const { return si_numbers(guesses_[i], values_[i]); }

    template <std::size_t N>
    void try_all(const std::array<Counting, N>& countings, const std::vector<std::size_t>& columns) {
        std::vector<std::pair<Unit, double>> before;
        for (const std::size_t i : columns)
            before.emplace_back(guesses_[i].unit, guesses_[i].scale);
        std::optional<double> best;
        const Counting* chosen = nullptr;
        for (const Counting& counting : countings) {
            if (counting.whole && values_[columns.front()].decimals > 0) continue;
            count(counting, columns);
            const auto off = beyond_the_globe(columns) ? std::nullopt : misfit();
            if (!off || (best && *off >= *best)) continue;
            best = off;
            chosen = &counting;
        }
        if (!chosen) {
            for (std::size_t k = 0; k < columns.size(); ++k)
                std::tie(guesses_[columns[k]].unit, guesses_[columns[k]].scale) = before[k];
            return;
        }
        count(*chosen, columns);
        for (const std::size_t i : columns) {
            ColumnGuess& guess = guesses_[i];
            guess.doubt.clear();
            guess.confidence = std::max(guess.confidence, 0.7);
            guess.reason += "; " + base::said("so it fits the motion");
            const bool usual = chosen->scale == 1.0 || (chosen->unit == Unit::degree && chosen->scale == 1e-7);
            if (!usual) guess.doubt = {DoubtKind::part_of_unit, {chosen->one, std::string(base::symbol(chosen->unit))}};
        }
    }

    void count(const Counting& counting, const std::vector<std::size_t>& columns) {
        for (const std::size_t i : columns) {
            guesses_[i].unit = counting.unit;
            guesses_[i].scale = counting.scale;
        }
    }

    [[nodiscard]] bool beyond_the_globe(const std::vector<std::size_t>& columns) const {
        return columns.front() == *latitude_ && values_[*latitude_].largest * guesses_[*latitude_].scale > 90.0;
    }

    std::vector<ColumnGuess>& guesses_;
    const std::vector<ColumnValues>& values_;
    const Samples& samples_;
    std::optional<std::size_t> time_;
    std::optional<std::size_t> latitude_;
    std::optional<std::size_t> longitude_;
};

} // namespace

void settle_countings(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                      const Samples& samples) {
    Countings(guesses, values, samples).settle();
}

} // namespace lapwright::import
