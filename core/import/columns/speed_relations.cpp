// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/column_relations.h"

#include "core/base/constants.h"
#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/import/columns/speed_check.h"
#include "core/import/columns/time_choice.h"
#include "core/import/columns/unclaimed.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::DoubtKind;
using recording::Meaning;

// A unit is believed where it fits the positions this well: mph and knots are 15 % apart.
constexpr double good_fit = 0.05;
// A written unit is doubted where it is off by more.
constexpr double bad_fit = 0.2;
// Two speeds are of one motion where half of their ratios lie this close to the middle one.
constexpr double same_motion = 0.15;

class Relations {
  public:
    Relations(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples)
        : guesses_(guesses), values_(values), samples_(samples) {
        const auto time = time_column(guesses);
        const auto latitude = find(Meaning::latitude);
        const auto longitude = find(Meaning::longitude);
        const auto plain = [&](std::optional<std::size_t> i) {
            return i && (is_numeric(guesses[*i].form) || is_angle(guesses[*i].form));
        };
        if (time) time_s_ = si_numbers(guesses[*time], values[*time]);
        if (!time || !plain(latitude) || !plain(longitude)) return;
        latitude_ = si_numbers(guesses[*latitude], values[*latitude]);
        longitude_ = si_numbers(guesses[*longitude], values[*longitude]);
        speed_mps_ = speed_by_positions(samples, time_s_, latitude_, longitude_);
        source_ = "the positions";
    }

    // Milliseconds or microseconds, seconds or milliseconds: only one makes a speed of the way between the positions.
    void settle_time() {
        const auto time = time_column(guesses_);
        if (speed_mps_.empty() || guesses_[*time].doubt.kind != DoubtKind::unit_open) return;
        ColumnGuess& guess = guesses_[*time];
        const double too_slow = times_too_slow();
        const Unit finer = guess.unit == Unit::second ? Unit::millisecond : Unit::microsecond;
        if (too_slow == 0.0 || (too_slow > 1.0 && guess.unit == finer)) return;
        if (too_slow > 1.0) {
            guess.unit = finer;
            time_s_ = si_numbers(guess, values_[*time]);
            speed_mps_ = speed_by_positions(samples_, time_s_, latitude_, longitude_);
        }
        guess.reason +=
            "; " + base::said("%1 fits the speed between the positions", {std::string(base::symbol(guess.unit))});
        guess.confidence = std::max(guess.confidence, 0.85);
        guess.doubt.clear();
    }

