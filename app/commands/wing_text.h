// SPDX-License-Identifier: GPL-3.0-or-later
// How much wing the track wants for both cars of a pairing, as a table and as JSON.
#pragma once

#include "core/analysis/analysis.h"
#include "core/analysis/wing.h"

#include <string>

namespace lapwright::commands {

struct WingReport {
    analysis::Wing wing;
    causes::DragCost cost;
    bool on_a_tonne = false;
};

[[nodiscard]] std::string wing_table(const analysis::Pairing& pairing, const WingReport& report);
[[nodiscard]] std::string wing_json(const analysis::Pairing& pairing, const WingReport& report);

} // namespace lapwright::commands
