// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/vocabulary/vocabulary.h"

#include "core/base/number_text.h"
#include "core/import/text/cells.h"
#include "core/import/text/words.h"
#include "core/import/vocabulary/built_in_words.h"

#include <algorithm>
#include <array>

namespace lapwright::import {
namespace {

using base::Error;
using base::Quantity;

constexpr std::array<std::pair<Role, std::string_view>, 6> role_names{{
    {Role::skip, "skip"},
    {Role::channel, "channel"},
    {Role::time, "time"},
    {Role::date, "date"},
    {Role::north_south, "north_south"},
    {Role::east_west, "east_west"},
}};
constexpr std::array<std::pair<std::string_view, FactKey>, 7> fact_keys{{
    {"driver", FactKey::driver},
    {"car", FactKey::car},
    {"track", FactKey::track},
    {"date", FactKey::date},
    {"clock", FactKey::clock},
    {"start", FactKey::start},
    {"rate", FactKey::rate},
}};
constexpr std::array<std::pair<std::string_view, Quantity>, 2> quantities{{
    {"acceleration", Quantity::acceleration},
    {"angular_rate", Quantity::angular_rate},
}};

template <typename Value, std::size_t N>
std::optional<Value> value_of(const std::array<std::pair<std::string_view, Value>, N>& table, std::string_view name) {
    const auto found = std::ranges::find(table, name, [](const auto& row) { return row.first; });
    return found == table.end() ? std::nullopt : std::optional(found->second);
}

std::optional<NamedColumn> column_of(std::string_view what, std::string_view how_sure) {
    const auto confidence = base::parse_number(how_sure);
    if (!confidence || !(*confidence >= 0.0 && *confidence <= 1.0)) return std::nullopt;
    if (const auto meaning = recording::parse_meaning(what); meaning && *meaning != recording::Meaning::other)
        return NamedColumn{Role::channel, *meaning, *confidence};
    const auto role = parse_role(what);
    if (!role || *role == Role::skip || *role == Role::channel) return std::nullopt;
    return NamedColumn{*role, recording::Meaning::other, *confidence};
}

// One entry of the text: what stands before the colon, and the phrases behind it.
class Entry {
  public:
    Entry(Vocabulary& known, std::string_view head, std::vector<std::string_view> phrases)
        : known_(known), head_(head), phrases_(std::move(phrases)) {}

    // False where the head is not understood.
    bool take() {
        if (head_ == "from satellites") return words_to(known_.from_satellites);
        if (head_ == "at a wheel") return words_to(known_.at_wheel);
        if (head_ == "no matter") return words_to(known_.no_matter);
        if (head_ == "in g") return words_to(known_.in_g);
        if (head_ == "towards north") return sides_to({false, 1.0});
        if (head_ == "towards south") return sides_to({false, -1.0});
        if (head_ == "towards east") return sides_to({true, 1.0});
        if (head_ == "towards west") return sides_to({true, -1.0});
        if (head_.starts_with("unit ")) return take_unit(head_.substr(5));
        if (head_.starts_with("fact ")) return take_fact(head_.substr(5));
        return take_column();
    }

  private:
    bool words_to(std::set<std::string>& words) {
        for (const std::string_view phrase : phrases_)
            words.insert(plain_words(phrase));
        return true;
    }

    bool sides_to(Side side) {
        for (const std::string_view phrase : phrases_)
            known_.sides.insert_or_assign(plain_words(phrase), side);
        return true;
    }

    bool take_unit(std::string_view symbol) {
        constexpr std::string_view in_brackets = " in brackets";
        const bool bracketed = symbol.ends_with(in_brackets);
        if (bracketed) symbol.remove_suffix(in_brackets.size());
        const auto unit = unit_of_name(trimmed(symbol));
        if (!unit || *unit == base::Unit::none) return false;
        for (const std::string_view phrase : phrases_)
            known_.units.insert_or_assign(unit_key(phrase), UnitSpelling{*unit, bracketed});
        return true;
    }

    bool take_fact(std::string_view name) {
        const auto key = value_of(fact_keys, name);
        if (!key) return false;
        for (const std::string_view phrase : phrases_)
            known_.facts.insert_or_assign(key_of(split_words(plain_words(phrase))), *key);
        return true;
    }

