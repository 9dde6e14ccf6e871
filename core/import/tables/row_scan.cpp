// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/tables/row_scan.h"

#include "core/import/text/cells.h"
#include "core/import/text/encoding.h"
#include "core/import/text/fast_number.h"
#include "core/import/text/limits.h"
#include "core/import/text/line_scan.h"

#include <cmath>
#include <limits>

namespace lapwright::import {
namespace {

constexpr double absent_value = std::numeric_limits<double>::quiet_NaN();

class RowScanner {
  public:
    RowScanner(std::string_view piece, const Layout& layout, const std::vector<ColumnPlan>& plans,
               const PieceTarget& target, std::size_t first_line)
        : piece_(piece), end_(piece.data() + piece.size()),
          fast_end_(piece.size() > fast_number_reach ? end_ - fast_number_reach : piece.data()), layout_(layout),
          plans_(plans), target_(target), line_(static_cast<std::uint32_t>(first_line)), row_(plans.size()) {
        tally_.absent.resize(plans.size());
        tally_.unreadable.resize(plans.size());
    }

    PieceTally scan() {
        const char* at = piece_.data();
        while (at < end_ && tally_.rows < target_.room) {
            const char* const line_start = at;
            const std::uint32_t line = line_;
            at = scan_line(at);
            if (cells_ > 0) settle_row(line, {line_start, static_cast<std::size_t>(at - line_start)});
            if (at < end_) at += at[0] == '\r' && at + 1 < end_ && at[1] == '\n' ? 2 : 1;
            ++line_;
        }
        return std::move(tally_);
    }

  private:
    // Reads the cells of one line into row_; answers where the line ends.  cells_ is 0 for a line without content.
    const char* scan_line(const char* at) {
        cells_ = 0;
        filled_ = 0;
        blanks_ = 0;
        too_many_ = false;
        unreadable_.clear();
        if (layout_.delimiter.blanks) at = skip_run(at);
        if (at >= end_ || is_line_end(*at)) return at;
        if (*at == '#' || *at == '%' || (*at == '/' && at + 1 < end_ && at[1] == '/')) {
            tally_.comments.add(line_);
            return line_end(at);
        }
        for (;;) {
            at = common_cells(at);
            if (at < end_ && *at == '"') at = quoted_numbers(at);
            if (layout_.delimiter.blanks) {
                at = skip_run(at);
                if (at >= end_ || is_line_end(*at)) return at;
            }
            while (at < end_ && *at == ' ')
                ++at;
            at = last_number(at) ? number_end_ : other_cell(at);
            ++cells_;
            if (at >= end_ || is_line_end(*at)) return at;
            ++at;
        }
    }

    // As many cells as are common numbers with a delimiter behind them: the loop in which the time is spent.
    const char* common_cells(const char* at) {
        const std::size_t first = cells_;
        const std::size_t columns = plans_.size();
        const ColumnPlan* const plans = plans_.data();
        double* const row = row_.data();
        const char mark = layout_.delimiter.mark;
        const char decimal_mark = layout_.style.decimal_mark;
        const char* const fast_end = fast_end_;
        std::size_t i = first;
        for (; i < columns && plans[i].form == CellForm::number && at < fast_end; ++i) {
            const ScannedNumber number = scan_number(at, decimal_mark);
            if (!number.end || *number.end != mark) break;
            row[i] = number.value * plans[i].factor + plans[i].offset;
            at = number.end + 1;
        }
        // Spaces beside numbers are left to the careful way, which also knows runs of them.
        cells_ = i;
        filled_ += i - first;
        return at;
    }

    // As many cells as are common numbers in quotes with a delimiter behind them.  A quote and a number need less than
    // the reach of the fast scan.
    const char* quoted_numbers(const char* at) {
        const char mark = layout_.delimiter.mark;
        while (cells_ < plans_.size() && plans_[cells_].form == CellForm::number && at < fast_end_ && *at == '"') {
            const ScannedNumber number = scan_number(at + 1, layout_.style.decimal_mark);
            if (!number.end || number.end[0] != '"' || number.end[1] != mark) break;
            row_[cells_] = number.value * plans_[cells_].factor + plans_[cells_].offset;
            ++cells_;
            ++filled_;
            at = number.end + 2;
        }
        return at;
    }

