// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/vocabulary/units_in_text.h"

#include "core/import/text/cells.h"
#include "core/import/text/words.h"

#include <algorithm>
#include <array>
#include <utility>

namespace lapwright::import {
namespace {

using base::Unit;

// "Meters/second", "kilometres per hour", "feet/sec": a length's and a time's word to a unit of speed.
std::string speed_in_symbols(const std::string& plain) {
    constexpr auto lengths = std::to_array<std::pair<std::string_view, std::string_view>>({{"meters", "m"},
                                                                                           {"metres", "m"},
                                                                                           {"meter", "m"},
                                                                                           {"metre", "m"},
                                                                                           {"m", "m"},
                                                                                           {"kilometers", "km"},
                                                                                           {"kilometres", "km"},
                                                                                           {"kilometer", "km"},
                                                                                           {"kilometre", "km"},
                                                                                           {"kms", "km"},
                                                                                           {"km", "km"},
                                                                                           {"miles", "mi"},
                                                                                           {"mile", "mi"},
                                                                                           {"mi", "mi"},
                                                                                           {"feet", "ft"},
                                                                                           {"foot", "ft"},
                                                                                           {"ft", "ft"}});
    constexpr auto times = std::to_array<std::pair<std::string_view, std::string_view>>({{"second", "s"},
                                                                                         {"seconds", "s"},
                                                                                         {"sec", "s"},
                                                                                         {"s", "s"},
                                                                                         {"hour", "h"},
                                                                                         {"hours", "h"},
                                                                                         {"hr", "h"},
                                                                                         {"h", "h"}});
    std::size_t mark = plain.find("per");
    std::size_t behind = mark + 3;
    if (mark == std::string::npos) {
        mark = plain.find('/');
        behind = mark + 1;
    }
    if (mark == std::string::npos) return plain;
    const auto symbol = [](const auto& words, std::string_view word) {
        const auto found = std::ranges::find(words, word, [](const auto& pair) { return pair.first; });
        return found == words.end() ? std::string_view() : found->second;
    };
    const auto length = symbol(lengths, std::string_view(plain).substr(0, mark));
    const auto time = symbol(times, std::string_view(plain).substr(behind));
    return length.empty() || time.empty() ? plain : std::string(length) + "/" + std::string(time);
}

const UnitSpelling* find_spelling(std::string_view text, const Vocabulary& known) {
    const std::string key = unit_key(text);
    auto found = known.units.find(key);
    if (found == known.units.end()) found = known.units.find(speed_in_symbols(key));
    return found == known.units.end() ? nullptr : &found->second;
}

// "m_s", "km_per_h": names that may hold no slash write one so.
const UnitSpelling* find_joined_spelling(std::string_view word, const Vocabulary& known) {
    if (word.find('_') == std::string_view::npos) return find_spelling(word, known);
    std::string slashed = folded(word);
    if (const std::size_t per = slashed.find("_per_"); per != std::string::npos) slashed.replace(per, 5, "/");
    std::ranges::replace(slashed, '_', '/');
    return find_spelling(slashed, known);
}

constexpr std::array<std::pair<char, char>, 4> brackets{{{'(', ')'}, {'[', ']'}, {'{', '}'}, {'<', '>'}}};

std::string_view unbracketed(std::string_view text) {
    text = trimmed(text);
    for (const auto& [open, close] : brackets)
        if (text.size() >= 2 && text.front() == open && text.back() == close)
            return trimmed(text.substr(1, text.size() - 2));
    return text;
}

// A bracket that holds a known unit comes before one that holds another short word.
std::optional<NameAndUnit> part_at_bracket(std::string_view header, const Vocabulary& known) {
    std::optional<NameAndUnit> unknown;
    for (const auto& [open, close] : brackets) {
        const std::size_t from = header.rfind(open);
        const std::size_t to = from == std::string_view::npos ? from : header.find(close, from);
        if (to == std::string_view::npos) continue;
        const std::string_view inside = trimmed(header.substr(from + 1, to - from - 1));
        std::string name(trimmed(header.substr(0, from)));
        const std::string_view rest = trimmed(header.substr(to + 1));
        if (!rest.empty()) name += (name.empty() ? "" : " ") + std::string(rest);
        const auto unit = parse_unit(inside, known);
        // "Speed (GPS)" says where it comes from, not in what it is measured.
        const bool foreign_words = !unit && inside.size() > 8;
        if (inside.empty() || foreign_words) continue;
        if (!unit && name.empty()) continue;
        if (unit) return NameAndUnit{name, std::string(inside), unit};
        if (!unknown) unknown = NameAndUnit{name, std::string(inside), unit};
    }
    return unknown;
}

std::optional<NameAndUnit> part_at_last_word(std::string_view header, const Vocabulary& known) {
    const std::size_t at = header.find_last_of(" _/,;:|\t");
    if (at == std::string_view::npos || at == 0) return std::nullopt;
    // A slash or a blank may belong to the unit itself ("Speed km/h", "Temp deg C"): the longest unit wins.
    for (std::size_t from = 1; from < header.size(); ++from) {
        if (std::string_view(" _/,;:|\t").find(header[from - 1]) == std::string_view::npos) continue;
        const std::string_view word = trimmed(header.substr(from));
        const UnitSpelling* const spelling = find_joined_spelling(word, known);
        if (!spelling || spelling->in_brackets) continue;
        std::string_view name = trimmed(header.substr(0, from - 1));
        while (!name.empty() && std::string_view("_/,;:|").find(name.back()) != std::string_view::npos)
            name = trimmed(name.substr(0, name.size() - 1));
        // "Speed in km/h"
        for (const std::string_view joint : {" in", "_in"})
            if (name.size() > 3 && name.ends_with(joint)) name = trimmed(name.substr(0, name.size() - 3));
        if (name.empty()) continue;
        return NameAndUnit{std::string(name), std::string(word), spelling->unit};
    }
    return std::nullopt;
}

} // namespace

std::optional<Unit> parse_unit(std::string_view text, const Vocabulary& known) {
    const std::string_view inside = unbracketed(text);
    if (inside.empty()) return std::nullopt;
    const UnitSpelling* const spelling = find_spelling(inside, known);
    return spelling ? std::optional(spelling->unit) : std::nullopt;
}

std::optional<Unit> unit_behind_number(std::string_view text) {
    const UnitSpelling* const spelling = find_spelling(text, built_in_vocabulary());
    return spelling && !spelling->in_brackets ? std::optional(spelling->unit) : std::nullopt;
}

NameAndUnit part_name_and_unit(std::string_view header, const Vocabulary& known) {
    header = trimmed(header);
    if (auto parted = part_at_bracket(header, known)) return *parted;
    if (auto parted = part_at_last_word(header, known)) return *parted;
    return NameAndUnit{std::string(header), "", std::nullopt};
}

} // namespace lapwright::import
