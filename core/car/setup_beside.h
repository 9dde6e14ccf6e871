// SPDX-License-Identifier: GPL-3.0-or-later
// The setup sheet that lies beside a session's file: run.setup.json
// beside run.csv.  Window and command line find it here.
#pragma once

#include "core/base/result.h"
#include "core/car/setup_sheet.h"

#include <optional>
#include <string>

namespace lapwright::car {

[[nodiscard]] std::string setup_path_beside(const std::string& session_file);

// Nothing where no such file lies there; an error as read_setup_sheet has it where it cannot be read.
[[nodiscard]] base::Result<std::optional<SetupSheet>> setup_beside(const std::string& session_file);

} // namespace lapwright::car
