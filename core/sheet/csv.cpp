// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/csv.h"

#include "core/base/plain_text.h"

#include <algorithm>
#include <array>

namespace lapwright::sheet {
namespace {

using namespace std::string_view_literals;

constexpr std::array triggers{"="sv,
                              "+"sv,
                              "-"sv,
                              "@"sv,
                              "\t"sv,
                              "\r"sv,
                              "\n"sv,
                              "\0"sv,
                              "\xEF\xBC\x9D"sv, // full-width =
                              "\xEF\xBC\x8B"sv, // +
                              "\xEF\xBC\x8D"sv, // -
                              "\xEF\xBC\xA0"sv};

std::string quoted(std::string_view text) {
    std::string field = "\"";
    for (const char letter : harmless(text)) {
        if (letter == '"') field += '"';
        field += letter;
    }
    return field + "\"";
}

std::string plain_field(const Cell& cell) {
    if (const Number* number = std::get_if<Number>(&cell)) return number->text;
    return base::without_controls(harmless(std::get<std::string>(cell)));
}

std::string field_of(const Cell& cell) {
    if (const Number* number = std::get_if<Number>(&cell)) return number->text;
    return quoted(std::get<std::string>(cell));
}

} // namespace

std::string harmless(std::string_view text) {
    std::string_view start = text;
    while (start.starts_with(' '))
        start.remove_prefix(1);
    const bool could_run =
        std::ranges::any_of(triggers, [&](std::string_view trigger) { return start.starts_with(trigger); });
    return (could_run ? "'" : "") + std::string(text);
}

std::string csv_text(const Table& table) {
    std::string text;
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        text += (i > 0 ? "," : "") + quoted(table.columns[i]);
    text += "\r\n";
    for (const std::vector<Cell>& row : table.rows) {
        for (std::size_t i = 0; i < row.size(); ++i)
            text += (i > 0 ? "," : "") + field_of(row[i]);
        text += "\r\n";
    }
    return text;
}

std::string tab_text(const Table& table) {
    std::string text;
    const auto put = [&text](std::size_t i, const std::string& cell) { text += (i > 0 ? "\t" : "") + cell; };
    for (std::size_t i = 0; i < table.columns.size(); ++i)
        put(i, plain_field(table.columns[i]));
    text += '\n';
    for (const std::vector<Cell>& row : table.rows) {
        for (std::size_t i = 0; i < row.size(); ++i)
            put(i, plain_field(row[i]));
        text += '\n';
    }
    return text;
}

} // namespace lapwright::sheet
