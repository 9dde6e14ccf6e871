// SPDX-License-Identifier: GPL-3.0-or-later
#include "tests/hostile/mutate.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <vector>

#include "tests/worlds/draws.h"

namespace hostile {
namespace {

using truth::Random;
using worlds::index_below;
using worlds::one_of;

using Row = std::vector<std::string>;
using Table = std::vector<Row>;

// What cells are overwritten with.
constexpr std::array odd_cells{"",
                               "nan",
                               "NaN",
                               "inf",
                               "-inf",
                               "1e999",
                               "-1e308",
                               "1e-320",
                               "9999999999999999999999",
                               "-1",
                               "0",
                               "abc",
                               "12:61:99",
                               "\"",
                               "\"\"",
                               "=1+1",
                               "1,5",
                               "1.2.3",
                               "--5",
                               "+",
                               "0x1F",
                               "\x1b[31mred",
                               "\xff\xfe",
                               "\xc3",
                               "\t",
                               "2026-02-31",
                               "25:00:00",
                               "1e5",
                               "\u2212"
                               "5",
                               "48km/h",
                               "N/A",
                               "null",
                               "-999",
                               "65535",
                               "\xef\xbb\xbf"
                               "5",
                               "1'000"};

constexpr std::array odd_headers{
    "",           "Time",   "Lap",          "Latitude",    "Longitude",     "Speed [parsec]", "Speed (km/h)",
    "\x1b[2J",    "a\nb",   "\"",           "Lateral (g)", "Distance [km]", "timestamp",      "X",
    "Unnamed: 0", "Beacon", "Course [rad]", "Roll (deg)",  "Pitch (deg)",   "\xff\xff"};

Table cells_of(const std::string& text, char delimiter) {
    Table table;
    Row row{""};
    for (const char c : text) {
        if (c == '\n') {
            table.push_back(row);
            row = {""};
        } else if (c == delimiter) {
            row.emplace_back();
        } else {
            row.back() += c;
        }
    }
    if (row.size() > 1 || !row.front().empty()) table.push_back(row);
    return table;
}

std::string text_of(const Table& table, char delimiter) {
    std::string text;
    for (const Row& row : table) {
        for (std::size_t c = 0; c < row.size(); ++c)
            text += (c > 0 ? std::string(1, delimiter) : "") + row[c];
        text += '\n';
    }
    return text;
}

std::string number(std::size_t value) {
    return std::to_string(value);
}

void each_cell(Table& table, std::size_t column, const auto& change) {
    for (std::size_t r = 1; r < table.size(); ++r)
        if (column < table[r].size()) change(table[r][column], r);
}

using Change = std::string (*)(Table&, Random&);

std::string drop_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    for (Row& row : table)
        if (c < row.size()) row.erase(row.begin() + static_cast<std::ptrdiff_t>(c));
    return "column " + number(c) + " dropped";
}

std::string swap_headers(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    const std::size_t d = index_below(random, table.front().size());
    std::swap(table.front()[c], table.front()[d]);
    return "headers " + number(c) + " and " + number(d) + " swapped";
}

std::string rename_header(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    table.front()[c] = one_of(random, odd_headers);
    return "header " + number(c) + " is now something else";
}

std::string blank_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    each_cell(table, c, [](std::string& cell, std::size_t) { cell.clear(); });
    return "column " + number(c) + " blanked";
}

std::string constant_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    const std::string value = table.size() > 1 && c < table[1].size() ? table[1][c] : "0";
    each_cell(table, c, [&](std::string& cell, std::size_t) { cell = value; });
    return "column " + number(c) + " constant";
}

std::string odd_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    const std::string value = one_of(random, odd_cells);
    each_cell(table, c, [&](std::string& cell, std::size_t) { cell = value; });
    return "column " + number(c) + " full of " + value;
}

std::string odd_cells_here_and_there(Table& table, Random& random) {
    const double share = worlds::between_log(random, 0.0005, 0.2);
    for (std::size_t r = 1; r < table.size(); ++r)
        for (std::string& cell : table[r])
            if (worlds::chance(random, share)) cell = one_of(random, odd_cells);
    return "odd cells here and there";
}

std::string scale_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    static constexpr std::array tails{"e6", "e-6", "e300", "000000"};
    const std::string tail = one_of(random, tails);
    each_cell(table, c, [&](std::string& cell, std::size_t) { cell += tail; });
    return "column " + number(c) + " with " + tail;
}

std::string negate_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    each_cell(table, c, [](std::string& cell, std::size_t) { cell.insert(0, "-"); });
    return "column " + number(c) + " negated";
}

std::string decreasing_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    std::vector<std::string> values;
    each_cell(table, c, [&](std::string& cell, std::size_t) { values.push_back(cell); });
    each_cell(table, c, [&](std::string& cell, std::size_t) {
        cell = values.back();
        values.pop_back();
    });
    return "column " + number(c) + " upside down";
}

std::string counting_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    each_cell(table, c, [](std::string& cell, std::size_t r) { cell = number(r); });
    return "column " + number(c) + " counts rows";
}

std::string hold_column(Table& table, Random& random) {
    const std::size_t c = index_below(random, table.front().size());
    std::string last;
    const double share = worlds::between(random, 0.02, 0.9);
    each_cell(table, c, [&](std::string& cell, std::size_t) {
        if (!last.empty() && worlds::chance(random, share)) cell = last;
        last = cell;
    });
    return "column " + number(c) + " held now and then";
}

std::string shuffle_rows(Table& table, Random& random) {
    const double share = worlds::between_log(random, 0.001, 1.0);
    for (std::size_t r = 1; r < table.size(); ++r)
        if (worlds::chance(random, share)) std::swap(table[r], table[1 + index_below(random, table.size() - 1)]);
    return "rows shuffled";
}

