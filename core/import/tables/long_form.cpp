// SPDX-License-Identifier: GPL-3.0-or-later
// The limits are common practice, no source.
#include "core/import/tables/long_form.h"

#include "core/base/translation.h"
#include "core/import/tables/each_line.h"
#include "core/import/tables/head_lines.h"
#include "core/import/tables/layout.h"
#include "core/import/text/limits.h"
#include "core/import/text/moment.h"

#include <algorithm>
#include <cctype>
#include <map>
#include <vector>

namespace lapwright::import {
namespace {

using base::said;
using Cells = std::vector<std::string>;

constexpr std::size_t enough_rows = 12;
constexpr std::size_t header_lines = 2;
constexpr std::size_t most_names = 200; // a table of more would be larger than the file many times over
constexpr std::size_t few = 20;         // one row in so many may be damaged

struct LongForm {
    Delimiter delimiter;
    std::size_t cells = 0;
    std::size_t time = 0;
    std::size_t name = 0;
    std::size_t value = 0;
    std::optional<std::size_t> unit{};
    std::string time_name = "time";
};

constexpr NumberStyle either_mark(char mark) {
    return {mark, true};
}

bool is_number(const std::string& cell) {
    return read_number(cell, either_mark('.')) || read_number(cell, either_mark(','));
}

// "000;45" of a decimal comma is none.
bool is_name(const std::string& cell) {
    const auto is_letter = [](unsigned char c) { return std::isalpha(c) != 0 || c >= 0x80U; };
    return std::ranges::any_of(cell, is_letter) && !looks_like_data(cell, either_mark('.')) &&
           !looks_like_data(cell, either_mark(','));
}

std::optional<double> time_of(const std::string& cell) {
    const bool point = cell.find('.') != std::string::npos;
    if (const auto number = read_number(cell, either_mark(point ? '.' : ','))) return number;
    if (const auto moment = read_moment(cell)) return moment->unix_s;
    return read_clock(cell);
}

// What may be a header, and the rows behind it.
struct Rows {
    std::vector<Cells> header;
    std::vector<Cells> data;
};

Rows rows_of(const std::vector<HeadLine>& lines, Delimiter delimiter) {
    Rows rows;
    for (const HeadLine& line : lines) {
        if (trimmed(line.text).empty() || is_comment(line.text)) continue;
        Cells cells = split_cells(line.text, delimiter);
        const bool numbers = std::ranges::any_of(cells, is_number);
        (rows.data.empty() && !numbers ? rows.header : rows.data).push_back(std::move(cells));
    }
    return rows;
}

template <class Predicate>
bool all(const std::vector<Cells>& rows, std::size_t column, Predicate holds) {
    return std::ranges::all_of(rows, [&](const Cells& cells) { return holds(cells[column]); });
}

bool never_goes_back(const std::vector<Cells>& rows, std::size_t column) {
    std::optional<double> before;
    for (const Cells& cells : rows) {
        const auto now = time_of(cells[column]);
        if (!now || (before && *now < *before)) return false;
        before = now;
    }
    return rows.front()[column] != rows.back()[column];
}

// Two names and more, each of which comes often enough to be a channel, in turn: a state lasts.
bool take_turns(const std::vector<Cells>& rows, std::size_t column) {
    std::map<std::string, std::size_t> counts;
    std::size_t changes = 0;
    for (std::size_t i = 0; i < rows.size(); ++i) {
        ++counts[rows[i][column]];
        if (i > 0 && rows[i][column] != rows[i - 1][column]) ++changes;
    }
    return counts.size() >= 2 && 3 * counts.size() <= rows.size() && 2 * changes >= rows.size();
}

// The same for each name: its unit.
bool belongs_to(const std::vector<Cells>& rows, std::size_t column, std::size_t name) {
    std::map<std::string, std::string> of;
    return std::ranges::all_of(rows, [&](const Cells& cells) {
        return of.try_emplace(cells[name], cells[column]).first->second == cells[column];
    });
}

// Of name and unit: several names have one unit, and where none have, names are the longer ones.
bool names_better(const std::vector<Cells>& rows, std::size_t column, std::size_t other) {
    const bool either_way = belongs_to(rows, column, other);
    if (!either_way || !belongs_to(rows, other, column)) return !either_way;
    const auto length = [&](std::size_t i) {
        std::size_t sum = 0;
        for (const Cells& cells : rows)
            sum += cells[i].size();
        return sum;
    };
    return length(column) > length(other);
}

bool has_so_many(std::size_t cells) {
    return cells == 3 || cells == 4;
}

std::optional<LongForm> form_of(const std::vector<HeadLine>& lines, Delimiter delimiter) {
    if (lines.empty() || !has_so_many(split_cells(lines[lines.size() / 2].text, delimiter).size())) return std::nullopt;
    auto [header, rows] = rows_of(lines, delimiter);
    if (rows.size() < enough_rows || header.size() > header_lines) return std::nullopt;
    LongForm form{.delimiter = delimiter, .cells = rows.front().size()};
    const auto as_wide = [&](const Cells& cells) { return cells.size() == form.cells; };
    const auto damaged = std::erase_if(rows, [&](const Cells& cells) { return !as_wide(cells); });
    if (!has_so_many(form.cells) || few * damaged > rows.size()) return std::nullopt;
    std::vector<std::size_t> names;
    std::vector<std::size_t> numbers;
    for (std::size_t i = 0; i < form.cells; ++i) {
        if (all(rows, i, is_name) && take_turns(rows, i)) names.push_back(i);
        if (all(rows, i, [](const std::string& c) { return time_of(c).has_value(); })) numbers.push_back(i);
    }
    if (names.empty() || numbers.size() != 2) return std::nullopt;
    form.time = numbers[never_goes_back(rows, numbers[0]) ? 0 : 1];
    form.value = numbers[0] + numbers[1] - form.time;
    if (!never_goes_back(rows, form.time) || !all(rows, form.value, is_number)) return std::nullopt;
    form.name = names.front();
    if (form.cells == 4) {
        form.unit = 6 - form.time - form.value - form.name;
        if (names.size() == 2 && names_better(rows, *form.unit, form.name)) std::swap(form.name, *form.unit);
        if (!belongs_to(rows, *form.unit, form.name)) return std::nullopt;
    }
    if (!header.empty() && as_wide(header.back())) form.time_name = header.back()[form.time];
    return form;
}

std::optional<LongForm> form_of(std::string_view head, Encoding encoding) {
    if (encoding == Encoding::windows_1252) return std::nullopt;
    const auto lines = head_lines(head, telling_lines);
    for (const Delimiter delimiter : text_delimiters)
        if (auto form = form_of(lines, delimiter)) return form;
    return std::nullopt;
}

class SideBySide {
  public:
    explicit SideBySide(LongForm form) : form_(std::move(form)) {}