    // A common number with the line's end behind it.
    bool last_number(const char* at) {
        if (cells_ >= plans_.size() || plans_[cells_].form != CellForm::number || at >= fast_end_) return false;
        const ScannedNumber number = scan_number(at, layout_.style.decimal_mark);
        if (!number.end || !(*number.end == layout_.delimiter.mark || is_line_end(*number.end))) return false;
        row_[cells_] = number.value * plans_[cells_].factor + plans_[cells_].offset;
        number_end_ = number.end;
        ++filled_;
        return true;
    }

    const char* other_cell(const char* at) {
        if (at < end_ && *at == layout_.delimiter.mark && cells_ < plans_.size()) {
            row_[cells_] = absent_value;
            ++blanks_;
            return at;
        }
        Cell cell = next_cell(at, end_, layout_.delimiter, scratch_);
        if (layout_.encoding == Encoding::windows_1252 && has_high_bytes(cell.text)) {
            converted_ = to_utf8(cell.text, layout_.encoding).text;
            cell.text = trimmed(converted_);
        }
        line_ += static_cast<std::uint32_t>(cell.line_ends);
        const bool near_end = static_cast<std::size_t>(end_ - cell.end) <= longest_cell_bytes;
        if (near_end && cell.text.starts_with('"')) tally_.open_quote = true;
        if (cells_ >= plans_.size()) {
            too_many_ = too_many_ || !cell.text.empty();
            return cell.end;
        }
        row_[cells_] = absent_value;
        const ColumnPlan& plan = plans_[cells_];
        if (plan.form == CellForm::text) return cell.end;
        if (const auto value = read_cell(cell.text, plan.form, layout_.style)) {
            row_[cells_] = *value * plan.factor + plan.offset;
            ++filled_;
        } else {
            ++blanks_;
            if (!means_absent(cell.text)) unreadable_.push_back(cells_);
        }
        return cell.end;
    }

    void settle_row(std::uint32_t line, std::string_view text) {
        if (filled_ == 0) {
            if (blanks_ == cells_ && unreadable_.empty()) return;
            const bool header = !layout_.header_text.empty() && trimmed(text) == layout_.header_text;
            return (header ? tally_.repeated_headers : tally_.text_rows).add(line);
        }
        const bool too_few = cells_ < plans_.size() && !layout_.short_rows;
        if (too_few || too_many_) return tally_.wrong_width.add(line);
        for (std::size_t i = cells_; i < plans_.size(); ++i) {
            row_[i] = absent_value;
            ++blanks_;
        }
        for (const std::size_t column : unreadable_)
            tally_.unreadable[column].add(line);
        for (std::size_t i = 0; i < plans_.size(); ++i)
            if (target_.columns[i]) target_.columns[i][tally_.rows] = row_[i];
        if (blanks_ > 0) {
            for (std::size_t i = 0; i < plans_.size(); ++i)
                if (std::isnan(row_[i])) ++tally_.absent[i];
        }
        target_.lines[tally_.rows++] = line;
    }

    [[nodiscard]] const char* skip_run(const char* at) const {
        while (at < end_ && (*at == ' ' || *at == '\t'))
            ++at;
        return at;
    }

    [[nodiscard]] const char* line_end(const char* at) const {
        while (at < end_ && !is_line_end(*at))
            ++at;
        return at;
    }

    std::string_view piece_;
    const char* end_;
    const char* fast_end_;
    const Layout& layout_;
    const std::vector<ColumnPlan>& plans_;
    const PieceTarget& target_;
    std::uint32_t line_;
    std::vector<double> row_;
    std::vector<std::size_t> unreadable_; // columns of the present row
    const char* number_end_ = nullptr;
    std::size_t cells_ = 0; // of the present row
    std::size_t filled_ = 0;
    std::size_t blanks_ = 0;
    bool too_many_ = false;
    std::string scratch_;
    std::string converted_;
    PieceTally tally_;
};

} // namespace

PieceTally scan_rows(std::string_view piece, const Layout& layout, const std::vector<ColumnPlan>& plans,
                     const PieceTarget& target, std::size_t first_line) {
    return RowScanner(piece, layout, plans, target, first_line).scan();
}

} // namespace lapwright::import
