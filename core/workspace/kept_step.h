// SPDX-License-Identifier: GPL-3.0-or-later
// How a video stands to its recording: as the book keeps it, and as it is found and shown.
#pragma once

#include "core/book/videos.h"
#include "core/video/in_step.h"

#include <optional>

namespace lapwright::workspace {

// A method that the book names and this program does not know counts as set by hand.
[[nodiscard]] std::optional<video::StepEstimate> estimate_of(const std::optional<book::KeptStep>& kept);
[[nodiscard]] std::optional<book::KeptStep> kept_step(const std::optional<video::StepEstimate>& estimate);

} // namespace lapwright::workspace
