// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/import.h"

#include "core/import/assemble.h"
#include "core/import/column_guess.h"
#include "core/import/dialect.h"
#include "core/import/limits.h"
#include "core/import/table_reader.h"

#include <fstream>
#include <utility>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;

constexpr std::size_t judged_rows = 400;

SampleRows sample_rows(std::string_view text, const Layout& layout) {
    SampleRows rows;
    for (const HeadLine& line : head_lines(text.substr(layout.data_offset), judged_rows)) {
        auto cells = split_cells(line.text, layout.delimiter);
        if (cells.size() < layout.columns) continue;
        cells.resize(layout.columns);
        rows.push_back(std::move(cells));
    }
    return rows;
}

} // namespace

base::Result<recording::Recording> import_file(const std::string& path, const Options& options,
                                               const base::Progress& progress) {
    std::ifstream file(path, std::ios::binary | std::ios::ate);
    const auto size = file ? static_cast<std::streamoff>(file.tellg()) : std::streamoff{-1};
    if (size < 0)
        return Error{
            ErrorCode::file_not_readable, {path, {}, ""}, "the file cannot be read", "check its name and its rights"};
    if (static_cast<std::size_t>(size) > largest_file_bytes)
        return Error{
            ErrorCode::file_too_large, {path, {}, ""}, "the file is larger than 4 GiB", "export a single session"};
    std::string bytes(static_cast<std::size_t>(size), '\0');
    file.seekg(0);
    file.read(bytes.data(), size);
    if (file.gcount() != size)
        return Error{
            ErrorCode::file_not_readable, {path, {}, ""}, "the file cannot be read to its end", "check the disk"};
    return import_bytes(bytes, path, options, progress);
}

base::Result<recording::Recording> import_bytes(std::string_view bytes, const std::string& name, const Options& options,
                                                const base::Progress& progress) {
    if (bytes.starts_with("\xEF\xBB\xBF")) bytes.remove_prefix(3);
    const auto layout = find_layout(bytes);
    if (!layout)
        return Error{ErrorCode::not_a_table,
                     {name, {}, ""},
                     "no table of numbers is found in this file",
                     "export the session as delimited text, GPX or NMEA 0183"};
    const auto guesses = guess_columns(*layout, sample_rows(bytes, *layout));
    auto table = read_table(bytes, *layout, plan_columns(guesses), options.threads, progress);
    if (!table) {
        Error error = table.error();
        error.place.file = name;
        return error;
    }
    return assemble(std::move(table).value(), *layout, guesses, options, name);
}

} // namespace lapwright::import
