// SPDX-License-Identifier: GPL-3.0-or-later
// A setup sheet as the JSON text that parse_setup_sheet reads; what is not known is left out.
#pragma once

#include "core/car/setup_sheet.h"

#include <string>

namespace lapwright::car {

[[nodiscard]] std::string setup_sheet_text(const SetupSheet& sheet);

} // namespace lapwright::car
