// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/column_relations.h"

#include "core/base/constants.h"
#include "core/base/translation.h"
#include "core/import/columns/speed_check.h"
#include "core/import/columns/time_choice.h"
#include "core/import/text/words.h"
#include "core/math/statistics.h"

#include <algorithm>
#include <cmath>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::DoubtKind;
using recording::Meaning;

// No session leaves half a degree, and none is written with fewer decimals than tell a metre.
constexpr double widest_degrees = 0.5;
constexpr std::size_t fewest_decimals = 5;
constexpr double fastest_mps = 150.0;

struct Extent {
    double low = 0.0;
    double high = 0.0;

    [[nodiscard]] bool moves_little() const { return high > low && high - low < widest_degrees; }
};

Extent range_of(const std::vector<double>& numbers) {
    Extent range{std::numeric_limits<double>::infinity(), -std::numeric_limits<double>::infinity()};
    for (const double number : numbers) {
        if (std::isnan(number) || number == 0.0) continue;
        range.low = std::min(range.low, number);
        range.high = std::max(range.high, number);
    }
    return range;
}

bool may_be_degrees(const ColumnValues& values, double limit) {
    return values.form == CellForm::number && values.decimals >= fewest_decimals && values.largest <= limit &&
           range_of(values.numbers).moves_little();
}

std::vector<double> radians(const std::vector<double>& degrees) {
    std::vector<double> result = degrees;
    for (double& angle : result)
        angle *= base::pi / 180.0;
    return result;
}

std::vector<double> seconds(const std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values) {
    const auto time = time_column(guesses);
    return time ? si_numbers(guesses[*time], values[*time]) : std::vector<double>{};
}

// Angles of a body and other readings jump about the globe at thousands of m/s.
bool moves_like_a_vehicle(const std::vector<double>& time_s, const std::vector<ColumnValues>& values,
                          const Samples& samples, std::size_t latitude) {
    if (time_s.empty()) return true;
    std::vector<double> speeds =
        speed_by_positions(samples, time_s, radians(values[latitude].numbers), radians(values[latitude + 1].numbers));
    std::erase_if(speeds, [](double speed) { return std::isnan(speed); });
    if (speeds.empty()) return true;
    return math::quantile(speeds, 0.9) < fastest_mps;
}

// Far enough and as evenly as a car does: other angles change at once, or hardly at all.
bool drives_like_a_car(const std::vector<double>& time_s, const std::vector<ColumnValues>& values,
                       const Samples& samples, std::size_t latitude) {
    constexpr double slowest_mps = 8.0; // at the tenth part of the time in which it is fastest
    constexpr double hardest_mps2 = 30.0;
    constexpr std::size_t fewest_rows = 20;
    const auto north = radians(values[latitude].numbers);
    const auto east = radians(values[latitude + 1].numbers);
    std::vector<double> speeds = speed_by_positions(samples, time_s, north, east);
    const Accelerations driven = accelerations_by_positions(samples, time_s, north, east);
    std::vector<double> pulls;
    for (std::size_t i = 0; i < driven.lateral_mps2.size(); ++i)
        pulls.push_back(std::hypot(driven.lateral_mps2[i], driven.longitudinal_mps2[i]));
    for (auto* numbers : {&speeds, &pulls})
        std::erase_if(*numbers, [](double number) { return !std::isfinite(number); });
    if (speeds.size() < fewest_rows || pulls.size() < fewest_rows) return false;
    const double fast_mps = math::quantile(speeds, 0.9);
    return fast_mps > slowest_mps && fast_mps < fastest_mps && math::quantile(pulls, 0.9) < hardest_mps2;
}

void take_by_values(std::vector<ColumnGuess>& guesses, std::size_t latitude) {
    for (const std::size_t k : {latitude, latitude + 1}) {
        const Meaning meaning = k == latitude ? Meaning::latitude : Meaning::longitude;
        guesses[k].meaning = meaning;
        guesses[k].unit = Unit::degree;
        guesses[k].confidence = 0.5;
        guesses[k].reason = base::said("its name is not known, but its values look like a position");
        guesses[k].doubt = {DoubtKind::taken_by_values, {std::string(recording::name(meaning))}};
    }
}

struct Pair {
    std::size_t latitude = 0;
    std::size_t longitude = 0;
    std::size_t speed = 0;
    double misfit = 0.0; // of the speed between the places to the speed of that column
};

} // namespace

void find_unnamed_positions(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                            const Samples& samples, bool has_names) {
    const auto is_position = [&](std::size_t i, double limit) {
        // A name that says something else is believed.
        const bool unnamed = !has_names || plain_words(guesses[i].header).empty();
        return unnamed && guesses[i].role == Role::channel && guesses[i].meaning == Meaning::other &&
               !guesses[i].unit_written && may_be_degrees(values[i], limit);
    };
    if (std::ranges::any_of(guesses, [](const auto& guess) { return guess.meaning == Meaning::latitude; })) return;
    const auto time_s = seconds(guesses, values);
    for (std::size_t i = 0; i + 1 < guesses.size(); ++i) {
        if (!is_position(i, 90.0) || !is_position(i + 1, 180.0) || !moves_like_a_vehicle(time_s, values, samples, i))
            continue;
        return take_by_values(guesses, i);
    }
}

