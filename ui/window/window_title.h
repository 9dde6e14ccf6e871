// SPDX-License-Identifier: GPL-3.0-or-later
// The window's title while two laps are compared: "Wren Alder lap 4 against Odran Pell lap 2".
#pragma once

#include "core/analysis/analysis.h"

#include <QString>

namespace lapwright::window {

[[nodiscard]] QString title_of(const analysis::Pairing& pairing);

} // namespace lapwright::window
