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

struct Spelling {
    std::string_view text; // folded, without blanks
    Unit unit;
    bool as_last_word = true; // may stand unbracketed behind a name: "speed km/h", but hardly "brake in"
};

constexpr std::array spellings{
    Spelling{"s", Unit::second},
    Spelling{"sec", Unit::second},
    Spelling{"secs", Unit::second},
    Spelling{"second", Unit::second},
    Spelling{"seconds", Unit::second},
    Spelling{"sek", Unit::second},
    Spelling{"sekunden", Unit::second},
    Spelling{"secondes", Unit::second},
    Spelling{"segundos", Unit::second},
    Spelling{"secondi", Unit::second},
    Spelling{"seconden", Unit::second},
    Spelling{"ms", Unit::millisecond},
    Spelling{"msec", Unit::millisecond},
    Spelling{"millis", Unit::millisecond},
    Spelling{"milliseconds", Unit::millisecond},
    Spelling{"millisecond", Unit::millisecond},
    Spelling{"us", Unit::microsecond},
    Spelling{"µs", Unit::microsecond},
    Spelling{"μs", Unit::microsecond},
    Spelling{"usec", Unit::microsecond},
    Spelling{"microseconds", Unit::microsecond},
    Spelling{"ns", Unit::nanosecond},
    Spelling{"nsec", Unit::nanosecond},
    Spelling{"nanoseconds", Unit::nanosecond},
    Spelling{"nanos", Unit::nanosecond},
    Spelling{"min", Unit::minute, false},
    Spelling{"minutes", Unit::minute},
    Spelling{"m", Unit::metre},
    Spelling{"meter", Unit::metre},
    Spelling{"meters", Unit::metre},
    Spelling{"metre", Unit::metre},
    Spelling{"metres", Unit::metre},
    Spelling{"metri", Unit::metre},
    Spelling{"metros", Unit::metre},
    Spelling{"km", Unit::kilometre},
    Spelling{"kilometers", Unit::kilometre},
    Spelling{"kilometres", Unit::kilometre},
    Spelling{"kilometer", Unit::kilometre},
    Spelling{"cm", Unit::centimetre},
    Spelling{"mm", Unit::millimetre},
    Spelling{"ft", Unit::foot},
    Spelling{"feet", Unit::foot},
    Spelling{"foot", Unit::foot},
    Spelling{"mi", Unit::mile},
    Spelling{"mile", Unit::mile},
    Spelling{"miles", Unit::mile},
    Spelling{"inch", Unit::inch},
    Spelling{"inches", Unit::inch},
    Spelling{"in", Unit::inch, false},
    Spelling{"\"", Unit::inch, false},
    Spelling{"m/s", Unit::metre_per_second},
    Spelling{"mps", Unit::metre_per_second},
    Spelling{"m/sec", Unit::metre_per_second},
    Spelling{"ms-1", Unit::metre_per_second},
    Spelling{"ms^-1", Unit::metre_per_second},
    Spelling{"m.s-1", Unit::metre_per_second},
    Spelling{"m*s-1", Unit::metre_per_second},
    Spelling{"ms⁻¹", Unit::metre_per_second},
    Spelling{"cm/s", Unit::centimetre_per_second},
    Spelling{"mm/s", Unit::millimetre_per_second},
    Spelling{"km/h", Unit::kilometre_per_hour},
    Spelling{"kmh", Unit::kilometre_per_hour},
    Spelling{"kph", Unit::kilometre_per_hour},
    Spelling{"kmph", Unit::kilometre_per_hour},
    Spelling{"km/u", Unit::kilometre_per_hour},
    Spelling{"km/hr", Unit::kilometre_per_hour},
    Spelling{"km/std", Unit::kilometre_per_hour},
    Spelling{"kmh-1", Unit::kilometre_per_hour},
    Spelling{"mph", Unit::mile_per_hour},
    Spelling{"mi/h", Unit::mile_per_hour},
    Spelling{"miles/h", Unit::mile_per_hour},
    Spelling{"miles/hour", Unit::mile_per_hour},
    Spelling{"kn", Unit::knot},
    Spelling{"kt", Unit::knot},
    Spelling{"kts", Unit::knot},
    Spelling{"knot", Unit::knot},
    Spelling{"knots", Unit::knot},
    Spelling{"knoten", Unit::knot},
    Spelling{"ft/s", Unit::foot_per_second},
    Spelling{"fps", Unit::foot_per_second},
    Spelling{"feet/s", Unit::foot_per_second},
    Spelling{"m/s2", Unit::metre_per_second_squared},
    Spelling{"m/s²", Unit::metre_per_second_squared},
    Spelling{"m/s^2", Unit::metre_per_second_squared},
    Spelling{"m/s/s", Unit::metre_per_second_squared},
    Spelling{"m/s**2", Unit::metre_per_second_squared},
    Spelling{"ms2", Unit::metre_per_second_squared},
    Spelling{"mss", Unit::metre_per_second_squared},
    Spelling{"mps2", Unit::metre_per_second_squared},
    Spelling{"ms-2", Unit::metre_per_second_squared},
    Spelling{"ms^-2", Unit::metre_per_second_squared},
    Spelling{"m/sec2", Unit::metre_per_second_squared},
    Spelling{"m/sec^2", Unit::metre_per_second_squared},
    Spelling{"ms⁻²", Unit::metre_per_second_squared},
    Spelling{"g", Unit::standard_gravity},
    Spelling{"gs", Unit::standard_gravity},
    Spelling{"g's", Unit::standard_gravity},
    Spelling{"g0", Unit::standard_gravity},
    Spelling{"gee", Unit::standard_gravity},
    Spelling{"gforce", Unit::standard_gravity},
    Spelling{"g-force", Unit::standard_gravity},
    Spelling{"gn", Unit::standard_gravity, false},
    Spelling{"gravity", Unit::standard_gravity, false},
    Spelling{"mg", Unit::milli_gravity},
    Spelling{"ft/s2", Unit::foot_per_second_squared},
    Spelling{"ft/s²", Unit::foot_per_second_squared},
    Spelling{"ft/s^2", Unit::foot_per_second_squared},
    Spelling{"rad", Unit::radian},
    Spelling{"radian", Unit::radian},
    Spelling{"radians", Unit::radian},
    Spelling{"deg", Unit::degree},
    Spelling{"°", Unit::degree},
    Spelling{"º", Unit::degree},
    Spelling{"degree", Unit::degree},
    Spelling{"degrees", Unit::degree},
    Spelling{"grad", Unit::degree},
    Spelling{"grados", Unit::degree},
    Spelling{"gradi", Unit::degree},
    Spelling{"degres", Unit::degree},
    Spelling{"graden", Unit::degree},
    Spelling{"rad/s", Unit::radian_per_second},
    Spelling{"radps", Unit::radian_per_second},
    Spelling{"rad/sec", Unit::radian_per_second},
    Spelling{"deg/s", Unit::degree_per_second},
    Spelling{"°/s", Unit::degree_per_second},
    Spelling{"º/s", Unit::degree_per_second},
    Spelling{"dps", Unit::degree_per_second},
    Spelling{"degps", Unit::degree_per_second},
    Spelling{"deg/sec", Unit::degree_per_second},
    Spelling{"grad/s", Unit::degree_per_second},
    Spelling{"rpm", Unit::revolution_per_minute},
    Spelling{"1/min", Unit::revolution_per_minute},
    Spelling{"u/min", Unit::revolution_per_minute},
    Spelling{"min-1", Unit::revolution_per_minute},
    Spelling{"min⁻¹", Unit::revolution_per_minute},
    Spelling{"tr/min", Unit::revolution_per_minute},
    Spelling{"giri/min", Unit::revolution_per_minute},
    Spelling{"r/min", Unit::revolution_per_minute},
    Spelling{"rev/min", Unit::revolution_per_minute},
    Spelling{"omw/min", Unit::revolution_per_minute},
    Spelling{"t/min", Unit::revolution_per_minute},
    Spelling{"tpm", Unit::revolution_per_minute},
    Spelling{"hz", Unit::hertz},
    Spelling{"1/s", Unit::hertz},
    Spelling{"rev/s", Unit::hertz},
    Spelling{"rps", Unit::hertz},
    Spelling{"kg", Unit::kilogram},
    Spelling{"lb", Unit::pound},
    Spelling{"lbs", Unit::pound},
    Spelling{"n", Unit::newton, false},
    Spelling{"lbf", Unit::pound_force},
    Spelling{"w", Unit::watt, false},
    Spelling{"kw", Unit::kilowatt},
    Spelling{"hp", Unit::horsepower},
    Spelling{"bhp", Unit::horsepower},
    Spelling{"ps", Unit::metric_horsepower},
    Spelling{"cv", Unit::metric_horsepower},
    Spelling{"ch", Unit::metric_horsepower, false},
    Spelling{"pk", Unit::metric_horsepower},
    Spelling{"pa", Unit::pascal},
    Spelling{"kpa", Unit::kilopascal},
    Spelling{"hpa", Unit::hectopascal},
    Spelling{"mbar", Unit::hectopascal},
    Spelling{"bar", Unit::bar},
    Spelling{"bars", Unit::bar},
    Spelling{"psi", Unit::pound_per_square_inch},
    Spelling{"nm", Unit::newton_metre},
    Spelling{"n.m", Unit::newton_metre},
    Spelling{"n·m", Unit::newton_metre},
    Spelling{"n*m", Unit::newton_metre},
    Spelling{"lbft", Unit::pound_force_foot},
    Spelling{"lb-ft", Unit::pound_force_foot},
    Spelling{"lb.ft", Unit::pound_force_foot},
    Spelling{"lbf.ft", Unit::pound_force_foot},
    Spelling{"lbf·ft", Unit::pound_force_foot},
    Spelling{"ft-lb", Unit::pound_force_foot},
    Spelling{"ftlb", Unit::pound_force_foot},
    Spelling{"k", Unit::kelvin, false},
    Spelling{"kelvin", Unit::kelvin},
    Spelling{"c", Unit::celsius, false},
    Spelling{"°c", Unit::celsius},
    Spelling{"ºc", Unit::celsius},
    Spelling{"degc", Unit::celsius},
    Spelling{"celsius", Unit::celsius},
    Spelling{"℃", Unit::celsius},
    Spelling{"f", Unit::fahrenheit, false},
    Spelling{"°f", Unit::fahrenheit},
    Spelling{"ºf", Unit::fahrenheit},
    Spelling{"degf", Unit::fahrenheit},
    Spelling{"fahrenheit", Unit::fahrenheit},
    Spelling{"%", Unit::percent},
    Spelling{"pct", Unit::percent},
    Spelling{"percent", Unit::percent},
    Spelling{"prozent", Unit::percent},
    Spelling{"procent", Unit::percent},
    Spelling{"%rh", Unit::percent},
    Spelling{"0..1", Unit::fraction},
    Spelling{"0-1", Unit::fraction},
    Spelling{"fraction", Unit::fraction, false},
    Spelling{"ratio", Unit::fraction, false},
    Spelling{"v", Unit::volt, false},
    Spelling{"volt", Unit::volt},
    Spelling{"volts", Unit::volt},
    Spelling{"mv", Unit::millivolt},
    Spelling{"a", Unit::ampere, false},
    Spelling{"amp", Unit::ampere, false},
    Spelling{"ampere", Unit::ampere},
};

