// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/vocabulary/column_names.h"

#include "core/import/text/number_scan.h"
#include "core/import/text/words.h"

#include <algorithm>

namespace lapwright::import {
namespace {

using base::Quantity;

std::optional<NamedColumn> look_up(const std::vector<std::string>& words, Quantity written, const Vocabulary& known) {
    const std::string key = key_of(words);
    auto found = known.columns.find({written, key});
    if (found == known.columns.end()) found = known.columns.find({Quantity::none, key});
    return found == known.columns.end() ? std::nullopt : std::optional(found->second);
}

std::vector<std::string> without(std::vector<std::string> words, const std::set<std::string>& unwanted) {
    std::erase_if(words, [&](const std::string& word) { return unwanted.contains(word); });
    return words;
}

} // namespace

bool only_says_where(std::string_view text, const Vocabulary& known) {
    return std::ranges::all_of(split_words(plain_words(text)), [&](const std::string& word) {
        return known.from_satellites.contains(word) || known.at_wheel.contains(word) || known.no_matter.contains(word);
    });
}

bool names_gravity(std::string_view name, const Vocabulary& known) {
    return std::ranges::any_of(split_words(plain_words(name)),
                               [&](const std::string& word) { return known.in_g.contains(word); });
}

std::string without_gravity(std::string_view name, const Vocabulary& known) {
    std::string rest;
    for (const std::string& word : without(split_words(plain_words(name)), known.in_g))
        rest += (rest.empty() ? "" : " ") + word;
    return rest;
}

std::optional<NamedColumn> meaning_of_name(std::string_view name, Quantity written, const Vocabulary& known) {
    const std::vector<std::string> words = split_words(plain_words(name));
    if (words.empty()) return std::nullopt;
    const auto any_of = [&](const std::set<std::string>& list) {
        return std::ranges::any_of(words, [&](const std::string& word) { return list.contains(word); });
    };
    const auto no_source = without(words, known.from_satellites);
    const auto no_filler = without(no_source, known.no_matter);
    const auto no_wheel = without(no_filler, known.at_wheel);
    double certainty = 1.0;
    // "4 Speed", "Speed 3": a number of the column.
    auto no_number = no_wheel;
    std::erase_if(no_number, [](const std::string& word) { return std::ranges::all_of(word, is_digit); });
    for (const auto& attempt : {words, no_source, no_filler, no_wheel, no_number}) {
        if (auto column = look_up(attempt, written, known)) {
            column->confidence *= certainty;
            column->from_satellites = any_of(known.from_satellites);
            column->at_wheel = any_of(known.at_wheel);
            // "Wheel RR (rpm)" is no engine.
            if (column->meaning == recording::Meaning::engine_speed && column->at_wheel) return std::nullopt;
            if (column->meaning == recording::Meaning::speed && column->at_wheel)
                column->meaning = recording::Meaning::wheel_speed;
            return column;
        }
        certainty *= 0.95;
    }
    return std::nullopt;
}

std::optional<SidedPosition> sided_position(std::string_view name, const Vocabulary& known) {
    const std::vector<std::string> words = split_words(plain_words(name));
    for (const bool last : {true, false}) {
        if (words.size() < 2) break;
        const std::string& word = last ? words.back() : words.front();
        const auto side = known.sides.find(word);
        if (side == known.sides.end()) continue;
        const char capital = static_cast<char>(word.front() - 'a' + 'A');
        if (word.size() == 1 && name.find(capital) == std::string_view::npos) continue;
        std::string rest;
        for (std::size_t i = last ? 0 : 1; i + (last ? 1 : 0) < words.size(); ++i)
            rest += (rest.empty() ? "" : " ") + words[i];
        const auto column = meaning_of_name(rest, Quantity::none, known);
        const auto wanted = side->second.across ? recording::Meaning::longitude : recording::Meaning::latitude;
        if (column && column->role == Role::channel && column->meaning == wanted)
            return SidedPosition{*column, side->second.sign};
    }
    return std::nullopt;
}

} // namespace lapwright::import
