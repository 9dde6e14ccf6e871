// SPDX-License-Identifier: GPL-3.0-or-later
// The limits are common practice, no source.
#include "core/import/columns/unclaimed.h"

#include "core/base/translation.h"
#include "core/import/columns/axis_fit.h"
#include "core/import/columns/column_relations.h"
#include "core/import/columns/speed_check.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace lapwright::import {
namespace {

using base::Quantity;
using base::Unit;
using recording::DoubtKind;
using recording::Meaning;

constexpr std::size_t enough_to_tell = 20;
constexpr double taken_confidence = 0.6;

class Unclaimed {
  public:
    Unclaimed(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const DrivenRows& driven)
        : guesses_(guesses), values_(values), driven_(driven) {}

    void take_speed() {
        const auto best = nearest_speed();
        const auto claimed = find(Meaning::speed);
        if (!best) {
            if (claimed || find(Meaning::wheel_speed)) return;
            for (const std::size_t i : with_unit(Quantity::speed))
                if (!ratio(i)) doubt(i, DoubtKind::not_confirmed, base::word("speed of the car"));
            return;
        }
        if (claimed && (guesses_[*claimed].settled || follows(*claimed))) return;
        if (!claimed && find(Meaning::wheel_speed))
            return doubt(*best, DoubtKind::moves_like, base::word("speed of the car"));
        if (claimed) {
            guesses_[*claimed].meaning = Meaning::other;
            guesses_[*claimed].doubt = {DoubtKind::one_of_two, {"speed", guesses_[*best].name}};
        }
        ColumnGuess& guess = guesses_[*best];
        if (!guess.unit_written) guess.unit = unit_of_ratio(ratio(*best)->middle).unit;
        take(guess, Meaning::speed, "speed", base::word("the positions"));
    }

    void take_accelerations() {
        constexpr std::array two{std::pair{Meaning::lateral_acceleration, "lateral acceleration"},
                                 std::pair{Meaning::longitudinal_acceleration, "longitudinal acceleration"}};
        for (const auto& [meaning, spoken] : two) {
            if (find(meaning)) continue;
            const bool lateral = meaning == Meaning::lateral_acceleration;
            for (const std::size_t i : with_unit(Quantity::acceleration)) {
                const auto fit = axis_of(i);
                if (!fit)
                    doubt(i, DoubtKind::not_confirmed, spoken);
                else if (points(*fit, lateral) && !find(meaning))
                    take(guesses_[i], meaning, spoken, base::word("the positions"));
            }
        }
    }

    // Within one gear an engine turns in proportion to the speed, and faster the lower the gear.
    void take_engine_speed() {
        if (find(Meaning::engine_speed)) return;
        for (const std::size_t i : with_unit(Quantity::rotation)) {
            if (guesses_[i].unit != Unit::revolution_per_minute) continue;
            if (follows_gears(i))
                return take(guesses_[i], Meaning::engine_speed, base::word("engine speed"),
                            base::word("speed and gear"));
            doubt(i, DoubtKind::not_confirmed, base::word("engine speed"));
        }
    }

    // A pressure that stands when the car slows and at no other time.
    void take_brake_pressure() {
        if (find(Meaning::brake_pressure)) return;
        for (const std::size_t i : with_unit(Quantity::pressure))
            if (only_when_slowing(i))
                return take(guesses_[i], Meaning::brake_pressure, base::word("brake pressure"),
                            base::word("the braking of the car"));
    }

    // An engine's load moves as the throttle does: only a person can say which it is.
    void ask_for_pedals() {
        for (const std::size_t i : with_unit(Quantity::share)) {
            if (!find(Meaning::brake) && only_when_slowing(i)) doubt(i, DoubtKind::moves_like, "brake");
            if (!find(Meaning::throttle) && grows_with_acceleration(i)) doubt(i, DoubtKind::moves_like, "throttle");
        }
    }

  private:
    [[nodiscard]] std::optional<std::size_t> find(Meaning meaning) const {
        for (std::size_t i = 0; i < guesses_.size(); ++i)
            if (guesses_[i].role == Role::channel && guesses_[i].meaning == meaning) return i;
        return std::nullopt;
    }

