// SPDX-License-Identifier: GPL-3.0-or-later
// The limits are common practice, no source.
#include "core/import/tables/paired_cells.h"

#include "core/base/translation.h"
#include "core/import/tables/each_line.h"
#include "core/import/tables/head_lines.h"
#include "core/import/text/cells.h"
#include "core/import/text/number_scan.h"
#include "core/import/text/words.h"

#include <algorithm>
#include <array>
#include <vector>

namespace lapwright::import {
namespace {

using base::said;

constexpr std::size_t enough_places = 10;
constexpr std::size_t min_decimals = 4;
constexpr std::string_view well_known = "POINT";

bool is_precise(std::string_view number) {
    const std::size_t mark = number.find_last_of(".,");
    if (mark == std::string_view::npos || number.size() - mark - 1 < min_decimals) return false;
    return read_number(number, {number[mark], false}).has_value();
}

std::string_view without_brackets(std::string_view cell) {
    cell = trimmed(cell);
    const bool bracketed = cell.size() > 2 && std::string_view("([{").find(cell.front()) != std::string_view::npos;
    return bracketed ? trimmed(cell.substr(1, cell.size() - 2)) : cell;
}

// At the last mark that leaves a number before it: a comma parts numbers only where it is not their decimal mark.
std::optional<std::pair<std::string_view, std::string_view>> two_numbers(std::string_view text) {
    for (const char mark : {';', ' ', ','}) {
        const std::size_t at = text.find(mark);
        if (at == std::string_view::npos) continue;
        std::string_view first = trimmed(text.substr(0, at));
        if (mark == ' ' && first.ends_with(',')) first.remove_suffix(1);
        const std::string_view second = trimmed(text.substr(at + 1));
        if (is_precise(first) && is_precise(second)) return std::pair{first, second};
    }
    return std::nullopt;
}

struct PlaceColumn {
    Delimiter delimiter;
    std::size_t index = 0;
    bool well_known = false;
};

// Two numbers may be anything that has two sides: a name that says nothing of a place is left out, so that the columns
// are judged by how they move.
bool says_place(const std::string& name) {
    constexpr std::array parts{"lat", "lon", "lng",   "gps",   "gnss",  "pos",
                               "loc", "geo", "coord", "koord", "place", "point"};
    const std::string words = plain_words(name);
    return std::ranges::any_of(parts, [&](const char* part) { return words.find(part) != std::string::npos; });
}

// A cell as it stands in its line, quotes and all.
struct RawCell {
    std::size_t begin = 0;
    std::size_t end = 0;
    std::string text;
};

std::optional<RawCell> cell_at(std::string_view line, const PlaceColumn& column) {
    std::string scratch;
    const char* at = line.data();
    const char* const end = line.data() + line.size();
    for (std::size_t i = 0;; ++i) {
        const Cell cell = next_cell(at, end, column.delimiter, scratch);
        if (i == column.index)
            return RawCell{static_cast<std::size_t>(at - line.data()), static_cast<std::size_t>(cell.end - line.data()),
                           std::string(cell.text)};
        if (cell.end >= end) return std::nullopt;
        at = cell.end + 1;
    }
}

std::optional<PlaceColumn> column_of_places(std::string_view head, Encoding encoding) {
    if (encoding == Encoding::windows_1252) return std::nullopt;
    const auto lines = head_lines(head, telling_lines);
    for (const Delimiter delimiter : text_delimiters) {
        std::vector<std::size_t> places;
        std::size_t rows = 0;
        for (const HeadLine& line : lines) {
            const auto cells = split_cells(line.text, delimiter);
            if (cells.size() < 2) continue;
            ++rows;
            places.resize(std::max(places.size(), cells.size()));
            for (std::size_t i = 0; i < cells.size(); ++i)
                if (place_in_cell(cells[i])) ++places[i];
        }
        const auto most = std::ranges::max_element(places);
        if (most == places.end() || *most < enough_places || 2 * *most < rows) continue;
        const auto index = static_cast<std::size_t>(most - places.begin());
        const bool well_known_text = std::ranges::any_of(lines, [&](const HeadLine& line) {
            const auto cells = split_cells(line.text, delimiter);
            return index < cells.size() && cells[index].starts_with(well_known);
        });
        return PlaceColumn{delimiter, index, well_known_text};
    }
    return std::nullopt;
}

std::string in_two(const std::string& text, const PlaceColumn& column, bool is_name) {
    const char delimiter = column.delimiter.mark;
    const auto cell = [&](std::string_view number) {
        const bool quoted = number.find(delimiter) != std::string_view::npos;
        return quoted ? "\"" + std::string(number) + "\"" : std::string(number);
    };
    if (const auto place = place_in_cell(text)) return cell(place->latitude) + delimiter + cell(place->longitude);
    std::string plain = text;
    std::ranges::replace_if(plain, [&](char c) { return c == delimiter || c == '"'; }, ' ');
    if (!is_name) return plain + delimiter + plain;
    if (!column.well_known && !says_place(text)) return std::string(1, delimiter);
    return std::string("latitude") + delimiter + "longitude";
}

} // namespace

std::optional<Place> place_in_cell(std::string_view cell) {
    cell = trimmed(cell);
    const bool x_first = cell.starts_with(well_known);
    if (x_first) cell.remove_prefix(well_known.size());
    const auto pair = two_numbers(without_brackets(cell));
    if (!pair) return std::nullopt;
    return x_first ? Place{pair->second, pair->first} : Place{pair->first, pair->second};
}

bool has_places_in_cells(std::string_view head, Encoding encoding) {
    return column_of_places(head, encoding).has_value();
}

std::optional<std::string> places_parted(std::string_view text, Encoding encoding, const base::Progress& progress) {
    const auto column = column_of_places(text, encoding);
    if (!column) return std::nullopt;
    std::string parted;
    parted.reserve(text.size() + text.size() / 8);
    bool named = false;
    const bool whole =
        each_line(text, said("parting places"), progress, [&](std::string_view line, std::string_view end) {
            const auto cell = is_comment(line) ? std::nullopt : cell_at(line, *column);
            if (cell) {
                const bool is_name = !named && !cell->text.empty() && !place_in_cell(cell->text);
                named = named || is_name;
                parted += line.substr(0, cell->begin);
                parted += in_two(cell->text, *column, is_name);
                line.remove_prefix(cell->end);
            }
            parted += line;
            parted += end;
        });
    if (!whole) return std::nullopt;
    return parted;
}

} // namespace lapwright::import