std::string keep_rows(Table& table, Random& random) {
    static constexpr std::array<std::size_t, 8> counts{0, 1, 2, 3, 10, 100, 600, 1100};
    const std::size_t count = one_of(random, counts);
    if (table.size() > count + 1) table.resize(count + 1);
    return number(count) + " rows left";
}

std::string cut_hole(Table& table, Random& random) {
    if (table.size() < 3) return "nothing";
    const std::size_t from = 1 + index_below(random, table.size() - 1);
    const std::size_t to = std::min(table.size(), from + 1 + index_below(random, table.size() / 2));
    table.erase(table.begin() + static_cast<std::ptrdiff_t>(from), table.begin() + static_cast<std::ptrdiff_t>(to));
    return "rows " + number(from) + " to " + number(to) + " lost";
}

std::string repeat_rows(Table& table, Random& random) {
    if (table.size() < 3) return "nothing";
    const std::size_t from = 1 + index_below(random, table.size() - 1);
    const std::size_t count = std::min(table.size() - from, 1 + index_below(random, 400));
    const Table piece(table.begin() + static_cast<std::ptrdiff_t>(from),
                      table.begin() + static_cast<std::ptrdiff_t>(from + count));
    table.insert(table.begin() + static_cast<std::ptrdiff_t>(from), piece.begin(), piece.end());
    return "rows repeated";
}

std::string second_header(Table& table, Random& random) {
    table.insert(table.begin() + static_cast<std::ptrdiff_t>(1 + index_below(random, table.size())), table.front());
    return "a second header";
}

std::string ragged(Table& table, Random& random) {
    for (Row& row : table)
        if (worlds::chance(random, 0.02)) row.resize(index_below(random, row.size() + 4));
    return "rows of other lengths";
}

constexpr std::array<Change, 17> changes{drop_column,
                                         swap_headers,
                                         rename_header,
                                         blank_column,
                                         constant_column,
                                         odd_column,
                                         odd_cells_here_and_there,
                                         scale_column,
                                         negate_column,
                                         decreasing_column,
                                         counting_column,
                                         hold_column,
                                         shuffle_rows,
                                         keep_rows,
                                         cut_hole,
                                         repeat_rows,
                                         second_header};

std::string flip_bytes(std::string& text, Random& random) {
    const std::size_t count = 1 + index_below(random, 40);
    for (std::size_t i = 0; i < count && !text.empty(); ++i)
        text[index_below(random, text.size())] = static_cast<char>(index_below(random, 256));
    return number(count) + " bytes flipped";
}

std::string cut_off(std::string& text, Random& random) {
    text.resize(index_below(random, text.size() + 1));
    return "cut off after " + number(text.size()) + " bytes";
}

} // namespace

Mutant mutate_table(const std::string& text, char delimiter, std::uint64_t seed) {
    Random random(seed, 71);
    Table table = cells_of(text, delimiter);
    Mutant mutant;
    const std::size_t count = 1 + index_below(random, 3);
    for (std::size_t i = 0; i < count && !table.empty() && !table.front().empty(); ++i)
        mutant.what += (i > 0 ? ", " : "") + one_of(random, changes)(table, random);
    if (worlds::chance(random, 0.1)) mutant.what += ", " + ragged(table, random);
    mutant.text = text_of(table, delimiter);
    if (worlds::chance(random, 0.1)) mutant.what += ", " + flip_bytes(mutant.text, random);
    if (worlds::chance(random, 0.05)) mutant.what += ", " + cut_off(mutant.text, random);
    return mutant;
}

Mutant mutate_lines(const std::string& text, std::uint64_t seed) {
    Random random(seed, 73);
    Table lines = cells_of(text, '\0');
    Mutant mutant;
    static constexpr std::array<Change, 4> of_lines{shuffle_rows, keep_rows, cut_hole, repeat_rows};
    if (worlds::chance(random, 0.7)) mutant.what = one_of(random, of_lines)(lines, random) + ", ";
    mutant.text = text_of(lines, '\0');
    mutant.what += worlds::chance(random, 0.7) ? flip_bytes(mutant.text, random) : cut_off(mutant.text, random);
    return mutant;
}

Mutant mutate_json(const std::string& text, std::uint64_t seed) {
    Random random(seed, 79);
    static constexpr std::array values{
        "1e999",        "-1e999",   "null", "true",  "[]",          "{}",
        "\"\"",         "-1",       "0",    "1e308", "\"\\u0000\"", "99999999999999999999",
        "[[[[[[]]]]]]", "\"\xff\"", "NaN",  "\"1\""};
    Mutant mutant{text, ""};
    std::vector<std::size_t> starts; // of values
    for (std::size_t i = 0; i + 1 < text.size(); ++i)
        if (text[i] == ':') starts.push_back(i + 1);
    const std::size_t count = 1 + index_below(random, 3);
    for (std::size_t k = 0; k < count && !starts.empty(); ++k) {
        const std::size_t start = one_of(random, starts);
        const std::size_t end = std::min(mutant.text.find_first_of(",}\n", start), mutant.text.size());
        if (start >= mutant.text.size() || end <= start) continue;
        const std::string value = one_of(random, values);
        mutant.text.replace(start, end - start, value);
        mutant.what += "a value " + value + ", ";
    }
    if (worlds::chance(random, 0.1)) mutant.text = std::string(20'000, '[') + mutant.text;
    if (worlds::chance(random, 0.2)) mutant.what += flip_bytes(mutant.text, random);
    if (worlds::chance(random, 0.1)) mutant.what += cut_off(mutant.text, random);
    return mutant;
}

} // namespace hostile
