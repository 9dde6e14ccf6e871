// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/tables/head_lines.h"

#include "core/import/text/cells.h"
#include "core/import/text/encoding.h"
#include "core/import/text/limits.h"

#include <algorithm>

namespace lapwright::import {
namespace {

// Enough rows to judge by, behind the longest preamble that is read.
constexpr std::size_t judged_rows = 60;
constexpr std::size_t max_joined = 8;

bool has_odd_quotes(std::string_view line) {
    return std::ranges::count(line, '"') % 2 != 0;
}

bool parts_cells(char c) {
    return c == ',' || c == ';' || c == '\t' || c == '|';
}

// The last quote of the line opens a cell: it stands first or behind a delimiter.
bool opens_a_cell(std::string_view line) {
    if (!has_odd_quotes(line) || is_comment(line)) return false;
    std::string_view before = line.substr(0, line.rfind('"'));
    before = before.substr(0, before.find_last_not_of(' ') + 1);
    return before.empty() || parts_cells(before.back());
}

// The first quote of the line closes a cell: it stands last or before a delimiter.
bool closes_a_cell(std::string_view line) {
    if (!has_odd_quotes(line)) return false;
    const std::string_view behind = line.substr(line.find('"') + 1);
    const std::size_t next = behind.find_first_not_of(' ');
    return next == std::string_view::npos || parts_cells(behind[next]);
}

// How many lines the cell spans that is left open at the end of line `first`; 1 where none is.
std::size_t lines_of_cell(const std::vector<HeadLine>& lines, std::size_t first) {
    if (!opens_a_cell(lines[first].text)) return 1;
    for (std::size_t count = 2; count <= std::min(max_joined, lines.size() - first); ++count) {
        const std::string_view line = lines[first + count - 1].text;
        if (has_odd_quotes(line)) return closes_a_cell(line) ? count : 1;
    }
    return 1;
}

std::vector<HeadLine> joined(std::string_view text, const std::vector<HeadLine>& lines) {
    std::vector<HeadLine> result;
    for (std::size_t i = 0; i < lines.size();) {
        const std::size_t count = lines_of_cell(lines, i);
        const HeadLine& last = lines[i + count - 1];
        const std::size_t end = last.offset + last.text.size();
        result.push_back({text.substr(lines[i].offset, end - lines[i].offset), lines[i].number, lines[i].offset});
        i += count;
    }
    return result;
}

} // namespace

bool is_comment(std::string_view line) {
    line = trimmed(line);
    return line.starts_with('#') || line.starts_with("//") || line.starts_with('%');
}

std::vector<HeadLine> head_lines(std::string_view text, std::size_t most) {
    std::vector<HeadLine> lines;
    std::size_t at = 0;
    while (at < text.size() && lines.size() < most) {
        const std::size_t end = text.substr(at, longest_line_bytes + 1).find_first_of("\r\n");
        const std::size_t length = end == std::string_view::npos ? std::min(text.size() - at, longest_line_bytes) : end;
        lines.push_back({text.substr(at, length), lines.size() + 1, at});
        at += length;
        if (at < text.size() && text[at] == '\r')
            ++at;
        else if (at < text.size() && text[at] == '\n') {
            ++at;
            continue;
        }
        if (at < text.size() && text[at] == '\n') ++at;
    }
    return lines;
}

std::vector<HeadLine> judged_lines(std::string_view text) {
    auto head = head_lines(text, max_preamble_lines + judged_rows);
    if (!head.empty() && head.front().text.starts_with(utf8_mark)) {
        head.front().text.remove_prefix(utf8_mark.size());
        head.front().offset = utf8_mark.size();
    }
    return joined(text, head);
}

} // namespace lapwright::import
