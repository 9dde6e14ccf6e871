// SPDX-License-Identifier: GPL-3.0-or-later
// Tables as comma-separated text that any spreadsheet opens and none of them runs.
//
// RFC 4180: comma, CRLF, texts in double quotes, a quote inside doubled.  Formula injection (OWASP "CSV Injection";
// OWASP ASVS 5.0, 1.2.10; CWE-1236): a text that a spreadsheet could take for a formula gets a single quote in front.
// Numbers are numbers of this program, never text of a file, and stay as they are: "-0.25" is no formula.
#pragma once

#include <string>
#include <string_view>
#include <variant>
#include <vector>

namespace lapwright::sheet {

// A figure, already rounded, without a unit; empty where it is absent.
struct Number {
    std::string text;
};
// A std::string is text that may come from a file.
using Cell = std::variant<std::string, Number>;

struct Table {
    std::vector<std::string> columns;
    std::vector<std::vector<Cell>> rows;
};

[[nodiscard]] std::string csv_text(const Table& table);
// The same for a clipboard: a tab between cells, a line a row, no quotes; a tab or a line break in a text is a blank.
[[nodiscard]] std::string tab_text(const Table& table);

// With a single quote in front where it begins, after blanks, with = + - @, one of their full-width forms, tab,
// carriage return, line feed or a null character.
[[nodiscard]] std::string harmless(std::string_view text);

} // namespace lapwright::sheet
