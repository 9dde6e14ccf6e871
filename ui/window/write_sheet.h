// SPDX-License-Identifier: GPL-3.0-or-later
// The debrief sheet as a PDF for the command line: no window, no display.
#pragma once

#include "core/base/result.h"
#include "core/sheet/sheet.h"

#include <string>

namespace lapwright::window {

// A4, or US Letter; with a second page where all segments are wanted.
[[nodiscard]] base::Result<void> write_sheet(const sheet::Sheet& sheet, const std::string& path, bool us_letter,
                                             bool all_segments);

} // namespace lapwright::window
