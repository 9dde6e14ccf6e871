// SPDX-License-Identifier: GPL-3.0-or-later
// Two passes over pieces of a mebibyte: the first counts lines, so that every piece knows where its rows go; the second
// reads them straight into their place.  Nothing is held but the columns and one piece a thread.
#include "core/import/tables/table_reader.h"

#include "core/base/parallel.h"
#include "core/base/translation.h"
#include "core/import/tables/row_scan.h"
#include "core/import/text/limits.h"
#include "core/import/text/line_scan.h"

#include <algorithm>
#include <atomic>
#include <optional>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;

constexpr std::size_t piece_bytes = std::size_t{1} << 20U;
constexpr std::string_view stage = "reading rows";

struct Piece {
    std::size_t begin = 0; // of its first line
    std::size_t end = 0;   // behind its last line
    std::size_t line_ends = 0;
    bool joined = false; // is read with the one before it
    bool line_too_long = false;
};

// Behind the first line end at or after `from`, reading on as far as the longest line.
std::optional<std::size_t> find_line_start(const ByteSource& source, std::size_t from, std::string& buffer) {
    for (std::size_t reach = 4096;; reach *= 16) {
        const std::size_t end = std::min(source.size(), from + reach);
        const auto text = source.piece(from, end, buffer);
        if (!text) return std::nullopt;
        const std::size_t behind = behind_line_end(*text, 0);
        // A "\r" at the very end may belong to a "\r\n".
        if (behind > longest_line_bytes) return source.size() + 1;
        if (behind < text->size() || end == source.size()) return from + behind;
    }
}

// Twelve bytes of values a byte of the file and a third of a
// gigabyte: only rows that all but lack their cells need more.
std::size_t values_of_bytes(std::size_t bytes) {
    return bytes + bytes / 2 + (std::size_t{36} << 20U);
}

Error unreadable() {
    return {
        ErrorCode::file_not_readable, {}, said("the file cannot be read to its end"), said("check the disk or card")};
}

class TableReader {
  public:
    TableReader(const ByteSource& source, const Layout& layout, const std::vector<ColumnPlan>& plans, unsigned threads,
                const base::Progress& progress)
        : source_(source), layout_(layout), plans_(plans), threads_(base::thread_count(threads)), buffers_(threads_),
          progress_(progress) {}

    base::Result<Table> read() {
        if (const auto done = survey(); !done) return done.error();
        if (const auto done = make_room(); !done) return done.error();
        if (const auto done = for_each_piece(0.2, 0.9, &TableReader::read_piece); !done) return done.error();
        if (const auto done = join_cut_pieces(); !done) return done.error();
        return gather();
    }

  private:
    base::Result<void> for_each_piece(double from, double to, bool (TableReader::*work)(std::size_t, std::string&)) {
        base::TaskProgress done(progress_, stage, pieces_.size(), from, to);
        std::atomic<bool> readable = true;
        const bool whole = base::parallel_for(pieces_.size(), threads_, [&](std::size_t i, std::size_t worker) {
            readable = readable && (this->*work)(i, buffers_[worker]);
            return readable && done.done();
        });
        if (!readable) return unreadable();
        if (!whole) return base::cancelled();
        return {};
    }

    // Finds the pieces and counts their lines.
    base::Result<void> survey() {
        const std::size_t bytes = source_.size() - layout_.data_offset;
        pieces_.resize(std::max<std::size_t>(1, (bytes + piece_bytes - 1) / piece_bytes));
        if (auto done = for_each_piece(0.0, 0.2, &TableReader::survey_piece); !done) return done;
        if (std::ranges::any_of(pieces_, &Piece::line_too_long))
            return Error{ErrorCode::not_a_table,
                         {},
                         said("a line is longer than 1 MiB"),
                         said("export the session as delimited text")};
        return {};
    }

    bool survey_piece(std::size_t i, std::string& buffer) {
        Piece& piece = pieces_[i];
        const std::size_t from = layout_.data_offset + i * piece_bytes;
        const std::size_t to = std::min(source_.size(), from + piece_bytes);
        const auto begin = i == 0 ? std::optional(from) : find_line_start(source_, from - 1, buffer);
        const auto end = to == source_.size() ? std::optional(to) : find_line_start(source_, to - 1, buffer);
        if (!begin || !end) return false;
        piece.line_too_long = *begin > source_.size() || *end > source_.size();
        if (piece.line_too_long) return true;
        piece.begin = *begin;
        piece.end = std::max(*begin, *end);
        const auto text = source_.piece(piece.begin, piece.end, buffer);
        if (!text) return false;
        piece.line_ends = count_line_ends(*text);
        return true;
    }

    // A quoted cell may span lines, and so the edge of two pieces: the piece in which it opens is read again together
    // with what follows.  A piece whose quotes are all closed ends at the end of a row, so the next begins with one.
    base::Result<void> join_cut_pieces() {
        for (std::size_t i = 0; i + 1 < pieces_.size(); ++i) {
            for (std::size_t more = 1; tallies_[i].open_quote && last_of(i) + 1 < pieces_.size(); more *= 2) {
                if (!base::go_on(progress_, stage, 0.9)) return base::cancelled();
                join(i, more);
                if (!read_piece(i, buffers_.front())) return unreadable();
            }
            i = last_of(i);
        }
        return {};
    }