    bool take_column() {
        const auto words = split_words(head_);
        const bool with_unit = words.size() == 4 && words[2] == "with";
        if (words.size() != 2 && !with_unit) return false;
        const auto column = column_of(words[0], words[1]);
        const auto quantity = with_unit ? value_of(quantities, words[3]) : std::optional(Quantity::none);
        if (!column || !quantity) return false;
        for (const std::string_view phrase : phrases_)
            known_.columns.insert_or_assign({*quantity, key_of(split_words(plain_words(phrase)))}, *column);
        return true;
    }

    Vocabulary& known_;
    std::string_view head_;
    std::vector<std::string_view> phrases_;
};

std::vector<std::string_view> parts(std::string_view text, char mark) {
    std::vector<std::string_view> found;
    for (std::size_t at = 0; at <= text.size();) {
        const std::size_t end = std::min(text.find(mark, at), text.size());
        if (const auto part = trimmed(text.substr(at, end - at)); !part.empty()) found.push_back(part);
        at = end + 1;
    }
    return found;
}

struct Paragraph {
    std::uint64_t line = 0;
    std::string text;
};

// Entries with the lines that go on with them.
std::vector<Paragraph> paragraphs(std::string_view text) {
    std::vector<Paragraph> all;
    std::uint64_t number = 0;
    while (!text.empty()) {
        const std::size_t end = std::min(text.find_first_of("\r\n"), text.size());
        const std::string_view line = text.substr(0, std::min(end, text.find('#')));
        ++number;
        const bool pair = end + 1 < text.size() && text[end] == '\r' && text[end + 1] == '\n';
        text.remove_prefix(std::min(text.size(), end + (pair ? 2 : 1)));
        if (trimmed(line).empty()) continue;
        const bool goes_on = (line.front() == ' ' || line.front() == '\t') && !all.empty();
        if (!goes_on) all.push_back({number, ""});
        all.back().text += " " + std::string(trimmed(line));
    }
    return all;
}

} // namespace

base::Result<Vocabulary> with_words(Vocabulary known, std::string_view text, const std::string& name) {
    for (const auto& [line, words] : paragraphs(text)) {
        const auto refused = [&, at = line](const std::string& what) {
            return Error{base::ErrorCode::value_not_readable,
                         {name, at, ""},
                         what,
                         "write it as in \"speed 0.9: speed, velocity\" or \"unit km/h: kph\""};
        };
        const std::size_t colon = words.find(':');
        if (colon == std::string::npos) return refused("the line has no colon");
        const auto head = trimmed(std::string_view(words).substr(0, colon));
        if (!Entry(known, head, parts(std::string_view(words).substr(colon + 1), ',')).take())
            return refused("\"" + std::string(head) + "\" is no meaning with a certainty, unit or list of words");
    }
    return known;
}

const Vocabulary& built_in_vocabulary() {
    static const Vocabulary known = [] {
        auto columns = with_words({}, built_in_columns(), "columns.txt");
        auto all = with_words(std::move(columns).value(), built_in_units(), "units.txt");
        return std::move(all).value();
    }();
    return known;
}

std::vector<std::string> split_words(std::string_view phrase) {
    const auto words = parts(phrase, ' ');
    return {words.begin(), words.end()};
}

std::string key_of(std::vector<std::string> words) {
    std::ranges::sort(words);
    std::string key;
    for (const auto& word : words)
        key += (key.empty() ? "" : " ") + word;
    return key;
}

std::string unit_key(std::string_view spelling) {
    std::string kept;
    for (const char c : folded(spelling))
        if (c != ' ' && c != '\t') kept += c;
    while (!kept.empty() && kept.back() == '.')
        kept.pop_back();
    return kept;
}

// Symbols are not unique ("" is none and the part of one), so these two have names of their own here.
std::string unit_name(base::Unit unit) {
    if (unit == base::Unit::none) return "";
    if (unit == base::Unit::fraction) return "0..1";
    return std::string(base::symbol(unit));
}

std::optional<base::Unit> unit_of_name(std::string_view name) {
    if (name.empty()) return base::Unit::none;
    for (int i = 0; i <= static_cast<int>(base::Unit::ampere); ++i)
        if (unit_name(static_cast<base::Unit>(i)) == name) return static_cast<base::Unit>(i);
    return std::nullopt;
}

std::string_view name(Role role) {
    return std::ranges::find(role_names, role, [](const auto& pair) { return pair.first; })->second;
}

std::optional<Role> parse_role(std::string_view text) {
    const auto found = std::ranges::find(role_names, text, [](const auto& pair) { return pair.second; });
    return found == role_names.end() ? std::nullopt : std::optional(found->first);
}

} // namespace lapwright::import
