// SPDX-License-Identifier: GPL-3.0-or-later
// Places that stand in one cell, as data frames and phones write them: "47.3004, 8.6052", "(47.3004; 8.6052)",
// "POINT (8.6052 47.3004)".  The column is parted in two, and the table then read as any.
#pragma once

#include "core/base/progress.h"
#include "core/import/text/encoding.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::import {

struct Place {
    std::string_view latitude; // as written
    std::string_view longitude;
};

// Latitude stands first (ISO 6709), but in well-known text, where x does (OGC 06-103r4, Simple Feature Access, 7.2).
// Nothing where it is no pair of numbers with four decimals and more.
[[nodiscard]] std::optional<Place> place_in_cell(std::string_view cell);

// Whether the first lines of a text have a column of such cells.
[[nodiscard]] bool has_places_in_cells(std::string_view head, Encoding encoding);

// The text with latitude and longitude in columns of their own; nothing where it has none, or where it was cancelled.
[[nodiscard]] std::optional<std::string> places_parted(std::string_view text, Encoding encoding,
                                                       const base::Progress& progress = {});

} // namespace lapwright::import