    [[nodiscard]] bool is_unclaimed(std::size_t i) const {
        const ColumnGuess& guess = guesses_[i];
        return guess.role == Role::channel && guess.meaning == Meaning::other && is_numeric(guess.form) &&
               guess.doubt.empty();
    }

    [[nodiscard]] std::vector<std::size_t> with_unit(Quantity quantity) const {
        std::vector<std::size_t> found;
        for (std::size_t i = 0; i < guesses_.size(); ++i)
            if (is_unclaimed(i) && guesses_[i].unit_written && base::quantity(guesses_[i].unit) == quantity)
                found.push_back(i);
        return found;
    }

    [[nodiscard]] double factor(std::size_t i) const { return base::definition(guesses_[i].unit).factor; }

    [[nodiscard]] std::optional<Ratio> ratio(std::size_t i) const {
        return driven_.speed_mps.empty() ? std::nullopt : ratio_to_speed(values_[i].numbers, driven_.speed_mps);
    }

    // From the speed of the positions; nothing where it is not that speed.
    [[nodiscard]] std::optional<double> misfit(std::size_t i) const {
        const ColumnGuess& guess = guesses_[i];
        if (driven_.speed_mps.empty()) return std::nullopt;
        if (guess.unit_written && base::quantity(guess.unit) != Quantity::speed) return std::nullopt;
        return misfit_to_speed(values_[i].numbers, written_unit(guess), driven_.speed_mps);
    }

    // A claimed speed that has nothing to do with the positions is none.
    [[nodiscard]] bool follows(std::size_t i) const {
        constexpr double unrelated = 0.3;
        const auto fit = ratio(i);
        return !fit || fit->spread <= unrelated;
    }

    // The unclaimed column that is nearest to the speed of the positions; one with a unit before one without.
    [[nodiscard]] std::optional<std::size_t> nearest_speed() const {
        std::optional<std::pair<double, std::size_t>> best;
        for (std::size_t i = 0; i < guesses_.size(); ++i) {
            const auto off = is_unclaimed(i) ? misfit(i) : std::nullopt;
            if (!off) continue;
            const std::pair candidate{*off + (guesses_[i].unit_written ? 0.0 : 1.0), i};
            if (!best || candidate < *best) best = candidate;
        }
        return best ? std::optional(best->second) : std::nullopt;
    }

    [[nodiscard]] std::optional<AxisFit> axis_of(std::size_t i) const {
        std::vector<AxisSample> beside;
        const auto& [along, left] = driven_.by_positions;
        constexpr double beyond_mps2 = 100.0; // a code for no value
        for (std::size_t row = 0; row < along.size(); ++row) {
            const double read = values_[i].numbers[row] * factor(i);
            if (std::isfinite(along[row] + left[row]) && std::abs(read) < beyond_mps2)
                beside.push_back({along[row], left[row], read});
        }
        return fit_axis(std::move(beside), enough_to_tell);
    }

    // Reads as much along its direction as the positions say, and little across it.
    [[nodiscard]] static bool points(const AxisFit& fit, bool lateral) {
        constexpr double follows_well = 0.8;
        constexpr double points_there = 3.0; // within 18°
        constexpr std::pair as_much{0.6, 1.5};
        const double own = std::abs(lateral ? fit.left : fit.along);
        const double other = std::abs(lateral ? fit.along : fit.left);
        return fit.correlation >= follows_well && own > points_there * other && own > as_much.first &&
               own < as_much.second;
    }

    [[nodiscard]] static double spread_of(std::vector<double> values) {
        std::erase_if(values, [](double value) { return !std::isfinite(value); });
        return math::robust_sd(values) / std::abs(math::median(values));
    }

