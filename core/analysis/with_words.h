// SPDX-License-Identifier: GPL-3.0-or-later
// A session with what a person says of its laps.
#pragma once

#include "core/analysis/analysis.h"
#include "core/lap/judged_by_hand.h"

#include <memory>
#include <vector>

namespace lapwright::analysis {

// The same session, its laps as the words have them and otherwise as the program judges; itself where it has the same
// words already.
[[nodiscard]] std::shared_ptr<const Session> with_words(const std::shared_ptr<const Session>& session,
                                                        std::vector<lap::JudgedByHand> words);

} // namespace lapwright::analysis
