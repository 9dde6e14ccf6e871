// SPDX-License-Identifier: GPL-3.0-or-later
// Counts and line numbers in the warnings' sentences.
#pragma once

#include "core/import/text/line_tally.h"

#include <cstddef>
#include <string>
#include <string_view>

namespace lapwright::import {

// "1 row is", "3 rows are"
[[nodiscard]] std::string counted(std::size_t count, std::string_view one, std::string_view many);
// "line 7", "lines 7, 8, 12, 40, 41 and 3 more"
[[nodiscard]] std::string lines_text(const LineTally& tally);

} // namespace lapwright::import
