// SPDX-License-Identifier: GPL-3.0-or-later
// Names of months and their short forms in English, German, French, Spanish, Italian and Dutch.
#pragma once

#include <string_view>

namespace lapwright::import {

// 1..12, whatever the case and accents; 0 for any other word.
[[nodiscard]] int month_of_name(std::string_view word);

} // namespace lapwright::import
