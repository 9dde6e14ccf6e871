// SPDX-License-Identifier: GPL-3.0-or-later
// The same values as tables for people.
#pragma once

#include "core/analysis/analysis.h"
#include "core/base/display.h"

#include <memory>
#include <string>
#include <vector>

namespace lapwright::commands {

[[nodiscard]] std::string laps_table(const std::vector<std::shared_ptr<const analysis::Session>>& sessions);
[[nodiscard]] std::string compare_table(const analysis::Pairing& pairing, base::UnitSystem units);

// Columns padded to their widest cell (counted in characters, not bytes); the first `left` columns are aligned left,
// the others right; two blanks between.  A row is one line: control characters become blanks.
[[nodiscard]] std::string aligned(const std::vector<std::vector<std::string>>& rows, std::size_t left);

} // namespace lapwright::commands
