// SPDX-License-Identifier: GPL-3.0-or-later
// How a delimited text is laid out, told from its first lines alone: delimiter, decimal mark, which line names the
// columns, which gives their units, where the data begin.
#pragma once

#include "core/import/tables/head_lines.h"
#include "core/import/text/cells.h"
#include "core/import/text/encoding.h"
#include "core/import/text/number_scan.h"
#include "core/import/vocabulary/vocabulary.h"

#include <cstddef>
#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace lapwright::import {

// "column 3" of index 2: what a column is called that has no name.
[[nodiscard]] std::string name_by_number(std::size_t column);

struct Layout {
    Encoding encoding = Encoding::utf8; // of the bytes; names, units and facts are UTF-8
    Delimiter delimiter;
    NumberStyle style;
    std::size_t columns = 0;
    std::vector<std::string> names; // as many as columns; "column 3" where the file has none
    std::vector<std::string> units; // as many as columns; from a row of their own, else empty
    bool has_names = false;
    std::size_t header_line = 0; // counted from 1; 0 where no line names the columns
    std::size_t data_offset = 0; // bytes to the first line of data
    std::size_t data_line = 1;
    std::size_t header_cells = 0;                           // in the line that names the columns; 0 where there is none
    std::string header_text;                                // the line that names the columns, to know it again
    std::vector<std::uint32_t> headers_before;              // lines in front that are the same
    std::vector<std::uint32_t> no_readings;                 // lines behind it that hold numbers and are none
    std::vector<std::pair<std::string, std::string>> facts; // preamble, key and value
    bool short_rows = false;                                // rows may end early: the cells that are missing are blank
    bool decimal_mark_unsure = false;                       // "1,234" could be a number of thousands too
    std::shared_ptr<const Vocabulary> own_words;            // by which names are told; null: the built-in ones

    [[nodiscard]] const Vocabulary& vocabulary() const { return own_words ? *own_words : built_in_vocabulary(); }
};

// What a person or a recipe says of the layout in place of a guess.
struct LayoutChoice {
    std::optional<Delimiter> delimiter;
    std::optional<std::size_t> header_line; // that names the columns, counted from 1; 0: there is none

    bool operator==(const LayoutChoice&) const = default;
};

// The cells of a line that names columns, UTF-8, without a comment mark before them.
// Parted by blanks they may be names of several words, where these are as many as there are columns.
[[nodiscard]] std::vector<std::string> header_cells(std::string_view line, Delimiter delimiter, Encoding encoding,
                                                    std::size_t columns);

// Nothing where no table is found; a table of more than max_columns columns has one more than that.  The text is UTF-8
// (a byte order mark may stand before it) or Windows-1252.
[[nodiscard]] std::optional<Layout> find_layout(std::string_view text, Encoding encoding = Encoding::utf8,
                                                const LayoutChoice& choice = {},
                                                std::shared_ptr<const Vocabulary> own_words = nullptr);

// A number, a clock reading, a date, a hemisphere letter, degrees with marks, or a word for "absent".
[[nodiscard]] bool looks_like_data(std::string_view cell, NumberStyle style);

} // namespace lapwright::import
