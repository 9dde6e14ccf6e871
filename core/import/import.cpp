// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/import.h"

#include "core/import/assemble.h"
#include "core/import/column_guess.h"
#include "core/import/dialect.h"
#include "core/import/limits.h"
#include "core/import/table_reader.h"

#include <algorithm>
#include <utility>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;

// The layout is told from this much of the file.
constexpr std::size_t head_bytes = std::size_t{1} << 20U;

base::Result<recording::Recording> import_source(const ByteSource& source, const std::string& name,
                                                 const Options& options, const base::Progress& progress) {
    std::string buffer;
    const auto head = source.piece(0, std::min(source.size(), head_bytes), buffer);
    if (!head)
        return Error{ErrorCode::file_not_readable, {name, {}, ""}, "the file cannot be read", "check the disk or card"};
    auto layout = find_layout(*head);
    if (!layout)
        return Error{ErrorCode::not_a_table,
                     {name, {}, ""},
                     "no table of numbers is found in this file",
                     "export the session as delimited text, GPX or NMEA 0183"};
    const auto guesses = guess_columns(*layout, take_samples(source, *layout));
    auto table = read_table(source, *layout, plan_columns(guesses), options.threads, progress);
    if (!table) {
        Error error = table.error();
        error.place.file = name;
        return error;
    }
    return assemble(std::move(table).value(), *layout, guesses, options, name);
}

} // namespace

base::Result<recording::Recording> import_file(const std::string& path, const Options& options,
                                               const base::Progress& progress) {
    const auto source = ByteSource::open(path);
    if (!source) return source.error();
    return import_source(*source, path, options, progress);
}

base::Result<recording::Recording> import_bytes(std::string_view bytes, const std::string& name, const Options& options,
                                                const base::Progress& progress) {
    return import_source(ByteSource(bytes), name, options, progress);
}

} // namespace lapwright::import