std::string without_blanks(std::string_view text) {
    std::string kept;
    for (const char c : text)
        if (c != ' ' && c != '\t') kept += c;
    while (!kept.empty() && kept.back() == '.')
        kept.pop_back();
    return kept;
}

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

const Spelling* find_spelling(std::string_view text) {
    const std::string plain = speed_in_symbols(without_blanks(folded(text)));
    const auto found = std::ranges::find(spellings, plain, &Spelling::text);
    return found == spellings.end() ? nullptr : &*found;
}

// "m_s", "km_per_h": names that may hold no slash write one so.
const Spelling* find_joined_spelling(std::string_view word) {
    if (word.find('_') == std::string_view::npos) return find_spelling(word);
    std::string slashed = folded(word);
    if (const std::size_t per = slashed.find("_per_"); per != std::string::npos) slashed.replace(per, 5, "/");
    std::ranges::replace(slashed, '_', '/');
    return find_spelling(slashed);
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
std::optional<NameAndUnit> part_at_bracket(std::string_view header) {
    std::optional<NameAndUnit> unknown;
    for (const auto& [open, close] : brackets) {
        const std::size_t from = header.rfind(open);
        const std::size_t to = from == std::string_view::npos ? from : header.find(close, from);
        if (to == std::string_view::npos) continue;
        const std::string_view inside = trimmed(header.substr(from + 1, to - from - 1));
        std::string name(trimmed(header.substr(0, from)));
        const std::string_view rest = trimmed(header.substr(to + 1));
        if (!rest.empty()) name += (name.empty() ? "" : " ") + std::string(rest);
        const auto unit = parse_unit(inside);
        // "Speed (GPS)" says where it comes from, not in what it is measured.
        const bool foreign_words = !unit && inside.size() > 8;
        if (inside.empty() || foreign_words) continue;
        if (!unit && name.empty()) continue;
        if (unit) return NameAndUnit{name, std::string(inside), unit};
        if (!unknown) unknown = NameAndUnit{name, std::string(inside), unit};
    }
    return unknown;
}

std::optional<NameAndUnit> part_at_last_word(std::string_view header) {
    const std::size_t at = header.find_last_of(" _/,;:|\t");
    if (at == std::string_view::npos || at == 0) return std::nullopt;
    // A slash or a blank may belong to the unit itself ("Speed km/h", "Temp deg C"): the longest unit wins.
    for (std::size_t from = 1; from < header.size(); ++from) {
        if (std::string_view(" _/,;:|\t").find(header[from - 1]) == std::string_view::npos) continue;
        const std::string_view word = trimmed(header.substr(from));
        const Spelling* spelling = find_joined_spelling(word);
        if (!spelling || !spelling->as_last_word) continue;
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

std::optional<Unit> parse_unit(std::string_view text) {
    const std::string_view inside = unbracketed(text);
    if (inside.empty()) return std::nullopt;
    const Spelling* spelling = find_spelling(inside);
    return spelling ? std::optional(spelling->unit) : std::nullopt;
}

std::optional<Unit> unit_behind_number(std::string_view text) {
    const Spelling* spelling = find_spelling(text);
    return spelling && spelling->as_last_word ? std::optional(spelling->unit) : std::nullopt;
}

NameAndUnit part_name_and_unit(std::string_view header) {
    header = trimmed(header);
    if (auto parted = part_at_bracket(header)) return *parted;
    if (auto parted = part_at_last_word(header)) return *parted;
    return NameAndUnit{std::string(header), "", std::nullopt};
}

} // namespace lapwright::import
