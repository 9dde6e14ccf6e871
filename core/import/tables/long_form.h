// SPDX-License-Identifier: GPL-3.0-or-later
// A table that lists one reading a row, as loggers of on-board diagnosis do: time, what was read, its value and perhaps
// its unit.  It is put side by side, a column for each thing that was read, and then read as any table.
#pragma once

#include "core/base/progress.h"
#include "core/import/text/encoding.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::import {

// Whether the first lines of a text are rows of three or four cells: a time that never goes back, a name that comes
// again and again, a number, perhaps a unit.
[[nodiscard]] bool is_long_form(std::string_view head, Encoding encoding);

// A row for each time and a column for each name, parted by tabs, names with their units in the first line; a reading
// whose row is damaged is left out.  Nothing where it is no long form, has too many names, or where it was cancelled.
[[nodiscard]] std::optional<std::string> side_by_side(std::string_view text, Encoding encoding,
                                                      const base::Progress& progress = {});

} // namespace lapwright::import
