// SPDX-License-Identifier: GPL-3.0-or-later
// Speed and gap over distance, and a bar of the segment table, as SVG elements inside an HTML file (SVG 1.1).
#pragma once

#include "core/sheet/sheet.h"

#include <string>

namespace lapwright::sheet {

// The plots with the deciding places marked; empty where there is nothing to draw.
[[nodiscard]] std::string svg_plot(const Sheet& sheet);

// A bar from the middle: to the right where A won, to the left where B did; `largest_s` fills the half.
[[nodiscard]] std::string svg_bar(double gain_s, double largest_s);

} // namespace lapwright::sheet
