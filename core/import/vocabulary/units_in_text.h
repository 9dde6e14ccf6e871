// SPDX-License-Identifier: GPL-3.0-or-later
// Units as people write them in headers ("km/h", "kph", "m/s²", "deg/s", "Grad") to the exact units of core/base, and
// the parting of a header cell into its name and its unit.
#pragma once

#include "core/import/vocabulary/vocabulary.h"

#include <optional>
#include <string>
#include <string_view>

namespace lapwright::import {

// UTF-8 in; case, blanks, dots and brackets around it do not matter.  Nothing where the text is no unit known here.
[[nodiscard]] std::optional<base::Unit> parse_unit(std::string_view text,
                                                   const Vocabulary& known = built_in_vocabulary());

// The same for what stands behind a number in a cell; letters that are more likely to be something else are none.
[[nodiscard]] std::optional<base::Unit> unit_behind_number(std::string_view text);

struct NameAndUnit {
    std::string name;
    std::string unit_text;          // as written, empty where there is none
    std::optional<base::Unit> unit; // nothing where there is none or it is not known
};

// "Speed (km/h)", "Speed [km/h]", "Speed {km/h}", "Speed <km/h>", "Speed km/h", "speed_kph", "speed/kph".
// A word behind a blank or an underscore is a unit only where it is known and unlikely to be part of the name.
[[nodiscard]] NameAndUnit part_name_and_unit(std::string_view header, const Vocabulary& known = built_in_vocabulary());

} // namespace lapwright::import
