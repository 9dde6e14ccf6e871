// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/columns/column_relations.h"

#include "core/base/translation.h"
#include "core/import/text/words.h"

#include <algorithm>
#include <array>
#include <optional>
#include <string>
#include <string_view>

namespace lapwright::import {
namespace {

using recording::Meaning;

// Words for position, time, speed, distance, lap and the like.  Common practice, no source.
constexpr std::array<std::string_view, 24> ost_languages{
    "breite",  "breitengrad", "lange",    "langengrad", "laenge", "laengengrad", "zeit",    "geschwindigkeit",
    "strecke", "runde",       "drehzahl", "ost",        "kurs",   "hohe",        "breedte", "breedtegraad",
    "lengte",  "lengtegraad", "tijd",     "snelheid",   "ronde",  "toerental",   "oost",    "afstand"};
constexpr std::array<std::string_view, 24> ouest_languages{
    "vitesse",     "temps",    "tour",   "regime", "ouest", "cap",    "latitud",  "longitud",
    "velocidad",   "tiempo",   "vuelta", "oeste",  "rumbo", "altura", "hora",     "latitudine",
    "longitudine", "velocita", "tempo",  "giro",   "ovest", "quota",  "distanza", "distancia"};

bool names_use(const Layout& layout, const std::array<std::string_view, 24>& words) {
    return std::ranges::any_of(layout.names, [&](const std::string& name) {
        const std::string plain = " " + plain_words(name) + " ";
        return std::ranges::any_of(words, [&](std::string_view word) {
            return plain.find(" " + std::string(word) + " ") != std::string::npos;
        });
    });
}

bool stands_in(const Samples& samples, std::size_t column, char letter) {
    const auto is_letter = [&](char c) { return c == letter || c == static_cast<char>(letter - 'A' + 'a'); };
    return std::ranges::any_of(samples.rows, [&](const SampleRow& row) {
        const std::string& cell = row[column];
        return !cell.empty() && (is_letter(cell.front()) || is_letter(cell.back()));
    });
}

// Nothing where it cannot be told.
std::optional<bool> is_west(const Layout& layout, const Samples& samples, std::size_t column) {
    const bool with_west = stands_in(samples, column, 'W');
    if (with_west != stands_in(samples, column, 'E')) return !with_west;
    const bool ost = names_use(layout, ost_languages);
    if (ost != names_use(layout, ouest_languages)) return !ost;
    return std::nullopt;
}

bool has_role(const std::vector<ColumnGuess>& guesses, Role role) {
    return std::ranges::any_of(guesses, [&](const ColumnGuess& guess) { return guess.role == role; });
}

bool is_unsigned_position(const ColumnGuess& guess, Meaning meaning) {
    return guess.role == Role::channel && guess.meaning == meaning &&
           (guess.form == CellForm::number || guess.form == CellForm::degrees_minutes);
}

} // namespace

void find_unnamed_letters(const Samples& samples, const std::vector<ColumnValues>& values,
                          std::vector<ColumnGuess>& guesses) {
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        ColumnGuess& guess = guesses[i];
        if (guess.role != Role::skip || values[i].form != CellForm::hemisphere) continue;
        const bool across = stands_in(samples, i, 'E') || stands_in(samples, i, 'W') || stands_in(samples, i, 'O');
        const Meaning meaning = across ? Meaning::longitude : Meaning::latitude;
        const Role role = across ? Role::east_west : Role::north_south;
        const auto next_filled = [&](std::size_t step) { // another column of that side; empty ones do not count
            std::size_t k = i + step;
            while (k < guesses.size() && values[k].filled == 0)
                k += step;
            return k; // beyond the first one it is a very large number
        };
        const auto before = next_filled(static_cast<std::size_t>(-1));
        const auto behind = next_filled(1);
        const bool beside = (before < guesses.size() && is_unsigned_position(guesses[before], meaning)) ||
                            (behind < guesses.size() && is_unsigned_position(guesses[behind], meaning));
        if (!beside || has_role(guesses, role)) continue;
        guess.role = role;
        guess.unit = base::Unit::none;
        guess.confidence = 0.7;
        guess.reason = base::said("letters beside the %1", {recording::words(meaning)});
    }
}

void find_lettered_positions(const Samples& samples, const std::vector<ColumnValues>& values,
                             std::vector<ColumnGuess>& guesses) {
    const auto claimed = [&](Meaning meaning) {
        return std::ranges::any_of(
            guesses, [&](const auto& guess) { return guess.role == Role::channel && guess.meaning == meaning; });
    };
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        ColumnGuess& guess = guesses[i];
        if (values[i].form != CellForm::angle || guess.meaning != Meaning::other || !guess.doubt.empty()) continue;
        const bool along = stands_in(samples, i, 'N') || stands_in(samples, i, 'S');
        const bool across = stands_in(samples, i, 'E') || stands_in(samples, i, 'W') || stands_in(samples, i, 'O');
        const Meaning meaning = along ? Meaning::latitude : Meaning::longitude;
        if (along == across || claimed(meaning)) continue;
        guess.role = Role::channel;
        guess.meaning = meaning;
        guess.unit = base::Unit::degree;
        guess.confidence = 0.7;
        guess.reason = base::said("its cells bear the letters of a %1", {recording::words(meaning)});
    }
}

void settle_letter_o(const Layout& layout, const Samples& samples, std::vector<ColumnGuess>& guesses) {
    for (std::size_t i = 0; i < guesses.size(); ++i) {
        ColumnGuess& guess = guesses[i];
        const bool longitude = guess.role == Role::channel && guess.meaning == Meaning::longitude;
        const bool lettered = (longitude && guess.form == CellForm::angle) || guess.role == Role::east_west;
        if (!lettered || !stands_in(samples, i, 'O')) continue;
        const auto west = is_west(layout, samples, i);
        if (west.value_or(false)) guess.form = longitude ? CellForm::angle_o_west : CellForm::hemisphere_o_west;
        if (west)
            guess.reason += "; " + (*west ? base::said("its O is west") : base::said("its O is east"));
        else
            guess.doubt = {recording::DoubtKind::letter_o};
    }
}

} // namespace lapwright::import
