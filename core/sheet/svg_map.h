// SPDX-License-Identifier: GPL-3.0-or-later
// The track from above, north up: the places of the findings thick, with their numbers, and the timing line.
#pragma once

#include "core/sheet/svg_plot.h"

namespace lapwright::sheet {

inline constexpr double map_width_pt = 122.0;
inline constexpr double map_height_pt = 108.0;

// Empty where the sheet has no line.
[[nodiscard]] PlotDrawing map_drawing(const Sheet& sheet);
[[nodiscard]] std::string svg_map(const Sheet& sheet);

} // namespace lapwright::sheet
