// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/formats/preview.h"

#include "core/base/translation.h"
#include "core/import/channels/assemble.h"
#include "core/import/formats/table_import.h"
#include "core/import/text/line_scan.h"

#include <algorithm>
#include <new>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;

constexpr std::size_t previewed_bytes = std::size_t{4} << 20U;

// The end of the line that holds the last row wanted.
std::size_t end_of_rows(std::string_view text, std::size_t rows) {
    std::size_t at = 0;
    for (std::size_t i = 0; i < rows && at < text.size(); ++i)
        at = behind_line_end(text, at);
    return at;
}

base::Result<Preview> preview_source(const ByteSource& bytes, const std::string& name, const Options& options,
                                     std::size_t rows) {
    auto source = open_text(bytes, name);
    if (!source) return source.error();
    if (source->kind != FileKind::table)
        return Error{ErrorCode::not_a_table,
                     {name, {}, ""},
                     said("this file has no columns to choose"),
                     said("open it as it is")};
    auto known = know_table(*source, name, options);
    if (!known) return known.error();
    const Layout& layout = known->layout;
    std::string buffer;
    const std::size_t most = std::min(source->bytes.size(), layout.data_offset + previewed_bytes);
    const auto text = source->bytes.piece(0, most, buffer);
    if (!text)
        return Error{ErrorCode::file_not_readable,
                     {name, {}, ""},
                     said("the file cannot be read"),
                     said("check the disk or card")};
    const std::size_t end = layout.data_offset + end_of_rows(text->substr(layout.data_offset), rows);
    const ByteSource first(text->substr(0, end));

    Preview preview;
    preview.layout = layout;
    preview.recipe_fits = known->recipe_fits;
    preview.recipe = options.recipe ? *options.recipe : make_recipe("", layout, known->guesses);
    auto plans = plan_columns(known->guesses);
    for (std::size_t i = 0; i < plans.size(); ++i)
        if (known->guesses[i].form != CellForm::text && plans[i].form == CellForm::text)
            plans[i].form = known->guesses[i].form;
    auto table = read_table(first, layout, plans, 1, {});
    if (!table) {
        Error error = table.error();
        error.place.file = name;
        return error;
    }
    for (std::size_t i = 0; i < known->guesses.size(); ++i)
        preview.columns.push_back({known->guesses[i], table->columns[i].values});
    preview.rows = table->lines.size();
    auto recording = assemble(std::move(table).value(), layout, known->guesses, options, name);
    if (recording)
        preview.recording = std::move(recording).value();
    else
        preview.problem = base::one_line(recording.error());
    return preview;
}

base::Result<Preview> guarded(const ByteSource& bytes, const std::string& name, const Options& options,
                              std::size_t rows) {
    try {
        return preview_source(bytes, name, options, rows);
    } catch (const std::bad_alloc&) {
        return Error{ErrorCode::file_too_large,
                     {name, {}, ""},
                     said("the memory does not suffice for this file"),
                     said("export one session alone")};
    }
}

} // namespace

base::Result<Preview> preview_file(const std::string& path, const Options& options, std::size_t rows) {
    const auto source = ByteSource::open(path);
    if (!source) return source.error();
    return guarded(*source, path, options, rows);
}

base::Result<Preview> preview_bytes(std::string_view bytes, const std::string& name, const Options& options,
                                    std::size_t rows) {
    return guarded(ByteSource(bytes), name, options, rows);
}

} // namespace lapwright::import
