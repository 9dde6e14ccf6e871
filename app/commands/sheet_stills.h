// SPDX-License-Identifier: GPL-3.0-or-later
// The stills that a command line asks for on the sheet: videos put in step as `video` does, or by the offset given.
#pragma once

#include "app/commands/arguments.h"
#include "core/analysis/analysis.h"
#include "core/sheet/sheet.h"

#include <string>
#include <vector>

namespace lapwright::commands {

// None where no video was given.  `notes` gets a line on how each video stands to its recording, or that it cannot be
// put in step, so that the sheet is without its stills.
[[nodiscard]] base::Result<std::vector<sheet::StillPair>>
stills_of(const Arguments& arguments, const analysis::Pairing& pairing, std::string& notes);

} // namespace lapwright::commands
