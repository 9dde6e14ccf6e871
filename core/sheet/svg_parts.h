// SPDX-License-Identifier: GPL-3.0-or-later
// Pieces of SVG that the sheet's drawings are made of.
#pragma once

#include "core/sheet/plot_layout.h"
#include "core/sheet/svg_plot.h"

#include <cstdint>
#include <string>
#include <string_view>

namespace lapwright::sheet {

[[nodiscard]] std::string attribute(std::string_view name, std::string_view value);
[[nodiscard]] std::string at(std::string_view name, double value);
[[nodiscard]] std::string rectangle(const Box& box, std::uint32_t fill);
// Open, without a fill; `path` as in the attribute d.
[[nodiscard]] std::string line(std::string_view name, const std::string& path, std::uint32_t colour, double width,
                               bool dashed);
[[nodiscard]] std::string disc(double x, double y);
[[nodiscard]] Words number_in_disc(double x, double y, int number);
[[nodiscard]] Words words_at(double x, double y, Anchor anchor, std::string text); // small and faint
[[nodiscard]] std::string svg_words(const Words& words);

// A drawing as one element of that class.
[[nodiscard]] std::string svg_element(const PlotDrawing& drawing, std::string_view kind, std::string_view label);

} // namespace lapwright::sheet