    // A speed with a unit tells degrees from radians: they are 57 times apart.
    void settle_positions() {
        const auto latitude = find(Meaning::latitude);
        const auto longitude = find(Meaning::longitude);
        if (speed_mps_.empty() || guesses_[*latitude].form != CellForm::number) return;
        const recording::ColumnDoubt& doubt = guesses_[*latitude].doubt;
        if (doubt.empty() || doubt.kind == DoubtKind::taken_by_motion) return; // the speed has said so already
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
                guess->reason +=
                    "; " + (degrees ? base::said("degrees fit the speed") : base::said("radians fit the speed"));
                guess->confidence = 0.9;
                guess->doubt.clear();
            }
            if (radians)
                for (double& speed : speed_mps_)
                    speed *= degrees_a_radian;
            return;
        }
    }

    // Accelerations without a unit: g and m/s² are ten times apart, and the positions say which.
    void settle_accelerations() {
        if (latitude_.empty()) return;
        const auto driven = accelerations_by_positions(samples_, time_s_, latitude_, longitude_);
        for (std::size_t i = 0; i < guesses_.size(); ++i) {
            ColumnGuess& guess = guesses_[i];
            const bool lateral = guess.meaning == Meaning::lateral_acceleration;
            if (guess.role != Role::channel || guess.unit_written ||
                (!lateral && guess.meaning != Meaning::longitudinal_acceleration))
                continue;
            const auto ratio =
                ratio_of_sizes(values_[i].numbers, lateral ? driven.lateral_mps2 : driven.longitudinal_mps2);
            for (const Unit unit : {Unit::metre_per_second_squared, Unit::standard_gravity, Unit::milli_gravity}) {
                const double misfit = ratio ? std::abs(std::log(*ratio * base::definition(unit).factor)) : 10.0;
                if (misfit > std::log(2.0)) continue;
                guess.unit = unit;
                guess.confidence = std::max(guess.confidence, 0.85);
                guess.reason += "; " + base::said("%1 fits the positions", {std::string(base::symbol(unit))});
                guess.doubt.clear();
            }
        }
    }

    // Distance without a unit: the one in which it grows as fast as the speed says.
    void settle_distance() {
        const auto i = find(Meaning::distance);
        const auto time = time_column(guesses_);
        if (!i || !time || guesses_[*i].unit_written || !is_numeric(guesses_[*i].form)) return;
        ColumnGuess& guess = guesses_[*i];
        const auto ratio =
            speed_mps_.empty() ? std::nullopt : growth_over_speed(samples_, time_s_, values_[*i].numbers, speed_mps_);
        const auto unit = ratio ? unit_of_growth(*ratio) : std::nullopt;
        if (unit) {
            guess.unit = *unit;
            guess.confidence = std::max(guess.confidence, 0.85);
            guess.reason += "; " + base::said("%1 fit the speed", {std::string(base::symbol(guess.unit))});
            guess.doubt.clear();
        } else if (values_[*i].decimals >= 2 && values_[*i].largest < 100.0) {
            guess.confidence = std::min(guess.confidence, 0.5);
            guess.doubt = {DoubtKind::unit_open, {"metres", "kilometres"}};
        }
    }

    // Latitude and longitude under each other's name: the one is beyond 90°, or only exchanged do they fit the speed.
    void settle_exchange() {
        const auto latitude = find(Meaning::latitude);
        const auto longitude = find(Meaning::longitude);
        if (!latitude || !longitude || guesses_[*latitude].form != CellForm::number ||
            guesses_[*longitude].form != CellForm::number || guesses_[*latitude].scale != 1.0)
            return;
        const double quarter = guesses_[*latitude].unit == Unit::degree ? 90.0 : 0.5 * base::pi;
        const bool impossible = values_[*latitude].largest > quarter && values_[*latitude].largest <= 2.0 * quarter &&
                                values_[*longitude].largest <= quarter;
        if (!impossible && !(values_[*longitude].largest <= quarter && only_exchanged_fits())) return;
        guesses_[*latitude].meaning = Meaning::longitude;
        guesses_[*longitude].meaning = Meaning::latitude;
        for (const std::size_t i : {*latitude, *longitude})
            guesses_[i].doubt = {impossible ? DoubtKind::exchanged_impossible : DoubtKind::exchanged_fits};
        std::swap(latitude_, longitude_);
        if (!latitude_.empty()) speed_mps_ = speed_by_positions(samples_, time_s_, latitude_, longitude_);
    }

    void settle_speeds() {
        for (std::size_t i = 0; i < guesses_.size(); ++i)
            if (is_speed(guesses_[i]) && guesses_[i].unit_written) check_written(i);
        use_written_speed();
        for (std::size_t i = 0; i < guesses_.size(); ++i)
            if (is_speed(guesses_[i]) && !guesses_[i].unit_written) settle_unwritten(i);
    }

    [[nodiscard]] DrivenRows driven() const {
        DrivenRows rows;
        if (!latitude_.empty()) {
            rows.speed_mps = speed_mps_;
            rows.by_positions = accelerations_by_positions(samples_, time_s_, latitude_, longitude_);
            rows.longitudinal_mps2 = rows.by_positions.longitudinal_mps2;
        } else if (!speed_mps_.empty() && !time_s_.empty()) {
            rows.longitudinal_mps2 = growth(samples_, time_s_, speed_mps_);
        }
        return rows;
    }

  private:
    static bool is_speed(const ColumnGuess& guess) {
        return guess.role == Role::channel && is_numeric(guess.form) &&
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
        return math::median(ratios);
    }

    // 1 or 1000: how much faster the car is than the way between the positions says; 0 where it cannot be told.
    [[nodiscard]] double times_too_slow() const {
        for (std::size_t i = 0; i < guesses_.size(); ++i) {
            if (!is_speed(guesses_[i]) || !guesses_[i].unit_written) continue;
            const double ratio = ratio_of(i).value_or(0.0);
            for (const double times : {1.0, 1000.0})
                if (std::abs(ratio / times - 1.0) < bad_fit) return times;
        }
        constexpr double slowest_mps = 3.0; // at the tenth part of the time in which it is fastest
        constexpr double fastest_mps = 120.0;
        std::vector<double> known = speed_mps_;
        std::erase_if(known, [](double speed) { return !std::isfinite(speed); });
        if (known.size() < 8) return 0.0;
        const double fast_mps = math::quantile(known, 0.9);
        for (const double times : {1.0, 1000.0})
            if (fast_mps * times > slowest_mps && fast_mps * times < fastest_mps) return times;
        return 0.0;
    }

    void check_written(std::size_t i) {
        if (speed_mps_.empty()) return;
        const auto ratio = ratio_to_speed(values_[i].numbers, speed_mps_);
        ColumnGuess& guess = guesses_[i];
        if (!ratio) return;
        const double misfit = std::abs(ratio->middle * base::definition(guess.unit).factor - 1.0);
        const UnitFit fit = unit_of_ratio(ratio->middle);
        if (misfit < bad_fit || ratio->spread > same_motion || fit.unit == guess.unit || fit.misfit > good_fit) return;
        guess.confidence = 0.4;
        guess.unit = fit.unit;
        const std::string fitting(base::symbol(fit.unit));
        guess.doubt = {DoubtKind::written_unit_wrong, {guess.unit_text, fitting}};
    }

    [[nodiscard]] bool only_exchanged_fits() const {
        if (latitude_.empty()) return false;
        const auto exchanged = speed_by_positions(samples_, time_s_, longitude_, latitude_);
        const auto misfit = [](const std::optional<Ratio>& ratio, double factor) {
            return ratio ? std::abs(ratio->middle * factor - 1.0) + ratio->spread : 0.0;
        };
        for (std::size_t i = 0; i < guesses_.size(); ++i) {
            if (!is_speed(guesses_[i]) || !guesses_[i].unit_written) continue;
            const double factor = base::definition(guesses_[i].unit).factor;
            const auto named = ratio_to_speed(values_[i].numbers, speed_mps_);
            const auto other = ratio_to_speed(values_[i].numbers, exchanged);
            // A unit that is written wrongly is likelier, where it explains as much.
            const bool other_unit =
                named && unit_of_ratio(named->middle).misfit + named->spread < misfit(other, factor) + good_fit;
            return misfit(named, factor) > bad_fit && !other_unit && other && misfit(other, factor) < good_fit;
        }
        return false;
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
        const UnitFit fit = unit_of_ratio(ratio->middle);
        if (ratio->spread > same_motion) return;
        ColumnGuess& guess = guesses_[i];
        if (fit.misfit > good_fit) return settle_parts(guess, values_[i], ratio->middle);
        guess.unit = fit.unit;
        guess.confidence = std::max(guess.confidence, 0.85);
        guess.reason = base::said(
            "named \"%1\"; no unit written, %2 fits %3 to %4 %",
            {guess.name, std::string(base::symbol(fit.unit)), source_, base::fixed_text(100.0 * fit.misfit, 1)});
        guess.doubt.clear();
    }

    // Whole tenths, hundredths or thousandths of a usual unit.
    static void settle_parts(ColumnGuess& guess, const ColumnValues& values, double ratio) {
        if (values.decimals > 0) return;
        for (const auto& [part, text] : {std::pair{0.1, "0.1"}, std::pair{0.01, "0.01"}, std::pair{0.001, "0.001"}}) {
            for (const Unit unit :
                 {Unit::kilometre_per_hour, Unit::mile_per_hour, Unit::knot, Unit::metre_per_second}) {
                if (std::abs(ratio * part * base::definition(unit).factor - 1.0) > good_fit) continue;
                guess.unit = unit;
                guess.scale = part;
                guess.confidence = std::max(guess.confidence, 0.7);
                guess.doubt = {DoubtKind::part_of_unit, {text, std::string(base::symbol(unit))}};
                return;
            }
        }
    }

    std::vector<ColumnGuess>& guesses_;
    const std::vector<ColumnValues>& values_;
    const Samples& samples_;
    std::vector<double> time_s_;
    std::vector<double> latitude_; // rad, a sampled row; empty where there are no positions or no time
    std::vector<double> longitude_;
    std::vector<double> speed_mps_; // a sampled row; empty where nothing is known
    std::string source_;
};

} // namespace

void relate_speeds(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples) {
    Relations relations(guesses, values, samples);
    relations.settle_time();
    relations.settle_positions();
    relations.settle_exchange();
    relations.settle_speeds();
    take_unclaimed(guesses, values, relations.driven());
    relations.settle_distance();
    relations.settle_accelerations();
}

} // namespace lapwright::import
