// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/tables/header.h"

#include "core/base/number_text.h"
#include "core/import/tables/facts.h"
#include "core/import/text/limits.h"
#include "core/import/text/moment.h"
#include "core/import/vocabulary/column_names.h"
#include "core/import/vocabulary/units_in_text.h"

#include <algorithm>
#include <array>
#include <set>

namespace lapwright::import {
namespace {

// Names, units, and perhaps descriptions and a repeated line of names.
constexpr std::size_t max_header_rows = 4;

bool is_bracketed(std::string_view cell) {
    return (cell.front() == '(' && cell.back() == ')') || (cell.front() == '[' && cell.back() == ']');
}

bool is_unit_row(const Row& row, const Vocabulary& known) {
    std::size_t filled = 0;
    std::size_t units = 0;
    for (const auto& cell : row.cells) {
        if (cell.empty() || cell == "-") continue;
        ++filled;
        if (is_bracketed(cell) || parse_unit(cell, known)) ++units;
    }
    return filled > 0 && 2 * units > filled;
}

std::size_t known_names(const std::vector<std::string>& cells, const Vocabulary& known) {
    return static_cast<std::size_t>(std::ranges::count_if(cells, [&](const auto& cell) {
        return meaning_of_name(part_name_and_unit(cell, known).name, base::Quantity::none, known).has_value();
    }));
}

std::vector<std::string> fitted(std::vector<std::string> cells, std::size_t columns) {
    cells.resize(columns);
    return cells;
}

// Rows that end where their last values stand are narrower than the header, each in its own way.
bool rows_end_early(const std::vector<Row>& rows, std::size_t data_row, std::size_t header_cells) {
    std::set<std::size_t> widths;
    for (std::size_t i = data_row; i < rows.size(); ++i)
        if (rows[i].is_data()) widths.insert(rows[i].cells.size());
    return widths.size() >= 2 && *widths.rbegin() <= header_cells;
}

struct HeaderRows {
    std::optional<std::size_t> names;
    std::optional<std::size_t> units;
    std::size_t first = 0; // the first row that is not preamble
};

HeaderRows find_header_rows(const Layout& layout, const std::vector<Row>& rows, std::size_t data_row) {
    HeaderRows found;
    found.first = data_row;
    std::size_t best = 0;
    for (std::size_t back = 1; back <= std::min(max_header_rows, data_row); ++back) {
        const std::size_t index = data_row - back;
        const Row& row = rows[index];
        // A row for units that nobody filled in.
        if (row.filled == 0 && row.cells.size() + 1 >= layout.columns && !found.units && !found.names) {
            found.units = index;
            continue;
        }
        // An empty line parts the preamble from the header.
        const bool apart = index + 1 < rows.size() && rows[index + 1].line > row.line + 1;
        if (found.names && apart) break;
        const bool wide_enough = row.cells.size() >= 2 && (row.cells.size() + 1 >= layout.columns ||
                                                           known_names(row.cells, layout.vocabulary()) >= 2);
        const bool fits = wide_enough && 2 * row.filled >= std::min(row.cells.size(), layout.columns);
        if (!fits && !is_unit_row(row, layout.vocabulary())) break;
        const std::size_t known = known_names(row.cells, layout.vocabulary());
        if (is_unit_row(row, layout.vocabulary()) && 2 * known < row.filled + 1) {
            found.units = index;
            found.first = index;
        } else if (known + 1 > best) {
            best = known + 1;
            found.names = index;
            found.first = index;
        }
    }
    return found;
}

// A header behind a comment mark: "# time, speed, lap".
void read_commented_header(Layout& layout, const std::vector<HeadLine>& head, std::size_t data_line) {
    for (std::size_t back = 1; back <= std::min<std::size_t>(2, data_line); ++back) {
        std::string_view line = trimmed(head[data_line - back].text);
        if (!is_comment(line)) continue;
        line.remove_prefix(std::min(line.find_first_not_of("#%/ "), line.size()));
        const auto cells = split_cells(to_utf8(line, layout.encoding).text, layout.delimiter);
        if (cells.size() != layout.columns || known_names(cells, layout.vocabulary()) == 0) continue;
        layout.has_names = true;
        layout.header_line = head[data_line - back].number;
        layout.names = cells;
        return;
    }
}

void read_facts(Layout& layout, const std::vector<HeadLine>& head, std::size_t end_line) {
    for (std::size_t i = 0; i < std::min(end_line, max_preamble_lines); ++i) {
        const std::string line = to_utf8(trimmed(head[i].text), layout.encoding).text;
        if (!layout.header_text.empty() && trimmed(head[i].text) == layout.header_text) {
            layout.headers_before.push_back(static_cast<std::uint32_t>(head[i].number));
            continue;
        }
        // "sep=;" tells a spreadsheet the delimiter and says nothing of the session.
        if (line.empty() || line.starts_with("sep=")) continue;
        auto fact = read_fact(line, layout.delimiter);
        if (fact.first.empty() && fact.second.empty()) continue;
        layout.facts.push_back(std::move(fact));
        if (layout.facts.size() >= max_facts) return;
    }
}

void name_all_by_number(Layout& layout) {
    for (std::size_t i = 0; i < layout.columns; ++i)
        layout.names.push_back(name_by_number(i));
}

// Rows that did not look like data are still told by the reader: they may be damaged, or part of a quoted cell.
void begin_behind_header(Layout& layout, const std::vector<HeadLine>& head, const std::vector<Row>& rows,
                         std::size_t last_header) {
    if (last_header + 1 >= rows.size()) return;
    const HeadLine& line = head[rows[last_header + 1].line];
    layout.data_offset = line.offset;
    layout.data_line = line.number;
}

// A header that is one name short: one name for date and clock, or none for the names of the rows, as programs for
// statistics write it.
void add_missing_name(std::vector<std::string>& names, const Row& data, const std::vector<Row>& rows,
                      std::size_t data_row) {
    for (std::size_t i = 0; i + 1 < data.cells.size(); ++i) {
        if (!read_date(data.cells[i]) || !read_clock(data.cells[i + 1])) continue;
        names.insert(names.begin() + static_cast<std::ptrdiff_t>(std::min(i, names.size())), "date");
        return;
    }
    double last = -1.0;
    for (std::size_t i = data_row; i < rows.size(); ++i) {
        if (rows[i].cells.size() != data.cells.size()) continue;
        const auto number = base::parse_integer(rows[i].cells.front());
        if (!number || (last >= 0.0 && static_cast<double>(*number) != last + 1.0)) return;
        last = static_cast<double>(*number);
    }
    names.insert(names.begin(), "");
}

void take_names(Layout& layout, const HeadLine& line, std::vector<std::string> cells, const std::vector<Row>& rows,
                std::size_t data_row) {
    if (layout.delimiter.blanks) cells = header_cells(line.text, layout.delimiter, layout.encoding, layout.columns);
    const std::size_t width = cells.size();
    layout.has_names = true;
    layout.header_line = line.number;
    layout.header_text = std::string(trimmed(line.text));
    layout.header_cells = width;
    if (width > layout.columns && rows_end_early(rows, data_row, width)) {
        layout.columns = width;
        layout.short_rows = true;
    }
    if (width + 1 == layout.columns && !rows[data_row].cells.back().empty())
        add_missing_name(cells, rows[data_row], rows, data_row);
    layout.names = fitted(std::move(cells), layout.columns);
}

} // namespace

namespace {

bool has_point(std::string_view cell, NumberStyle style) {
    return cell.find(style.decimal_mark) != std::string_view::npos && read_number(cell, style);
}

// A line that numbers the columns or gives the rate of each: whole numbers, one behind the other, all alike or usual
// rates, above readings with decimals.
bool is_no_reading(const Layout& layout, const std::vector<Row>& rows, std::size_t index) {
    constexpr std::array rates{1, 2, 4, 5, 8, 10, 20, 25, 40, 50, 100, 125, 200, 250, 400, 500, 1000, 2000};
    if (index + 2 >= rows.size()) return false;
    const auto& cells = rows[index].cells;
    std::vector<std::int64_t> numbers;
    std::size_t finer_below = 0;
    for (std::size_t i = 0; i < cells.size(); ++i) {
        std::string_view cell = cells[i];
        if (cell.empty()) continue;
        if (cell.ends_with("Hz") || cell.ends_with("hz")) cell = trimmed(cell.substr(0, cell.size() - 2));
        const auto number = base::parse_integer(cell);
        if (!number) return false;
        numbers.push_back(*number);
        const auto below = [&](std::size_t rows_on) {
            const auto& row = rows[index + rows_on].cells;
            return i < row.size() && has_point(row[i], layout.style);
        };
        if (below(1) && below(2)) ++finer_below;
    }
    if (numbers.size() < 3 || finer_below < 2) return false;
    const bool counted =
        std::ranges::adjacent_find(numbers, [](auto a, auto b) { return b != a + 1; }) == numbers.end();
    return counted || std::ranges::all_of(numbers, [&](auto n) { return std::ranges::find(rates, n) != rates.end(); });
}

// Where the readings begin behind the names: behind units, and behind what is neither.
std::size_t skip_no_readings(Layout& layout, const std::vector<HeadLine>& head, const std::vector<Row>& rows,
                             std::size_t last_header) {
    for (std::size_t more = 0; more < max_header_rows && last_header + 1 < rows.size(); ++more) {
        const Row& row = rows[last_header + 1];
        const bool no_units = std::ranges::all_of(layout.units, &std::string::empty);
        if (is_no_reading(layout, rows, last_header + 1))
            layout.no_readings.push_back(static_cast<std::uint32_t>(head[row.line].number));
        else if (!layout.no_readings.empty() && no_units && !row.is_data() && is_unit_row(row, layout.vocabulary()))
            layout.units = fitted(row.cells, layout.columns);
        else
            break;
        ++last_header;
    }
    return last_header;
}

} // namespace

std::string name_by_number(std::size_t column) {
    return "column " + base::integer_text(static_cast<std::int64_t>(column + 1));
}

void read_header(Layout& layout, const std::vector<HeadLine>& head, const std::vector<Row>& rows,
                 std::size_t data_row) {
    const HeaderRows found = find_header_rows(layout, rows, data_row);
    if (found.names) {
        const Row& row = rows[*found.names];
        take_names(layout, head[row.line], row.cells, rows, data_row);
    }
    layout.units.resize(layout.columns);
    if (found.units && found.names) layout.units = fitted(rows[*found.units].cells, layout.columns);
    if (!layout.has_names) read_commented_header(layout, head, rows[data_row].line);
    if (!layout.has_names) name_all_by_number(layout);
    if (found.names)
        begin_behind_header(layout, head, rows,
                            skip_no_readings(layout, head, rows, std::max(*found.names, found.units.value_or(0))));
    read_facts(layout, head, found.first < rows.size() ? rows[found.first].line : 0);
}

void read_named_header(Layout& layout, const std::vector<HeadLine>& head, const std::vector<Row>& rows,
                       std::size_t data_row, std::size_t header_line) {
    std::size_t preamble_lines = rows[data_row].line;
    const auto named = std::ranges::find(head, header_line, &HeadLine::number);
    if (named != head.end() && header_line < head[rows[data_row].line].number) {
        take_names(layout, *named, header_cells(named->text, layout.delimiter, layout.encoding, layout.columns), rows,
                   data_row);
        preamble_lines = static_cast<std::size_t>(named - head.begin());
    }
    layout.units.resize(layout.columns);
    if (layout.has_names) {
        const auto behind =
            std::ranges::find_if(rows, [&](const Row& row) { return head[row.line].number > header_line; });
        const bool units_follow =
            behind != rows.end() && !behind->is_data() && is_unit_row(*behind, layout.vocabulary());
        if (units_follow) layout.units = fitted(behind->cells, layout.columns);
        const auto first = units_follow ? behind + 1 : behind;
        if (first != rows.end()) {
            layout.data_offset = head[first->line].offset;
            layout.data_line = head[first->line].number;
        }
    } else {
        name_all_by_number(layout);
    }
    read_facts(layout, head, preamble_lines);
}

} // namespace lapwright::import
