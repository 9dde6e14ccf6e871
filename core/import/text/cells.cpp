// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/text/cells.h"

#include "core/import/text/limits.h"
#include "core/import/text/line_scan.h"

#include <algorithm>
#include <optional>

namespace lapwright::import {
namespace {

bool is_blank(char c) {
    return c == ' ' || c == '\t' || c == '\r' || c == '\n' || c == '\0';
}

bool ends_cell(char c, Delimiter delimiter) {
    return c == delimiter.mark || is_line_end(c) || (delimiter.blanks && c == '\t');
}

const char* skip_blanks(const char* at, const char* end, Delimiter delimiter) {
    while (at < end && (*at == ' ' || *at == '\t') && !ends_cell(*at, delimiter))
        ++at;
    return at;
}

std::optional<Cell> quoted_cell(const char* open, const char* end, Delimiter delimiter, std::string& scratch) {
    bool doubled = false;
    const char* const limit = std::min(end, open + longest_cell_bytes);
    for (const char* at = open + 1; at < limit; ++at) {
        if (*at != '"') continue;
        if (at + 1 < end && at[1] == '"') {
            doubled = true;
            ++at;
            continue;
        }
        const char* const behind = skip_blanks(at + 1, end, delimiter);
        if (behind < end && !ends_cell(*behind, delimiter)) return std::nullopt;
        std::string_view text(open + 1, static_cast<std::size_t>(at - open - 1));
        const std::size_t line_ends = count_line_ends(text);
        if (doubled) {
            scratch.assign(text);
            for (std::size_t i = scratch.find("\"\""); i != std::string::npos; i = scratch.find("\"\"", i + 1))
                scratch.erase(i, 1);
            text = scratch;
        }
        return Cell{trimmed(text), behind, line_ends};
    }
    return std::nullopt;
}

} // namespace

std::string_view trimmed(std::string_view text) {
    while (!text.empty() && is_blank(text.front()))
        text.remove_prefix(1);
    while (!text.empty() && is_blank(text.back()))
        text.remove_suffix(1);
    return text;
}

Cell next_cell(const char* at, const char* end, Delimiter delimiter, std::string& scratch) {
    const char* start = skip_blanks(at, end, delimiter);
    // ="0.1": a formula that keeps a spreadsheet from reading the cell its own way.
    if (end - start >= 2 && start[0] == '=' && start[1] == '"') ++start;
    if (start < end && *start == '"')
        if (const auto quoted = quoted_cell(start, end, delimiter, scratch)) return *quoted;
    const char* stop = start;
    while (stop < end && !ends_cell(*stop, delimiter))
        ++stop;
    return {trimmed({start, static_cast<std::size_t>(stop - start)}), stop, 0};
}

std::vector<std::string> split_cells(std::string_view line, Delimiter delimiter) {
    if (delimiter.blanks) line = trimmed(line);
    const char* at = line.data();
    const char* const end = at + line.size();
    std::vector<std::string> cells;
    std::string scratch;
    while (cells.size() <= max_columns) {
        while (delimiter.blanks && at < end && is_blank(*at))
            ++at;
        const Cell cell = next_cell(at, end, delimiter, scratch);
        cells.emplace_back(cell.text);
        if (cell.end >= end) break;
        at = cell.end + 1;
    }
    return cells;
}

} // namespace lapwright::import
