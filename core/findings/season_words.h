// SPDX-License-Identifier: GPL-3.0-or-later
// What changes of a setup did to a car, over all its sessions, in words for window and command line.
#pragma once

#include "core/findings/trial_words.h"
#include "core/season/car_over_outings.h"

#include <string>
#include <vector>

namespace lapwright::findings {

// "wing angle 3 deg → 7 deg"
[[nodiscard]] std::string effect_title(const season::ItemEffect& effect);

// "wing angle 3 deg → 7 deg: downforce area +0.42 ±0.18 m², drag area +0.050 ±0.020 m²", or "…: cannot be told from
// these sessions".
[[nodiscard]] std::string effect_sentence(const season::ItemEffect& effect);

} // namespace lapwright::findings
