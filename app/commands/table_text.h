// SPDX-License-Identifier: GPL-3.0-or-later
// The same values as tables for people.
#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/further_laps.h"
#include "core/base/display.h"

#include <memory>
#include <string>
#include <vector>

namespace lapwright::commands {

[[nodiscard]] std::string laps_table(const std::vector<std::shared_ptr<const analysis::Session>>& sessions);
// "A  Ylva Torrance — Plover, lap 3, 1:30.43 ±0.02", a line each.
[[nodiscard]] std::string both_sides(const analysis::Pairing& pairing);
[[nodiscard]] std::string compare_table(const analysis::Pairing& pairing, base::UnitSystem units,
                                        const std::vector<analysis::FurtherLap>& further = {});

// Columns padded to their widest cell (counted in characters, not bytes); the first `left` columns are aligned left,
// the others right; two blanks between.  A row is one line: control characters become blanks.
[[nodiscard]] std::string aligned(const std::vector<std::vector<std::string>>& rows, std::size_t left);

} // namespace lapwright::commands
