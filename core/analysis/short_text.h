// SPDX-License-Identifier: GPL-3.0-or-later
// Names that people gave, for a place that has a line and no more: a sheet, a sentence.
#pragma once

#include <string>

namespace lapwright::analysis {

inline constexpr std::size_t longest_title = 80; // characters: a line of the sheet holds some 120

// The first characters and "…" where there are more; UTF-8.
[[nodiscard]] std::string shortened(const std::string& text, std::size_t characters = longest_title);

} // namespace lapwright::analysis
