// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/import/formats/table_import.h"

#include "core/base/translation.h"
#include "core/import/formats/gpx.h"
#include "core/import/formats/nmea.h"
#include "core/import/tables/long_form.h"
#include "core/import/tables/paired_cells.h"
#include "core/import/tables/samples.h"
#include "core/import/text/limits.h"
#include "core/import/vocabulary/column_names.h"
#include "core/import/vocabulary/units_in_text.h"

#include <algorithm>

namespace lapwright::import {
namespace {

using base::Error;
using base::ErrorCode;
using base::said;

// The layout is told from this much of the file.
constexpr std::size_t head_bytes = std::size_t{1} << 20U;

Error unreadable(const std::string& name) {
    return {ErrorCode::file_not_readable,
            {name, {}, ""},
            said("the file cannot be read to its end"),
            said("check the disk or card")};
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

// A long file is turned piece by piece, so that it can be stopped.
base::Result<Utf8Text> read_utf16(const ByteSource& bytes, Encoding encoding, const std::string& name,
                                  const base::Progress& progress) {
    constexpr std::size_t piece_bytes = std::size_t{4} << 20U;
    Utf8Text text;
    text.text.reserve(bytes.size() / 2 + 16);
    std::string buffer;
    for (std::size_t at = 0; at < bytes.size();) {
        if (!base::go_on(progress, said("reading characters"), 0.0)) return base::cancelled();
        const std::size_t end = std::min(bytes.size(), at + piece_bytes);
        auto piece = bytes.piece(at, end, buffer);
        if (!piece) return unreadable(name);
        if (end < bytes.size()) piece = piece->substr(0, whole_characters(*piece, encoding));
        at += piece->size();
        if (at == piece->size() && has_mark(*piece, encoding)) piece->remove_prefix(2);
        append_utf16(*piece, encoding, text);
    }
    return text;
}

Error without_table(const std::string& name) {
    return {ErrorCode::not_a_table,
            {name, {}, ""},
            said("no table of numbers is found in this file"),
            said("export the session as delimited text, GPX or NMEA 0183")};
}

// "1,5,2,5" under two names: which comma is the decimal mark cannot be told.
bool commas_in_conflict(const Layout& layout) {
    return layout.delimiter == Delimiter{','} && layout.header_cells >= 2 && layout.columns > layout.header_cells + 1;
}

// Lines that repeat the names of a recipe are few in any honest file.
constexpr std::size_t max_header_lines = 8;

// Where the recipe's names stand in the text: a delimiter and a
// header that a person had to choose once are found again by them.
std::vector<LayoutChoice> choices_of(const Recipe& recipe, std::string_view head, Encoding encoding) {
    std::vector<LayoutChoice> choices;
    for (const HeadLine& line : judged_lines(head)) {
        auto cells = header_cells(line.text, recipe.delimiter, encoding, recipe.columns.size());
        cells.resize(recipe.columns.size()); // as the layout fits them to its columns
        if (!std::ranges::equal(recipe.columns, cells, {}, &RecipeColumn::header)) continue;
        choices.push_back({recipe.delimiter, line.number});
        if (choices.size() == max_header_lines) return choices;
    }
    bool by_number = true;
    for (std::size_t i = 0; i < recipe.columns.size(); ++i)
        by_number = by_number && recipe.columns[i].header == name_by_number(i);
    if (by_number) choices.push_back({recipe.delimiter, 0});
    return choices;
}

struct FoundLayout {
    std::optional<Layout> layout;
    bool recipe_fits = false;
};

// As the person says, else as the recipe says where that makes its shape, else as the program sees it.
FoundLayout layout_with(std::string_view head, Encoding encoding, const Recipe* recipe, const LayoutChoice& said,
                        const std::shared_ptr<const Vocabulary>& own_words) {
    FoundLayout found{find_layout(head, encoding, said, own_words), false};
    if (!recipe) return found;
    found.recipe_fits = found.layout && fits(*recipe, *found.layout);
    if (found.recipe_fits || said != LayoutChoice{}) return found;
    for (const LayoutChoice& choice : choices_of(*recipe, head, encoding)) {
        auto own = find_layout(head, encoding, choice, own_words);
        if (own && fits(*recipe, *own)) return {std::move(own), true};
    }
    return found;
}

// The source with another text in place of its own; as it was where there is none.
template <class Change>
base::Result<TextSource> changed(TextSource source, const std::string& name, const base::Progress& progress,
                                 const Change& change) {
    std::string buffer;
    const auto text = whole_text(source.bytes, buffer);
    if (!text) return unreadable(name);
    auto other = change(*text, source.encoding, progress);
    if (!other) return base::go_on(progress, "", 0.0) ? base::Result<TextSource>(std::move(source)) : base::cancelled();
    source.owned = std::make_shared<const std::string>(std::move(*other));
    source.bytes = ByteSource(*source.owned);
    return source;
}

base::Result<TextSource> put_side_by_side(TextSource source, const std::string& name, const base::Progress& progress) {
    source.warnings.push_back({.kind = recording::WarningKind::put_side_by_side});
    return changed(std::move(source), name, progress, side_by_side);
}

// How many columns of the head are known by their names, read so.
std::size_t known_columns(std::string_view head, Encoding encoding) {
    const auto layout = find_layout(head, encoding);
    if (!layout || !layout->has_names) return 0;
    std::size_t known = 0;
    for (const std::string& name : layout->names)
        if (meaning_of_name(part_name_and_unit(name).name) || sided_position(name)) ++known;
    return known;
}

// The code page in which more names are known than in Windows-1252.  The head is whole lines.
std::optional<Encoding> code_page_of(std::string_view head) {
    std::size_t most = known_columns(head, Encoding::windows_1252);
    std::optional<Encoding> best;
    for (const Encoding page :
         {Encoding::shift_jis, Encoding::euc_jp, Encoding::windows_1250, Encoding::dos_850, Encoding::macintosh}) {
        const auto text = code_page_to_utf8(head, page);
        const std::size_t known = text ? known_columns(*text, Encoding::utf8) : 0;
        if (known <= most) continue;
        most = known;
        best = page;
    }
    return best;
}

// Names that are known in another code page alone speak for it.
base::Result<TextSource> in_code_page(TextSource source, std::string_view head, const std::string& name,
                                      const base::Progress& progress) {
    head = head.substr(0, std::size_t{64} << 10U);
    const std::size_t last_end = head.find_last_of("\r\n");
    if (last_end != std::string_view::npos) head = head.substr(0, last_end + 1);
    const auto page = code_page_of(head);
    if (!page) return source;
    auto turned =
        changed(std::move(source), name, progress,
                [&](std::string_view text, Encoding, const base::Progress&) { return code_page_to_utf8(text, *page); });
    if (!turned) return turned;
    TextSource utf8 = std::move(turned).value();
    if (utf8.owned) utf8.encoding = Encoding::utf8;
    return utf8;
}

} // namespace

bool has_shape_of(const TextSource& source, const Recipe& recipe) {
    std::string buffer;
    const auto head = source.bytes.piece(0, std::min(source.bytes.size(), head_bytes), buffer);
    return head && layout_with(*head, source.encoding, &recipe, {}, nullptr).recipe_fits;
}

std::optional<std::string_view> whole_text(const ByteSource& bytes, std::string& buffer) {
    return bytes.piece(0, bytes.size(), buffer);
}

base::Result<TextSource> open_text(const ByteSource& bytes, const std::string& name, const base::Progress& progress) {
    std::string buffer;
    const auto head = bytes.piece(0, std::min(bytes.size(), head_bytes), buffer);
    if (!head) return unreadable(name);
    TextSource source{bytes, nullptr, detect_encoding(*head), FileKind::table, {}};
    if (source.encoding == Encoding::utf16_little || source.encoding == Encoding::utf16_big) {
        auto read = read_utf16(bytes, source.encoding, name, progress);
        if (!read) return read.error();
        Utf8Text converted = std::move(read).value();
        if (converted.damaged > 0)
            source.warnings.push_back(
                {.kind = recording::WarningKind::encoding_damaged, .seen = {converted.damaged, {}}});
        source.owned = std::make_shared<const std::string>(std::move(converted.text));
        source.bytes = ByteSource(*source.owned);
        source.encoding = Encoding::utf8;
    } else if (const auto size = size_without_zeros(bytes); !size) {
        return unreadable(name);
    } else if (*size < bytes.size()) {
        source.bytes = bytes.first(*size);
        source.warnings.push_back({.kind = recording::WarningKind::tail_empty, .seen = {bytes.size() - *size, {}}});
    }
    std::string kind_buffer;
    auto start = source.bytes.piece(0, std::min(source.bytes.size(), head_bytes), kind_buffer);
    if (!start) return unreadable(name);
    if (start->starts_with(utf8_mark)) start->remove_prefix(utf8_mark.size());
    if (looks_like_gpx(*start))
        source.kind = FileKind::gpx;
    else if (looks_like_nmea(*start))
        source.kind = FileKind::nmea;
    else if (is_long_form(*start, source.encoding))
        return put_side_by_side(std::move(source), name, progress);
    else if (has_places_in_cells(*start, source.encoding))
        return changed(std::move(source), name, progress, places_parted);
    else if (source.encoding == Encoding::windows_1252)
        return in_code_page(std::move(source), *start, name, progress);
    return source;
}

base::Result<KnownTable> know_table(const TextSource& source, const std::string& name, const Options& options) {
    std::string buffer;
    const auto head = source.bytes.piece(0, std::min(source.bytes.size(), head_bytes), buffer);
    if (!head) return unreadable(name);
    const Recipe* const recipe = options.recipe ? &*options.recipe : nullptr;
    auto [layout, recipe_fits] = layout_with(*head, source.encoding, recipe, options.layout, options.vocabulary);
    if (!layout) return without_table(name);
    if (layout->columns > max_columns)
        return Error{ErrorCode::not_a_table,
                     {name, layout->data_line, ""},
                     said("the table has more than 4096 columns"),
                     said("export fewer channels")};
    if (commas_in_conflict(*layout))
        return Error{
            ErrorCode::not_a_table,
            {name, layout->data_line, ""},
            said("rows have more cells than there are names, as if commas were decimal marks and delimiters at once"),
            said("export with semicolons or tabs, or with decimal points")};
    KnownTable known{std::move(*layout), {}, recipe_fits};
    if (options.recipe) known.layout.style.decimal_mark = options.recipe->decimal_mark;
    known.guesses = guess_columns(known.layout, take_samples(source.bytes, known.layout));
    if (options.recipe) apply(*options.recipe, known.layout, known.guesses);
    return known;
}

} // namespace lapwright::import
