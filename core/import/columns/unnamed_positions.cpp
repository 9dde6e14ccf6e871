// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/column_relations.h"

#include "core/base/constants.h"
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

// Angles of a body and other readings jump about the globe at thousands of m/s.
bool moves_like_a_vehicle(const std::vector<ColumnGuess>& guesses, const std::vector<ColumnValues>& values,
                          const Samples& samples, std::size_t latitude) {
    const auto time = time_column(guesses);
    if (!time || !is_numeric(guesses[*time].form)) return true;
    std::vector<double> time_s = values[*time].numbers;
    for (double& t : time_s)
        t *= base::definition(guesses[*time].unit).factor;
    std::vector<double> speeds =
        speed_by_positions(samples, time_s, radians(values[latitude].numbers), radians(values[latitude + 1].numbers));
    std::erase_if(speeds, [](double speed) { return std::isnan(speed); });
    if (speeds.empty()) return true;
    return math::quantile(speeds, 0.9) < fastest_mps;
}

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
    for (std::size_t i = 0; i + 1 < guesses.size(); ++i) {
        if (!is_position(i, 90.0) || !is_position(i + 1, 180.0) || !moves_like_a_vehicle(guesses, values, samples, i))
            continue;
        for (const std::size_t k : {i, i + 1}) {
            guesses[k].meaning = k == i ? Meaning::latitude : Meaning::longitude;
            guesses[k].unit = Unit::degree;
            guesses[k].confidence = 0.5;
            guesses[k].reason = "its name is not known, but its values look like a position";
            guesses[k].doubt = {DoubtKind::taken_by_values, {k == i ? "latitude" : "longitude"}};
        }
        return;
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
        guess->reason += "; degrees by their values";
        guess->doubt = {DoubtKind::taken_as_degrees, {std::string(recording::name(guess->meaning))}};
    }
}

} // namespace lapwright::import
