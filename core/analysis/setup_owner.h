// SPDX-License-Identifier: GPL-3.0-or-later
// Whose a setup sheet is that was opened or dropped like any file.
#pragma once

#include "core/car/setup_sheet.h"
#include "core/recording/recording.h"

#include <cstddef>
#include <optional>
#include <span>
#include <string>

namespace lapwright::analysis {

struct SetupCandidate {
    std::string file; // of the session; its name may differ from the recording's
    const recording::Recording* recording = nullptr;
};

// The session that the sheet lies beside (run.setup.json: run.csv, in whatever folder); else the only one of the driver
// and car that it names; else the only one there is, where no name speaks against it or both came together.
[[nodiscard]] std::optional<std::size_t> setup_owner(const std::string& sheet_file, const car::SetupSheet& sheet,
                                                     std::span<const SetupCandidate> sessions, bool came_together);

} // namespace lapwright::analysis
