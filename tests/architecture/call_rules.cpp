// SPDX-License-Identifier: GPL-3.0-or-later
// Reads a line as identifiers with what stands before and behind each; enough to tell std::to_string from to_string.
#include "tests/architecture/rules.h"

#include <array>
#include <cctype>
#include <set>

namespace lapwright::architecture {
namespace {

struct Word {
    std::string_view text;
    std::string_view before; // the rest of the line on either side
    std::string_view behind;
};

bool is_word_letter(char c) {
    return std::isalnum(static_cast<unsigned char>(c)) != 0 || c == '_';
}

std::vector<Word> words_of(std::string_view line) {
    std::vector<Word> words;
    for (std::size_t at = 0; at < line.size();) {
        std::size_t end = at;
        while (end < line.size() && is_word_letter(line[end])) {
            ++end;
        }
        if (end > at) {
            words.push_back({line.substr(at, end - at), line.substr(0, at), line.substr(end)});
        }
        at = end + 1;
    }
    return words;
}

std::string_view without_leading_space(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    return first == std::string_view::npos ? std::string_view() : text.substr(first);
}

bool is_called(const Word& word) {
    return without_leading_space(word.behind).starts_with('(');
}

bool is_member(const Word& word) {
    return word.before.ends_with('.') || word.before.ends_with("->");
}

const std::set<std::string_view> locale_bound{"strtod", "strtof",  "strtold",  "stod",      "stof",   "stold",
                                              "atof",   "sprintf", "snprintf", "vsnprintf", "sscanf", "setlocale"};
// Windows reads and writes them in an old code page, where names lose their letters.
const std::set<std::string_view> in_local_letters{"encodeName", "decodeName", "toLocal8Bit", "fromLocal8Bit"};
const std::set<std::string_view> unseeded{"rand", "srand", "random_shuffle"};

// An engine declared without an argument: "std::mt19937 engine;" or "std::mt19937_64 engine{};".
bool is_engine_without_seed(const Word& word) {
    if (word.text != "mt19937" && word.text != "mt19937_64" && word.text != "minstd_rand") {
        return false;
    }
    std::string_view rest = without_leading_space(word.behind);
    std::size_t name = 0;
    while (name < rest.size() && is_word_letter(rest[name])) {
        ++name;
    }
    rest = without_leading_space(rest.substr(name));
    return (name > 0 && rest.starts_with(';')) || rest.starts_with("{}") || rest.starts_with("()");
}

std::optional<std::string> complaint(const Word& word, bool locale_free, std::string_view line) {
    const std::string name(word.text);
    if (locale_free && locale_bound.contains(word.text) && is_called(word) && !is_member(word)) {
        return name + " answers by the locale; use core/base/number_text.h";
    }
    if (locale_free && word.text == "to_string" && word.before.ends_with("std::")) {
        return "std::to_string answers by the locale; use core/base/number_text.h";
    }
    if (in_local_letters.contains(word.text)) {
        return name + " loses letters on Windows; use ui/models/file_name.h, or UTF-8";
    }
    if (unseeded.contains(word.text) && is_called(word) && !is_member(word)) {
        return name + " has no seed of ours";
    }
    if (word.text == "random_device" || word.text == "default_random_engine" || is_engine_without_seed(word)) {
        return name + ": random numbers need a stated engine and seed";
    }
    if (word.text == "namespace" && line.find("using namespace std") != std::string_view::npos &&
        without_leading_space(word.behind) == "std;") {
        return "using namespace std";
    }
    return std::nullopt;
}

} // namespace

Findings check_calls(std::span<const SourceFile> files) {
    Findings findings;
    for (const SourceFile& file : files) {
        const bool locale_free = !file.path.starts_with("ui/");
        const std::string text = without_comments_and_literals(file.text);
        std::size_t number = 0;
        for (const std::string_view line : lines_of(text)) {
            ++number;
            for (const Word& word : words_of(line)) {
                if (const auto what = complaint(word, locale_free, line)) {
                    findings.push_back(finding(file.path, number, *what));
                }
            }
        }
    }
    return findings;
}

} // namespace lapwright::architecture
