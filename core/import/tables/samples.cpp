// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/tables/samples.h"

#include "core/import/text/line_scan.h"

#include <algorithm>

namespace lapwright::import {
namespace {

constexpr std::size_t rows_at_front = 60;
constexpr std::size_t rows_elsewhere = 60;     // 0.6 s at 100 Hz: a chord between positions
constexpr std::size_t rows_beside_quotes = 30; // where a piece may begin inside a note
constexpr std::size_t other_places = 16;
constexpr std::size_t bytes_at_front = std::size_t{256} << 10U;
constexpr std::size_t bytes_elsewhere = std::size_t{64} << 10U;

void add_block(Samples& samples, std::string_view text, const Layout& layout, std::size_t max_rows) {
    samples.block_starts.push_back(samples.rows.size());
    std::size_t added = 0;
    for (const HeadLine& line : head_lines(text, 2 * max_rows)) {
        if (added == max_rows) return;
        auto cells = split_cells(line.text, layout.delimiter);
        if (cells.size() < 2 || (cells.size() < layout.columns && !layout.short_rows)) continue;
        cells.resize(layout.columns);
        for (auto& cell : cells)
            if (layout.encoding == Encoding::windows_1252 && has_high_bytes(cell))
                cell = to_utf8(cell, layout.encoding).text;
        samples.rows.push_back(std::move(cells));
        ++added;
    }
}

} // namespace

Samples take_samples(const ByteSource& source, const Layout& layout) {
    constexpr std::size_t all_rows = rows_at_front + other_places * rows_elsewhere;
    Samples samples;
    std::string buffer;
    const std::size_t rest = source.size() - layout.data_offset;
    std::size_t front_bytes = bytes_at_front;
    std::size_t stretch_bytes = bytes_elsewhere;
    if (rest < 2 * other_places * bytes_elsewhere / 8) {
        const auto text = source.piece(layout.data_offset, source.size(), buffer);
        if (text && count_line_ends(*text) <= all_rows) {
            add_block(samples, *text, layout, all_rows);
            return samples;
        }
        front_bytes = stretch_bytes = rest / (other_places + 1); // no row twice
    }
    const std::size_t front_end = std::min(source.size(), layout.data_offset + front_bytes);
    if (const auto text = source.piece(layout.data_offset, front_end, buffer))
        add_block(samples, text->substr(0, text->find_last_of("\r\n") + 1), layout, rows_at_front);
    for (std::size_t place = 1; place <= other_places; ++place) {
        const std::size_t from = layout.data_offset + rest * place / (other_places + 1);
        const auto text = source.piece(from, std::min(source.size(), from + stretch_bytes), buffer);
        if (!text) return samples;
        const std::size_t line_start = behind_line_end(*text, 0);
        // The last line of the stretch may be cut.
        const std::size_t last_end = text->find_last_of("\r\n");
        if (last_end != std::string_view::npos && last_end > line_start)
            add_block(samples, text->substr(line_start, last_end - line_start), layout,
                      text->find('"') == std::string_view::npos ? rows_elsewhere : rows_beside_quotes);
    }
    return samples;
}

} // namespace lapwright::import
