// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/channels/column_warnings.h"

#include <algorithm>
#include <cmath>

namespace lapwright::import {
namespace {

using recording::ColumnDoubt;
using recording::DoubtKind;
using recording::Meaning;
using recording::Recording;
using recording::Warning;
using recording::WarningKind;

std::string spoken(Meaning meaning) {
    std::string words(recording::name(meaning));
    std::ranges::replace(words, '_', ' ');
    return words;
}

bool takes_unit_from_values(const ColumnGuess& guess) {
    const bool read = guess.role == Role::time || (guess.role == Role::channel && guess.meaning != Meaning::other);
    const bool guessed =
        read && guess.form == CellForm::number && !guess.unit_written && guess.unit != base::Unit::none;
    if (!guessed || guess.settled || !guess.doubt.empty() || !guess.unit_text.empty()) return false;
    // Degrees are how positions are written, unless they are written in an unusual way.
    const bool position = guess.meaning == Meaning::latitude || guess.meaning == Meaning::longitude;
    return !(position && guess.unit == base::Unit::degree && std::abs(guess.scale) == 1.0);
}

} // namespace

void tell_doubts(Recording& recording, const std::vector<ColumnGuess>& guesses) {
    Warning units{.kind = WarningKind::units_guessed};
    for (const auto& guess : guesses) {
        if (takes_unit_from_values(guess))
            units.texts.insert(units.texts.end(), {guess.name, std::string(base::symbol(guess.unit))});
        if (guess.settled) continue;
        if (is_doubtful(guess))
            recording.warnings.push_back(
                {.kind = guess.role == Role::skip ? WarningKind::column_left_out : WarningKind::column_unsure,
                 .of = guess.name,
                 .doubt =
                     guess.doubt.empty() ? ColumnDoubt{DoubtKind::name_unsure, {spoken(guess.meaning)}} : guess.doubt});
        else if (guess.role != Role::skip && !guess.unit_text.empty() && !guess.unit_written &&
                 guess.form == CellForm::number)
            recording.warnings.push_back({.kind = WarningKind::unit_unknown,
                                          .of = guess.name,
                                          .texts = {guess.unit_text, std::string(base::symbol(guess.unit))}});
    }
    if (!units.texts.empty()) recording.warnings.push_back(std::move(units));
}

} // namespace lapwright::import