    // The last of the pieces that were joined to piece i.
    [[nodiscard]] std::size_t last_of(std::size_t i) const {
        std::size_t last = i;
        while (last + 1 < pieces_.size() && pieces_[last + 1].joined)
            ++last;
        return last;
    }

    void join(std::size_t i, std::size_t more) {
        const std::size_t end = std::min(pieces_.size(), last_of(i) + 1 + more);
        for (std::size_t k = last_of(i) + 1; k < end; ++k) {
            pieces_[k].joined = true;
            tallies_[k] = {};
            tallies_[k].absent.resize(plans_.size());
            tallies_[k].unreadable.resize(plans_.size());
        }
        pieces_[i].end = pieces_[end - 1].end;
    }

    base::Result<void> make_room() {
        std::size_t rows = 0;
        for (std::size_t i = 0; i < pieces_.size(); ++i) {
            first_rows_.push_back(rows);
            rows += max_rows_of(pieces_[i]);
        }
        const auto read_columns = static_cast<std::size_t>(
            std::ranges::count_if(plans_, [](const ColumnPlan& plan) { return plan.form != CellForm::text; }));
        const std::size_t values = rows * std::max<std::size_t>(1, read_columns);
        if (rows > largest_rows || values > max_values || values > values_of_bytes(source_.size()))
            return Error{ErrorCode::file_too_large,
                         {},
                         said("the table has more values than can be held"),
                         said("export one session alone")};
        table_.columns.resize(plans_.size());
        tallies_.resize(pieces_.size());
        rows_ = rows;
        base::parallel_for(plans_.size() + 1, threads_, [this](std::size_t i) {
            if (i == plans_.size())
                table_.lines.resize(rows_);
            else if (plans_[i].form != CellForm::text)
                table_.columns[i].values.resize(rows_);
        });
        return {};
    }

    // A row has a delimiter or a line end behind each cell: lines that are shorter are none, unless rows may end early.
    [[nodiscard]] std::size_t max_rows_of(const Piece& piece) const {
        const std::size_t lines = piece.line_ends + 1;
        return layout_.short_rows ? lines : std::min(lines, (piece.end - piece.begin) / layout_.columns + 1);
    }

    bool read_piece(std::size_t i, std::string& buffer) {
        const auto text = source_.piece(pieces_[i].begin, pieces_[i].end, buffer);
        if (!text) return false;
        PieceTarget target;
        for (TableColumn& column : table_.columns)
            target.columns.push_back(column.values.empty() ? nullptr : column.values.data() + first_rows_[i]);
        target.lines = table_.lines.data() + first_rows_[i];
        const std::size_t behind = last_of(i) + 1;
        target.room = (behind < pieces_.size() ? first_rows_[behind] : rows_) - first_rows_[i];
        std::size_t line = layout_.data_line;
        for (std::size_t before = 0; before < i; ++before)
            line += pieces_[before].line_ends;
        tallies_[i] = scan_rows(*text, layout_, plans_, target, line);
        return true;
    }

    // Closes the holes that lines without a row left between the pieces, and adds up the tallies.
    base::Result<Table> gather() {
        base::parallel_for(plans_.size() + 1, threads_, [this](std::size_t i) {
            if (i == plans_.size())
                close_holes(table_.lines);
            else
                close_holes(table_.columns[i].values);
        });
        for (const PieceTally& tally : tallies_) {
            table_.wrong_width.add(tally.wrong_width);
            table_.text_rows.add(tally.text_rows);
            table_.repeated_headers.add(tally.repeated_headers);
            table_.comments.add(tally.comments);
            for (std::size_t i = 0; i < plans_.size(); ++i) {
                table_.columns[i].absent += tally.absent[i];
                table_.columns[i].unreadable.add(tally.unreadable[i]);
            }
        }
        return std::move(table_);
    }

    template <typename T>
    void close_holes(std::vector<T>& values) const {
        if (values.empty()) return;
        std::size_t rows = tallies_.front().rows;
        for (std::size_t i = 1; i < tallies_.size(); ++i) {
            const auto from = values.begin() + static_cast<std::ptrdiff_t>(first_rows_[i]);
            if (rows != first_rows_[i])
                std::copy(from, from + static_cast<std::ptrdiff_t>(tallies_[i].rows),
                          values.begin() + static_cast<std::ptrdiff_t>(rows));
            rows += tallies_[i].rows;
        }
        values.resize(rows);
    }

    const ByteSource& source_;
    const Layout& layout_;
    const std::vector<ColumnPlan>& plans_;
    unsigned threads_;
    std::vector<std::string> buffers_; // a worker, used again for piece after piece
    const base::Progress& progress_;
    std::vector<Piece> pieces_;
    std::vector<std::size_t> first_rows_; // a piece
    std::size_t rows_ = 0;                // room for so many
    std::vector<PieceTally> tallies_;
    Table table_;
};

} // namespace

base::Result<Table> read_table(const ByteSource& source, const Layout& layout, const std::vector<ColumnPlan>& plans,
                               unsigned threads, const base::Progress& progress) {
    return TableReader(source, layout, plans, threads, progress).read();
}

} // namespace lapwright::import