    [[nodiscard]] bool follows_gears(std::size_t i) const {
        constexpr std::size_t enough_in_gear = 8;
        constexpr double steady = 0.03; // half of the ratios lie so close to the middle one
        constexpr double moved = 4.0;   // so much more does the speed vary than the ratio: a fan at one speed is none
        const auto gear = find(Meaning::gear);
        if (!gear || driven_.speed_mps.empty()) return false;
        std::map<double, std::pair<std::vector<double>, std::vector<double>>> in_gear; // the column, the speed
        for (std::size_t row = 0; row < driven_.speed_mps.size(); ++row) {
            auto& [turns, speeds] = in_gear[values_[*gear].numbers[row]];
            turns.push_back(values_[i].numbers[row]);
            speeds.push_back(driven_.speed_mps[row]);
        }
        std::vector<double> ratios; // from low gears to high ones
        for (const auto& [number, rows] : in_gear) {
            if (!(number > 0.0) || rows.first.size() < enough_in_gear) continue;
            const auto fit = ratio_to_speed(rows.first, rows.second);
            if (fit && fit->spread > steady) return false;
            if (fit && spread_of(rows.second) > moved * fit->spread) ratios.push_back(fit->middle);
        }
        return ratios.size() >= 2 && std::ranges::adjacent_find(ratios, std::ranges::less_equal{}) == ratios.end();
    }

    // Values of the column, as parts of its largest, where the car gains speed (or loses it) clearly.
    [[nodiscard]] std::vector<double> shares_where(std::size_t i, double from_mps2, double to_mps2) const {
        std::vector<double> shares;
        const auto& gained = driven_.longitudinal_mps2;
        for (std::size_t row = 0; row < gained.size(); ++row)
            if (gained[row] >= from_mps2 && gained[row] <= to_mps2 && std::isfinite(values_[i].numbers[row]))
                shares.push_back(values_[i].numbers[row] / values_[i].largest);
        return shares;
    }

    static constexpr double gains_mps2 = 0.7;
    static constexpr double brakes_mps2 = -2.5;
    static constexpr double any_mps2 = 100.0;
    static constexpr double hardly = 0.05;

    [[nodiscard]] bool only_when_slowing(std::size_t i) const {
        const auto gaining = shares_where(i, gains_mps2, any_mps2);
        const auto slowing = shares_where(i, -any_mps2, brakes_mps2);
        const auto none = [](double share) { return std::abs(share) < hardly; };
        return gaining.size() >= enough_to_tell && slowing.size() >= enough_to_tell &&
               20 * std::ranges::count_if(gaining, none) >= 19 * std::ssize(gaining) &&
               10 * std::ranges::count_if(slowing, none) <= std::ssize(slowing);
    }

    [[nodiscard]] bool grows_with_acceleration(std::size_t i) const {
        const auto gaining = shares_where(i, gains_mps2, any_mps2);
        const auto slowing = shares_where(i, -any_mps2, brakes_mps2);
        return gaining.size() >= enough_to_tell && slowing.size() >= enough_to_tell &&
               math::median(gaining) > 0.3 + math::median(slowing);
    }

    void take(ColumnGuess& guess, Meaning meaning, const std::string& spoken, const std::string& follows) {
        guess.meaning = meaning;
        guess.confidence = taken_confidence;
        const std::string unit(base::symbol(guess.unit));
        guess.reason = base::said("its name does not say what it is, but it follows %1 in %2", {follows, unit});
        guess.doubt = {DoubtKind::taken_by_motion, {spoken, unit, follows}};
    }

    void doubt(std::size_t i, DoubtKind kind, const std::string& spoken) {
        guesses_[i].doubt = {kind, {spoken, std::string(base::symbol(guesses_[i].unit))}};
    }

    std::vector<ColumnGuess>& guesses_;
    const std::vector<ColumnValues>& values_;
    const DrivenRows& driven_;
};

} // namespace

void take_unclaimed(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                    const DrivenRows& driven) {
    Unclaimed unclaimed(guesses, values, driven);
    unclaimed.take_speed();
    unclaimed.take_accelerations();
    unclaimed.take_engine_speed();
    unclaimed.take_brake_pressure();
    unclaimed.ask_for_pedals();
}

} // namespace lapwright::import
