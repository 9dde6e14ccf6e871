// SPDX-License-Identifier: GPL-3.0-or-later
// The steps from a source of bytes to what is known of its table; the import and the preview share them.
#pragma once

#include "core/base/result.h"
#include "core/import/columns/recipe.h"
#include "core/import/formats/import.h"
#include "core/import/text/byte_source.h"
#include "core/recording/recording.h"

#include <memory>
#include <string>
#include <vector>

namespace lapwright::import {

enum class FileKind { table, gpx, nmea };

// A source of UTF-8 or Windows-1252 text, with what it took to get there.
struct TextSource {
    ByteSource bytes;
    std::shared_ptr<const std::string> owned; // holds the bytes where they had to be converted
    Encoding encoding = Encoding::utf8;
    FileKind kind = FileKind::table;
    std::vector<recording::Warning> warnings;
};

[[nodiscard]] base::Result<TextSource> open_text(const ByteSource& bytes, const std::string& name,
                                                 const base::Progress& progress = {});

struct KnownTable {
    Layout layout;
    std::vector<ColumnGuess> guesses; // with the options' recipe applied
    bool recipe_fits = false;
};

[[nodiscard]] base::Result<KnownTable> know_table(const TextSource& source, const std::string& name,
                                                  const Options& options);

// Whether the recipe was made for files like this table.
[[nodiscard]] bool has_shape_of(const TextSource& source, const Recipe& recipe);

// The whole of a source as one text; nothing where it cannot be read.
[[nodiscard]] std::optional<std::string_view> whole_text(const ByteSource& bytes, std::string& buffer);

} // namespace lapwright::import
