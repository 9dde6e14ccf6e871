// SPDX-License-Identifier: GPL-3.0-or-later
// Where the person's own book lies.
#pragma once

#include "core/base/result.h"

#include <string>

namespace lapwright::commands {

// Where the window keeps it too (XDG Base Directory Specification 0.8: $XDG_DATA_HOME, else ~/.local/share); the file
// need not exist.
[[nodiscard]] base::Result<std::string> own_book();

} // namespace lapwright::commands