void find_positions_by_driving(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                               const Samples& samples) {
    const auto tells_motion = [](const ColumnGuess& guess) {
        return guess.role == Role::channel &&
               (guess.meaning == Meaning::latitude || guess.meaning == Meaning::east ||
                guess.meaning == Meaning::speed || guess.meaning == Meaning::wheel_speed);
    };
    const auto time_s = seconds(guesses, values);
    if (time_s.empty() || std::ranges::any_of(guesses, tells_motion)) return;
    const auto may_be = [&](std::size_t i, double limit) {
        const ColumnGuess& guess = guesses[i];
        return guess.role == Role::channel && guess.meaning == Meaning::other &&
               (!guess.unit_written || guess.unit == Unit::degree) && may_be_degrees(values[i], limit);
    };
    for (std::size_t i = 0; i + 1 < guesses.size(); ++i)
        if (may_be(i, 90.0) && may_be(i + 1, 180.0) && drives_like_a_car(time_s, values, samples, i))
            return take_by_values(guesses, i);
}

void find_positions_by_speed(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                             const Samples& samples) {
    std::vector<std::size_t> places;
    std::vector<std::size_t> speeds;
    std::optional<std::size_t> named_latitude; // of which the other's name is not known
    std::optional<std::size_t> named_longitude;
    std::vector<std::size_t> unclaimed; // may be a speed for all that their names and units say
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        const ColumnGuess& guess = guesses[i];
        if (guess.role != Role::channel) continue;
        if (guess.meaning == Meaning::east) return;
        if (guess.meaning == Meaning::latitude) named_latitude = i;
        if (guess.meaning == Meaning::longitude) named_longitude = i;
        if (guess.meaning == Meaning::speed || guess.meaning == Meaning::wheel_speed) speeds.push_back(i);
        if (guess.meaning != Meaning::other) continue;
        if ((!guess.unit_written || guess.unit == Unit::degree) && may_be_degrees(values[i], 180.0))
            places.push_back(i);
        else if (is_numeric(guess.form) && (!guess.unit_written || base::quantity(guess.unit) == base::Quantity::speed))
            unclaimed.push_back(i);
    }
    if (named_latitude && named_longitude) return;
    if (speeds.empty()) speeds = unclaimed;
    const auto time_s = seconds(guesses, values);
    if (time_s.empty()) return;
    std::optional<Pair> best;
    const std::vector<std::size_t> latitudes = named_latitude ? std::vector{*named_latitude} : places;
    const std::vector<std::size_t> longitudes = named_longitude ? std::vector{*named_longitude} : places;
    for (const std::size_t latitude : latitudes) {
        for (const std::size_t longitude : longitudes) {
            if (latitude == longitude || values[latitude].largest > 90.0) continue;
            const auto speed_mps = speed_by_positions(samples, time_s, radians(values[latitude].numbers),
                                                      radians(values[longitude].numbers));
            for (const std::size_t speed : speeds) {
                const auto off = misfit_to_speed(values[speed].numbers, written_unit(guesses[speed]), speed_mps);
                if (off && (!best || *off < best->misfit)) best = {latitude, longitude, speed, *off};
            }
        }
    }
    if (!best) return;
    const std::string followed = "\"" + guesses[best->speed].name + "\"";
    for (const std::size_t k : {best->latitude, best->longitude}) {
        if (named_latitude == k || named_longitude == k) continue;
        const Meaning meaning = k == best->latitude ? Meaning::latitude : Meaning::longitude;
        const std::string spoken(recording::name(meaning));
        guesses[k].meaning = meaning;
        guesses[k].unit = Unit::degree;
        guesses[k].confidence = 0.6;
        guesses[k].reason = base::said("its name is not known, but it moves as %1 does", {followed});
        guesses[k].doubt = {DoubtKind::taken_by_motion, {spoken, "degrees", followed}};
    }
}

void settle_degrees(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values) {
    const auto find = [&](Meaning meaning) {
        return std::ranges::find_if(
            guesses, [&](const auto& guess) { return guess.role == Role::channel && guess.meaning == meaning; });
    };
    const auto east = find(Meaning::east);
    const auto north = find(Meaning::north);
    if (east == guesses.end() || north == guesses.end() || find(Meaning::latitude) != guesses.end()) return;
    const auto of = [&](auto guess) -> const ColumnValues& {
        return values[static_cast<std::size_t>(guess - guesses.begin())];
    };
    if (east->unit_written || north->unit_written || !may_be_degrees(of(east), 180.0) ||
        !may_be_degrees(of(north), 90.0))
        return;
    for (ColumnGuess* guess : {&*east, &*north}) {
        guess->meaning = guess == &*east ? Meaning::longitude : Meaning::latitude;
        guess->unit = Unit::degree;
        guess->reason += "; " + base::said("degrees by their values");
        guess->doubt = {DoubtKind::taken_as_degrees, {std::string(recording::name(guess->meaning))}};
    }
}

} // namespace lapwright::import
