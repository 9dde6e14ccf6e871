// SPDX-License-Identifier: GPL-3.0-or-later
// Where a command may write.  A name typed wrong must not cost a session, a book or a device: what is there already is
// left alone, but for an older sheet, which a new one may take the place of.
#pragma once

#include "core/base/result.h"

#include <string>
#include <vector>

namespace lapwright::commands {

// What of the same kind may be renewed: nothing, or a debrief sheet that bears the program's mark.
enum class Renews { nothing, pdf_sheet, html_sheet };

// Whether `out` may be written.  Error file_not_writable where it is one of the inputs (empty names are passed
// over), a folder or a device, a book, or any other file that may not be renewed.
[[nodiscard]] base::Result<void> check_output(const std::string& out, const std::vector<std::string>& inputs,
                                              Renews renews);

} // namespace lapwright::commands
