// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/architecture/rules.h"

#include <algorithm>
#include <cctype>

namespace lapwright::architecture {
namespace {

struct Include {
    std::size_t line = 0;
    bool quoted = false;
    std::string path;
};

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && std::isspace(static_cast<unsigned char>(text.front())) != 0) {
        text.remove_prefix(1);
    }
    return text;
}

// What follows the word, or nothing if the text does not start with it.
std::optional<std::string_view> after(std::string_view text, std::string_view word) {
    return text.starts_with(word) ? std::optional(trimmed(text.substr(word.size()))) : std::nullopt;
}

std::optional<Include> include_of(std::string_view line, std::size_t number) {
    const auto directive = after(trimmed(line), "#");
    const auto target = directive ? after(*directive, "include") : std::nullopt;
    if (!target || target->empty() || (target->front() != '"' && target->front() != '<')) {
        return std::nullopt;
    }
    const bool quoted = target->front() == '"';
    const auto end = target->find(quoted ? '"' : '>', 1);
    return Include{number, quoted, std::string(target->substr(1, end == std::string_view::npos ? end : end - 1))};
}

std::vector<Include> includes_of(const SourceFile& file) {
    std::vector<Include> includes;
    const std::string text = without_comments(file.text);
    std::size_t number = 0;
    for (const std::string_view line : lines_of(text)) {
        if (const auto include = include_of(line, ++number)) {
            includes.push_back(*include);
        }
    }
    return includes;
}

bool is_program_start(std::string_view path) {
    return path.starts_with("app/") && path.find('/', 4) == std::string_view::npos;
}

bool allowed(const LayerTable& table, const std::string& layer, const std::string& included) {
    if (layer == "app") {
        return included == "app/commands" || included == "core/platform" || included == "ui/window";
    }
    return included == layer || table.at(layer).contains(included);
}

void check_include(const LayerTable& table, const std::string& layer, const SourceFile& file, const Include& include,
                   Findings& findings) {
    if (include.path.ends_with(".moc") || include.path == "qcustomplot.h") {
        return;
    }
    const auto included = layer_of(table, include.path);
    if (!included) {
        findings.push_back(finding(file.path, include.line,
                                   "\"" + include.path + "\" is no path from the project's root into a layer"));
    } else if (!allowed(table, layer, *included)) {
        findings.push_back(finding(file.path, include.line, layer + " may not include " + *included));
    }
}

bool is_qt(const std::string& path) {
    return path.size() > 1 && path[0] == 'Q' &&
           (std::isupper(static_cast<unsigned char>(path[1])) != 0 || path[1] == 't');
}

} // namespace

Findings check_includes(const LayerTable& table, std::span<const SourceFile> files) {
    Findings findings;
    for (const SourceFile& file : files) {
        const auto layer = is_program_start(file.path) ? std::optional<std::string>("app") : layer_of(table, file.path);
        if (!layer) {
            findings.push_back(file.path + ": lies in no layer; name its folder in a layer() call");
            continue;
        }
        for (const Include& include : includes_of(file)) {
            if (include.quoted) {
                check_include(table, *layer, file, include, findings);
            }
        }
    }
    return findings;
}

Findings check_foreign_includes(std::span<const SourceFile> files) {
    Findings findings;
    for (const SourceFile& file : files) {
        const bool without_qt = file.path.starts_with("core/") || file.path.starts_with("app/commands/");
        for (const Include& include : includes_of(file)) {
            if (without_qt && is_qt(include.path)) {
                findings.push_back(finding(file.path, include.line, "no Qt here: <" + include.path + ">"));
            }
            if (include.path == "qcustomplot.h" && !file.path.starts_with("ui/plots/")) {
                findings.push_back(finding(file.path, include.line, "qcustomplot.h belongs in ui/plots alone"));
            }
        }
    }
    return findings;
}

Findings check_simulator(std::span<const SourceFile> files) {
    Findings findings;
    for (const SourceFile& file : files) {
        if (file.path.ends_with("_test.cpp")) {
            continue;
        }
        for (const Include& include : includes_of(file)) {
            if (include.quoted && !include.path.starts_with("tests/truth/")) {
                findings.push_back(finding(file.path, include.line, "the simulator shares no code with what it tests"));
            }
        }
    }
    return findings;
}

} // namespace lapwright::architecture