    [[nodiscard]] bool is_reading(const Cells& cells) const {
        return cells.size() == form_.cells && time_of(cells[form_.time]) && !cells[form_.name].empty();
    }

    void name(const Cells& cells) {
        const std::string& name = cells[form_.name];
        if (!column_of_.try_emplace(name, names_.size()).second) return;
        names_.push_back(form_.unit && !cells[*form_.unit].empty() ? name + " [" + cells[*form_.unit] + "]" : name);
    }

    [[nodiscard]] std::size_t names() const { return names_.size(); }

    void begin() {
        text_ = without_marks(form_.time_name);
        for (const std::string& name : names_)
            text_ += '\t' + without_marks(name);
        text_ += '\n';
    }

    void add(const Cells& cells) {
        const std::size_t column = column_of_.at(cells[form_.name]);
        if (cells[form_.time] != time_ || readings_.contains(column)) end_row();
        time_ = cells[form_.time];
        readings_[column] = cells[form_.value];
    }

    [[nodiscard]] std::string text() {
        end_row();
        return std::move(text_);
    }

  private:
    static std::string without_marks(std::string cell) {
        std::ranges::replace_if(cell, [](char c) { return c == '\t' || is_line_end(c) || c == '"'; }, ' ');
        return cell;
    }

    void end_row() {
        if (readings_.empty()) return;
        text_ += without_marks(time_);
        for (std::size_t column = 0; column < names_.size(); ++column) {
            text_ += '\t';
            if (const auto reading = readings_.find(column); reading != readings_.end())
                text_ += without_marks(reading->second);
        }
        text_ += '\n';
        readings_.clear();
    }

    LongForm form_;
    std::map<std::string, std::size_t> column_of_;
    std::vector<std::string> names_;
    std::string time_;
    std::map<std::size_t, std::string> readings_; // of the row that is not yet ended, by column
    std::string text_;
};

} // namespace

bool is_long_form(std::string_view head, Encoding encoding) {
    return form_of(head, encoding).has_value();
}

std::optional<std::string> side_by_side(std::string_view text, Encoding encoding, const base::Progress& progress) {
    auto form = form_of(text, encoding);
    if (!form) return std::nullopt;
    const Delimiter delimiter = form->delimiter;
    SideBySide table(std::move(*form));
    const auto readings = [&](const auto& use) {
        return each_line(text, said("putting readings side by side"), progress,
                         [&](std::string_view line, std::string_view) {
                             if (line.size() > longest_line_bytes) return;
                             const Cells cells = split_cells(line, delimiter);
                             if (table.is_reading(cells)) use(cells);
                         });
    };
    if (!readings([&](const Cells& cells) { table.name(cells); }) || table.names() >= most_names) return std::nullopt;
    table.begin();
    if (!readings([&](const Cells& cells) { table.add(cells); })) return std::nullopt;
    return table.text();
}

} // namespace lapwright::import
