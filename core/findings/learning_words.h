// SPDX-License-Identifier: GPL-3.0-or-later
// Learning a track in words, for the window and the command line alike.
#pragma once

#include "core/comparison/learning.h"

#include <string>
#include <vector>

namespace lapwright::findings {

// "Getting quicker by 0.12 ±0.05 s a lap. Most is still to be won in Sweep (0.21 ±0.08 s off its best). Learning has
// stopped in Hairpin." — each part only where the laps tell it.  One name a segment of the curve.
[[nodiscard]] std::string learning_sentence(const comparison::LearningCurve& curve,
                                            const std::vector<std::string>& names);

// "getting quicker", "learning has stopped", "level", "getting slower", "cannot be told".
[[nodiscard]] std::string learning_text(comparison::Learning learning);
// "−0.12 ±0.05": seconds from lap to lap; a dash where they cannot be told.
[[nodiscard]] std::string change_per_lap_text(const comparison::LearningCourse& course);
[[nodiscard]] std::string now_text(const comparison::LearningCourse& course); // "9.41 ±0.06", "1:31.2 ±0.3"
// "0.21 ±0.08"; "0.05 ±0.08, or chance" where the best may be luck; a dash where it cannot be told.
[[nodiscard]] std::string to_win_text(const comparison::LearningCourse& course);
[[nodiscard]] std::string best_text(const comparison::LearningCourse& course); // "9.20"

} // namespace lapwright::findings
