// SPDX-License-Identifier: GPL-3.0-or-later
// The texts of resources/vocabulary, as .cmake/Vocabulary.cmake puts them into the program.
#pragma once

#include <string_view>

namespace lapwright::import {

[[nodiscard]] std::string_view built_in_columns();
[[nodiscard]] std::string_view built_in_units();

} // namespace lapwright::import
