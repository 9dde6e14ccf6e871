// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/cells.h"

#include "core/import/limits.h"

namespace lapwright::import {
namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == '\0';
}

bool at_delimiter(std::string_view line, std::size_t at, Delimiter delimiter) {
    return delimiter.blanks ? line[at] == ' ' || line[at] == '\t' : line[at] == delimiter.mark;
}

struct Quoted {
    std::string text;
    std::size_t end = 0; // behind the closing quote
};

// The quoted cell that opens at `at`; end 0 where the quote is never closed before a delimiter or the line's end.
Quoted read_quoted(std::string_view line, std::size_t at, Delimiter delimiter) {
    Quoted cell;
    for (std::size_t i = at + 1; i < line.size(); ++i) {
        if (line[i] != '"') {
            cell.text += line[i];
            continue;
        }
        if (i + 1 < line.size() && line[i + 1] == '"') {
            cell.text += '"';
            ++i;
            continue;
        }
        std::size_t behind = i + 1;
        while (behind < line.size() && !at_delimiter(line, behind, delimiter) && is_blank(line[behind]))
            ++behind;
        if (behind < line.size() && !at_delimiter(line, behind, delimiter)) return {};
        cell.end = behind;
        return cell;
    }
    return {};
}

std::size_t skip_blanks(std::string_view line, std::size_t at, Delimiter delimiter) {
    while (at < line.size() && is_blank(line[at]) && (delimiter.blanks || line[at] != delimiter.mark))
        ++at;
    return at;
}

} // namespace

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && is_blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && is_blank(text.back()))
        text.remove_suffix(1);
    return text;
}

std::vector<std::string> split_cells(std::string_view line, Delimiter delimiter) {
    if (delimiter.blanks) line = trimmed(line);
    std::vector<std::string> cells;
    std::size_t at = 0;
    while (cells.size() <= most_columns) {
        const std::size_t start = skip_blanks(line, at, delimiter);
        Quoted quoted;
        if (start < line.size() && line[start] == '"') quoted = read_quoted(line, start, delimiter);
        std::size_t end = quoted.end;
        if (end > 0) {
            cells.emplace_back(trimmed(quoted.text));
        } else {
            end = start;
            while (end < line.size() && !at_delimiter(line, end, delimiter))
                ++end;
            cells.emplace_back(trimmed(line.substr(start, end - start)));
        }
        if (end >= line.size()) break;
        at = end + 1;
    }
    return cells;
}

} // namespace lapwright::import
