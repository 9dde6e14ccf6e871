// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/tables/layout.h"

#include "core/import/tables/header.h"
#include "core/import/text/angle_text.h"
#include "core/import/text/line_scan.h"
#include "core/import/text/moment.h"
#include "core/import/vocabulary/measured_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <map>

namespace lapwright::import {
namespace {

// A table is believed where half of this many rows fit.
constexpr std::size_t looked_ahead = 8;

constexpr std::array delimiters{Delimiter{','}, Delimiter{';'}, Delimiter{'\t'}, Delimiter{'|'}, Delimiter{' ', true}};

// "#,time,speed": a column of row numbers is called so.
bool names_a_column(std::string_view line, Delimiter delimiter) {
    return !delimiter.blanks && line.size() > 1 && line[0] == '#' && line[1] == delimiter.mark;
}

std::vector<Row> split_rows(const std::vector<HeadLine>& head, Delimiter delimiter, NumberStyle style,
                            Encoding encoding) {
    std::vector<Row> rows;
    for (std::size_t i = 0; i < head.size(); ++i) {
        const std::string_view line = head[i].text;
        if (trimmed(line).empty() || (is_comment(line) && !names_a_column(line, delimiter))) continue;
        Row row{i, split_cells(head[i].text, delimiter)};
        for (auto& cell : row.cells) {
            if (encoding == Encoding::windows_1252 && has_high_bytes(cell)) cell = to_utf8(cell, encoding).text;
            std::ranges::replace_if(cell, is_line_end, ' ');
            // A single letter may be a hemisphere or a unit or a name: it says nothing.
            if (cell.empty() || read_hemisphere(cell)) continue;
            ++row.filled;
            if (looks_like_data(cell, style)) ++row.data;
        }
        rows.push_back(std::move(row));
    }
    return rows;
}

struct Block {
    std::size_t first = 0; // index into the rows
    std::size_t columns = 0;
    double score = 0.0;
};

// Whether at least half of the next rows are data of this width: a single line of the preamble is no table.
bool begins_table(const std::vector<Row>& rows, std::size_t first, std::size_t columns) {
    const std::size_t end = std::min(rows.size(), first + looked_ahead);
    std::size_t fitting = 0;
    for (std::size_t i = first; i < end; ++i)
        if (rows[i].cells.size() == columns && rows[i].is_data()) ++fitting;
    return rows[first].cells.size() == columns && rows[first].is_data() && 2 * fitting >= end - first;
}

// The width that makes the best table of these rows, and its first row; `from` is the first that may be one of data.
Block find_block(const std::vector<Row>& rows, std::size_t from) {
    struct Sum {
        double rows = 0.0;
        double filled = 0.0;
        double data = 0.0;
    };
    std::map<std::size_t, Sum> sums;
    for (std::size_t i = from; i < rows.size(); ++i) {
        const Row& row = rows[i];
        if (row.cells.size() < 2 || !row.is_data()) continue;
        Sum& sum = sums[row.cells.size()];
        sum.rows += 1.0;
        sum.filled += static_cast<double>(row.filled);
        sum.data += static_cast<double>(row.data);
    }
    Block best;
    for (const auto& [columns, sum] : sums) {
        const double share = sum.data / sum.filled;
        const double score = sum.rows * std::sqrt(static_cast<double>(columns)) * share * share * share;
        if (score <= best.score) continue;
        for (std::size_t first = from; first < rows.size(); ++first) {
            if (!begins_table(rows, first, columns)) continue;
            best = {first, columns, score};
            break;
        }
    }
    return best;
}

// Points and commas in the cells that decide which of them is the decimal mark.
struct MarkVotes {
    std::size_t point = 0;
    std::size_t comma = 0;
    std::size_t unsure_comma = 0; // "1,234"
};

void vote(MarkVotes& votes, std::string_view cell) {
    if (cell.starts_with('-') || cell.starts_with('+')) cell.remove_prefix(1);
    if (cell.find_first_not_of("0123456789.,eE+-' ") != std::string_view::npos) return;
    const std::size_t point = cell.rfind('.');
    const std::size_t comma = cell.rfind(',');
    const bool has_point = point != std::string_view::npos;
    const bool has_comma = comma != std::string_view::npos;
    if (has_point && has_comma) {
        ++(point > comma ? votes.point : votes.comma);
    } else if (has_point) {
        if (std::ranges::count(cell, '.') == 1) ++votes.point;
    } else if (has_comma && std::ranges::count(cell, ',') == 1) {
        const bool three = cell.size() - comma - 1 == 3 && comma >= 1 && comma <= 3 && cell.front() != '0';
        ++(three ? votes.unsure_comma : votes.comma);
    }
}

struct StyleVerdict {
    NumberStyle style;
    bool unsure = false;
};

StyleVerdict judge_style(const std::vector<HeadLine>& head, Delimiter delimiter) {
    MarkVotes votes;
    for (const HeadLine& line : head)
        for (const auto& cell : split_cells(line.text, delimiter))
            vote(votes, cell);
    // A point beside commas that could be decimal marks: "1.234" with "0,5" is written by a decimal comma.
    const bool comma = votes.comma > 0 ? votes.comma * 4 >= votes.point : votes.unsure_comma > 0 && votes.point == 0;
    StyleVerdict verdict;
    verdict.style = {comma ? ',' : '.', true};
    verdict.unsure = votes.comma == 0 && votes.point == 0 && votes.unsure_comma > 0;
    if (delimiter == Delimiter{','} && votes.comma == 0 && votes.unsure_comma == 0) verdict.style.thousands = false;
    return verdict;
}

struct Candidate {
    Delimiter delimiter;
    StyleVerdict verdict;
    std::vector<Row> rows;
    Block block;
};

// Rows of data in the table that end before its last column.
std::size_t short_rows(const Candidate& candidate) {
    const auto& rows = candidate.rows;
    return static_cast<std::size_t>(
        std::count_if(rows.begin() + static_cast<std::ptrdiff_t>(candidate.block.first), rows.end(),
                      [&](const Row& row) { return row.is_data() && row.cells.size() < candidate.block.columns; }));
}

// Names of several words in a table of aligned columns: two blanks and more stand between them.
std::vector<std::string> names_of_words(std::string_view text) {
    std::vector<std::string> names;
    for (std::size_t at = 0; at < text.size();) {
        const std::size_t end = std::min({text.find("  ", at), text.find('\t', at), text.size()});
        names.emplace_back(trimmed(text.substr(at, end - at)));
        at = std::min(text.find_first_not_of(" \t", end), text.size());
    }
    return names;
}

} // namespace

bool looks_like_data(std::string_view cell, NumberStyle style) {
    if (means_absent(cell) || read_number(cell, style)) return true;
    constexpr int any_parts = 1000;
    return read_clock(cell, any_parts) || read_date(cell) || read_moment(cell) ||
           read_angle(cell, style.decimal_mark, Letters::o_is_east) || read_measured(cell, style);
}

std::vector<std::string> header_cells(std::string_view line, Delimiter delimiter, Encoding encoding,
                                      std::size_t columns) {
    line = trimmed(line);
    if (is_comment(line)) line.remove_prefix(std::min(line.find_first_not_of("#%/ "), line.size()));
    const std::string text = to_utf8(line, encoding).text;
    auto cells = split_cells(text, delimiter);
    if (delimiter.blanks && cells.size() > columns)
        if (auto names = names_of_words(text); names.size() == columns) cells = std::move(names);
    for (auto& cell : cells)
        std::ranges::replace_if(cell, is_line_end, ' ');
    return cells;
}

std::optional<Layout> find_layout(std::string_view text, Encoding encoding, const LayoutChoice& choice,
                                  std::shared_ptr<const Vocabulary> own_words) {
    const auto head = judged_lines(text);
    std::optional<Candidate> best;
    for (const Delimiter delimiter : delimiters) {
        if (choice.delimiter && delimiter != *choice.delimiter) continue;
        Candidate candidate{delimiter, judge_style(head, delimiter), {}, {}};
        candidate.rows = split_rows(head, delimiter, candidate.verdict.style, encoding);
        const auto behind_header = std::ranges::find_if(
            candidate.rows, [&](const Row& row) { return head[row.line].number > choice.header_line.value_or(0); });
        candidate.block = find_block(candidate.rows, static_cast<std::size_t>(behind_header - candidate.rows.begin()));
        // Blanks part almost any text: only when nothing else does as well.
        const double handicap = delimiter.blanks ? 0.5 : 1.0;
        candidate.block.score *= handicap;
        if (candidate.block.score > 0.0 && (!best || candidate.block.score > best->block.score))
            best = std::move(candidate);
    }
    if (!best) return std::nullopt;

    Layout layout;
    layout.encoding = encoding;
    layout.own_words = std::move(own_words);
    layout.delimiter = best->delimiter;
    layout.style = best->verdict.style;
    layout.decimal_mark_unsure = best->verdict.unsure;
    layout.columns = best->block.columns;
    const std::size_t first_row = best->block.first;
    const HeadLine& first_data = head[best->rows[first_row].line];
    layout.data_offset = first_data.offset;
    layout.data_line = first_data.number;
    layout.short_rows = 10 * short_rows(*best) > best->rows.size() - first_row;
    if (choice.header_line)
        read_named_header(layout, head, best->rows, first_row, *choice.header_line);
    else
        read_header(layout, head, best->rows, first_row);
    return layout;
}

} // namespace lapwright::import
