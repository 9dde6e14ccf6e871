// SPDX-License-Identifier: GPL-3.0-or-later
// Units as the book writes them: their symbols, and a word for each of the two that have none.
#pragma once

#include "core/base/units.h"

#include <string>
#include <string_view>

namespace lapwright::book {

[[nodiscard]] std::string unit_text(base::Unit unit);
// A unit that is not known is none: the values are what they are.
[[nodiscard]] base::Unit unit_of(std::string_view text);

} // namespace lapwright::book
