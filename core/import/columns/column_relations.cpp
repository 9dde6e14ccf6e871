// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/column_relations.h"

#include "core/base/translation.h"
#include "core/import/columns/time_choice.h"
#include "core/import/text/words.h"

#include <algorithm>
#include <array>
#include <string_view>

namespace lapwright::import {
namespace {

using base::Unit;
using recording::DoubtKind;
using recording::Meaning;

std::string spoken_meaning(Meaning meaning) {
    std::string words(recording::name(meaning));
    std::ranges::replace(words, '_', ' ');
    return words;
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
        to.reason += "; " + base::said("written like the %1", {recording::words(from.meaning)});
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
        guess.reason += "; " + base::said("beside a speed from satellites, so taken as the wheels'");
    }
}

// "yaw" beside "roll" and "pitch" is an angle, "gz" beside "az" a rate of turning.
void settle_by_company(std::vector<ColumnGuess>& guesses) {
    const auto has = [&](std::string_view words) {
        return std::ranges::any_of(guesses, [&](const auto& guess) { return plain_words(guess.name) == words; });
    };
    const bool attitude = has("roll") && has("pitch");
    const bool rates = (has("ax") && has("gx")) || (has("ay") && has("gy")) || (has("acc x") && has("gyr x"));
    for (ColumnGuess& guess : guesses) {
        if (guess.role != Role::channel || guess.unit_written) continue;
        const std::string words = plain_words(guess.name);
        const bool angle = attitude && guess.meaning == Meaning::yaw_rate && guess.confidence <= 0.5;
        const bool rate = rates && (words == "gx" || words == "gy" || words == "gz");
        if (!angle && !rate) continue;
        guess.meaning = Meaning::other;
        guess.unit = Unit::none;
        guess.doubt.clear();
        guess.reason = angle ? base::said("an angle beside roll and pitch: kept as it is")
                             : base::said("a rate beside accelerations: kept as it is");
    }
}

// Beside latitude and longitude "x" and "y" are hardly a second position: accelerations and turns are called so too.
void leave_bare_letters(std::vector<ColumnGuess>& guesses) {
    const auto has = [&](Meaning meaning) {
        return std::ranges::any_of(guesses,
                                   [&](const auto& g) { return g.role == Role::channel && g.meaning == meaning; });
    };
    if (!has(Meaning::latitude) || !has(Meaning::longitude)) return;
    for (ColumnGuess& guess : guesses) {
        const bool place = guess.meaning == Meaning::east || guess.meaning == Meaning::north;
        if (guess.role != Role::channel || !place || guess.unit_written || guess.confidence > 0.5) continue;
        guess.meaning = Meaning::other;
        guess.unit = Unit::none;
        guess.doubt.clear();
        guess.reason = base::said("latitude and longitude are the position: kept as it is");
    }
}

// What a recording has once: the surest of the columns is it, the others are channels of their own.
void keep_one_of_each(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values) {
    constexpr std::array once{Meaning::latitude,
                              Meaning::longitude,
                              Meaning::east,
                              Meaning::north,
                              Meaning::course,
                              Meaning::altitude,
                              Meaning::speed,
                              Meaning::lap_number,
                              Meaning::yaw_rate,
                              Meaning::distance,
                              Meaning::longitudinal_acceleration,
                              Meaning::lateral_acceleration};
    constexpr double hardly_filled = 0.1;
    constexpr double as_sure = 0.1;
    for (const Meaning meaning : once) {
        const auto is_it = [&](std::size_t i) {
            return guesses[i].role == Role::channel && guesses[i].meaning == meaning;
        };
        std::size_t most = 0;
        for (std::size_t i = 0; i < guesses.size(); ++i)
            if (is_it(i)) most = std::max(most, values[i].filled);
        std::optional<std::size_t> best;
        for (std::size_t i = 0; i < guesses.size(); ++i) {
            const bool filled = static_cast<double>(values[i].filled) >= hardly_filled * static_cast<double>(most);
            if (is_it(i) && filled && (!best || guesses[i].confidence > guesses[*best].confidence)) best = i;
        }
        for (std::size_t i = 0; i < guesses.size(); ++i) {
            if (!is_it(i) || i == *best) continue;
            guesses[i].meaning = Meaning::other;
            guesses[i].doubt.clear();
            guesses[i].reason =
                base::said("\"%1\" is taken as the %2", {guesses[*best].name, recording::words(meaning)});
            const bool as_well = guesses[i].confidence > guesses[*best].confidence - as_sure;
            const bool matters =
                meaning == Meaning::latitude || meaning == Meaning::speed || meaning == Meaning::lap_number;
            if (as_well && matters)
                guesses[i].doubt = {DoubtKind::one_of_two, {spoken_meaning(meaning), guesses[*best].name}};
        }
    }
}

} // namespace

std::vector<double> si_numbers(const ColumnGuess& guess, const ColumnValues& values) {
    std::vector<double> numbers = values.numbers;
    const auto& unit = base::definition(guess.unit);
    for (double& number : numbers)
        number = number * guess.scale * unit.factor + unit.offset;
    return numbers;
}

std::optional<Unit> written_unit(const ColumnGuess& guess) {
    return guess.unit_written ? std::optional(guess.unit) : std::nullopt;
}

void relate_columns(std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values, const Samples& samples,
                    bool has_names) {
    settle_by_company(guesses);
    choose_time(guesses, values, samples);
    find_unnamed_positions(guesses, values, samples, has_names);
    settle_degrees(guesses, values);
    find_positions_by_speed(guesses, values, samples);
    find_positions_by_driving(guesses, values, samples);
    match_positions(guesses);
    settle_countings(guesses, values, samples);
    leave_bare_letters(guesses);
    relate_speeds(guesses, values, samples);
    part_speeds(guesses);
    keep_one_of_each(guesses, values);
}

} // namespace lapwright::import
