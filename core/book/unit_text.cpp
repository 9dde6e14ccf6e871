// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/book/unit_text.h"

namespace lapwright::book {

std::string unit_text(base::Unit unit) {
    if (unit == base::Unit::fraction) return "parts of one";
    return std::string(base::symbol(unit));
}

base::Unit unit_of(std::string_view text) {
    for (int i = 0; i <= static_cast<int>(base::Unit::ampere); ++i)
        if (const auto unit = static_cast<base::Unit>(i); unit_text(unit) == text) return unit;
    return base::Unit::none;
}

} // namespace lapwright::book
