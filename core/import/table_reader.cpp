// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/table_reader.h"

#include "core/import/angle_text.h"
#include "core/import/limits.h"
#include "core/import/moment.h"

#include <algorithm>
#include <limits>

namespace lapwright::import {
namespace {

constexpr double absent = std::numeric_limits<double>::quiet_NaN();

std::optional<double> read_cell(std::string_view cell, CellForm form, NumberStyle style) {
    switch (form) {
    case CellForm::number:
        return read_number(cell, style);
    case CellForm::clock:
        return read_clock(cell);
    case CellForm::moment:
        if (const auto moment = read_moment(cell)) return moment->unix_s;
        return std::nullopt;
    case CellForm::date:
        if (const auto date = read_date(cell)) return static_cast<double>(date->days) * 86400.0;
        return std::nullopt;
    case CellForm::angle:
        return read_angle(cell, style.decimal_mark);
    case CellForm::hemisphere:
        return read_hemisphere(cell);
    case CellForm::text:
        break;
    }
    return std::nullopt;
}

class Reader {
  public:
    Reader(const Layout& layout, const std::vector<ColumnPlan>& plans) : layout_(layout), plans_(plans) {
        table_.columns.resize(plans.size());
    }

    void add(std::string_view line, std::uint32_t number) {
        const std::string_view plain = trimmed(line);
        if (plain.empty() || plain.starts_with('#')) return;
        const auto cells = split_cells(line, layout_.delimiter);
        const bool trailing_blank = cells.size() == layout_.columns + 1 && cells.back().empty();
        if (cells.size() != layout_.columns && !trailing_blank) return table_.wrong_width.add(number);
        std::vector<double> row(plans_.size(), absent);
        std::vector<std::size_t> unreadable;
        bool any = false;
        for (std::size_t i = 0; i < plans_.size(); ++i) {
            if (plans_[i].form == CellForm::text) continue;
            if (const auto value = read_cell(cells[i], plans_[i].form, layout_.style)) {
                row[i] = *value * plans_[i].factor + plans_[i].offset;
                any = true;
            } else if (!means_absent(cells[i])) {
                unreadable.push_back(i);
            }
        }
        if (!any) return (plain == layout_.header_text ? table_.repeated_headers : table_.text_rows).add(number);
        for (const std::size_t i : unreadable)
            table_.columns[i].unreadable.add(number);
        for (std::size_t i = 0; i < plans_.size(); ++i) {
            if (plans_[i].form == CellForm::text) continue;
            table_.columns[i].values.push_back(row[i]);
            if (row[i] != row[i]) ++table_.columns[i].absent;
        }
        table_.lines.push_back(number);
    }

    Table take() { return std::move(table_); }

  private:
    const Layout& layout_;
    const std::vector<ColumnPlan>& plans_;
    Table table_;
};

} // namespace

void LineTally::add(std::uint32_t line) {
    if (first_lines.size() < most_told_lines) first_lines.push_back(line);
    ++count;
}

void LineTally::add(const LineTally& later) {
    for (const std::uint32_t line : later.first_lines)
        if (first_lines.size() < most_told_lines) first_lines.push_back(line);
    count += later.count;
}

base::Result<Table> read_table(std::string_view text, const Layout& layout, const std::vector<ColumnPlan>& plans,
                               unsigned, const base::Progress& progress) {
    Reader reader(layout, plans);
    std::size_t at = layout.data_offset;
    auto number = static_cast<std::uint32_t>(layout.data_line);
    while (at < text.size()) {
        std::size_t end = text.find_first_of("\r\n", at);
        if (end == std::string_view::npos) end = text.size();
        reader.add(text.substr(at, end - at), number);
        if (number % 4096 == 0 &&
            !base::go_on(progress, "reading", static_cast<double>(at) / static_cast<double>(text.size())))
            return base::cancelled();
        at = end + 1;
        if (end + 1 < text.size() && text[end] == '\r' && text[end + 1] == '\n') ++at;
        ++number;
    }
    return reader.take();
}

} // namespace lapwright::import
