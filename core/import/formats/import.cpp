// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/formats/import.h"

#include "core/base/translation.h"
#include "core/import/channels/assemble.h"
#include "core/import/formats/gpx.h"
#include "core/import/formats/nmea.h"
#include "core/import/formats/table_import.h"

#include <new>
#include <utility>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;
using recording::Recording;
using recording::WarningKind;

base::Result<Recording> import_table(const TextSource& source, const std::string& name, const Options& options,
                                     const base::Progress& progress) {
    const auto known = know_table(source, name, options);
    if (!known) return known.error();
    auto table = read_table(source.bytes, known->layout, plan_columns(known->guesses), options.threads, progress);
    if (!table) {
        Error error = table.error();
        error.place.file = name;
        return error;
    }
    auto recording = assemble(std::move(table).value(), known->layout, known->guesses, options, name, progress);
    if (!recording || !options.recipe) return recording;
    Recording told = std::move(recording).value();
    const auto kind = known->recipe_fits ? WarningKind::recipe_used : WarningKind::recipe_unfit;
    told.warnings.insert(told.warnings.begin(), {.kind = kind, .of = words(*options.recipe)});
    return told;
}

base::Result<Recording> import_text(const TextSource& source, const std::string& name, const Options& options,
                                    const base::Progress& progress) {
    if (source.kind == FileKind::table) return import_table(source, name, options, progress);
    std::string buffer;
    auto text = whole_text(source.bytes, buffer);
    if (!text)
        return Error{ErrorCode::file_not_readable,
                     {name, {}, ""},
                     said("the file cannot be read to its end"),
                     said("check the disk or card")};
    if (text->starts_with(utf8_mark)) text->remove_prefix(utf8_mark.size());
    return source.kind == FileKind::gpx ? read_gpx(*text, name, progress) : read_nmea(*text, name, progress);
}

base::Result<Recording> import_source(const ByteSource& bytes, const std::string& name, const Options& options,
                                      const base::Progress& progress) {
    try {
        const auto source = open_text(bytes, name, progress);
        if (!source) return source.error();
        auto recording = import_text(*source, name, options, progress);
        if (!recording || source->warnings.empty()) return recording;
        Recording with_warnings = std::move(recording).value();
        with_warnings.warnings.insert(with_warnings.warnings.begin(), source->warnings.begin(), source->warnings.end());
        return with_warnings;
    } catch (const std::bad_alloc&) {
        return Error{ErrorCode::file_too_large,
                     {name, {}, ""},
                     said("the memory does not suffice for this file"),
                     said("export one session alone")};
    }
}

} // namespace

base::Result<Recording> import_file(const std::string& path, const Options& options, const base::Progress& progress) {
    const auto source = ByteSource::open(path);
    if (!source) return source.error();
    return import_source(*source, path, options, progress);
}

base::Result<Recording> import_bytes(std::string_view bytes, const std::string& name, const Options& options,
                                     const base::Progress& progress) {
    return import_source(ByteSource(bytes), name, options, progress);
}

} // namespace lapwright::import
