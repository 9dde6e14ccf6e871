// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/table_import.h"

#include "core/base/number_text.h"
#include "core/import/gpx.h"
#include "core/import/limits.h"
#include "core/import/nmea.h"
#include "core/import/samples.h"

#include <algorithm>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;

// The layout is told from this much of the file.
constexpr std::size_t head_bytes = std::size_t{1} << 20U;

Error unreadable(const std::string& name) {
    return {
        ErrorCode::file_not_readable, {name, {}, ""}, "the file cannot be read to its end", "check the disk or card"};
}

// Loggers reserve room ahead; what they did not fill is zeros.
std::optional<std::size_t> size_without_zeros(const ByteSource& bytes) {
    std::string buffer;
    std::size_t size = bytes.size();
    while (size > 0) {
        const std::size_t from = size > head_bytes ? size - head_bytes : 0;
        const auto tail = bytes.piece(from, size, buffer);
        if (!tail) return std::nullopt;
        const std::size_t last = tail->find_last_not_of('\0');
        if (last != std::string_view::npos) return from + last + 1;
        size = from;
    }
    return size;
}

Error without_table(const std::string& name) {
    return {ErrorCode::not_a_table,
            {name, {}, ""},
            "no table of numbers is found in this file",
            "export the session as delimited text, GPX or NMEA 0183"};
}

// "1,5,2,5" under two names: which comma is the decimal mark cannot be told.
bool commas_in_conflict(const Layout& layout) {
    return layout.delimiter == Delimiter{','} && layout.header_cells >= 2 && layout.columns > layout.header_cells + 1;
}

} // namespace

std::optional<std::string_view> whole_text(const ByteSource& bytes, std::string& buffer) {
    return bytes.piece(0, bytes.size(), buffer);
}

base::Result<TextSource> open_text(const ByteSource& bytes, const std::string& name) {
    std::string buffer;
    const auto head = bytes.piece(0, std::min(bytes.size(), head_bytes), buffer);
    if (!head) return unreadable(name);
    TextSource source{bytes, nullptr, detect_encoding(*head), FileKind::table, {}};
    if (source.encoding == Encoding::utf16_little || source.encoding == Encoding::utf16_big) {
        std::string all_buffer;
        const auto all = whole_text(bytes, all_buffer);
        if (!all) return unreadable(name);
        Utf8Text converted = to_utf8(*all, source.encoding);
        if (converted.damaged > 0)
            source.warnings.push_back({"encoding_damaged",
                                       base::integer_text(static_cast<std::int64_t>(converted.damaged)) +
                                           " characters of UTF-16 are cut or damaged",
                                       {}});
        source.owned = std::make_shared<const std::string>(std::move(converted.text));
        source.bytes = ByteSource(*source.owned);
        source.encoding = Encoding::utf8;
    } else if (const auto size = size_without_zeros(bytes); !size) {
        return unreadable(name);
    } else if (*size < bytes.size()) {
        source.bytes = bytes.first(*size);
        source.warnings.push_back({"tail_empty",
                                   base::integer_text(static_cast<std::int64_t>(bytes.size() - *size)) +
                                       " bytes of zeros at the end were left out: the logger may have lost power",
                                   {}});
    }
    std::string kind_buffer;
    auto start = source.bytes.piece(0, std::min(source.bytes.size(), head_bytes), kind_buffer);
    if (!start) return unreadable(name);
    if (start->starts_with(utf8_mark)) start->remove_prefix(utf8_mark.size());
    if (looks_like_gpx(*start))
        source.kind = FileKind::gpx;
    else if (looks_like_nmea(*start))
        source.kind = FileKind::nmea;
    return source;
}

base::Result<KnownTable> know_table(const TextSource& source, const std::string& name, const Options& options) {
    std::string buffer;
    const auto head = source.bytes.piece(0, std::min(source.bytes.size(), head_bytes), buffer);
    if (!head) return unreadable(name);
    auto layout = find_layout(*head, source.encoding);
    if (!layout) return without_table(name);
    if (layout->columns > most_columns)
        return Error{ErrorCode::not_a_table,
                     {name, layout->data_line, ""},
                     "the table has more than 4096 columns",
                     "export fewer channels"};
    if (commas_in_conflict(*layout))
        return Error{
            ErrorCode::not_a_table,
            {name, layout->data_line, ""},
            "rows have more cells than there are names, as if commas were decimal marks and delimiters at once",
            "export with semicolons or tabs, or with decimal points"};
    KnownTable known{std::move(*layout), {}, false};
    known.recipe_fits = options.recipe && fits(*options.recipe, known.layout);
    if (options.recipe) known.layout.style.decimal_mark = options.recipe->decimal_mark;
    known.guesses = guess_columns(known.layout, take_samples(source.bytes, known.layout));
    if (options.recipe) apply(*options.recipe, known.layout, known.guesses);
    return known;
}

} // namespace lapwright::import
