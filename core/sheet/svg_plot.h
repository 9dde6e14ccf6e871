// SPDX-License-Identifier: GPL-3.0-or-later
// Speed and gap over distance, and a bar of the segment table, as SVG elements: in an HTML file, and painted on paper.
// Of SVG only what SVG Tiny 1.2 has too, which is all that Qt paints; no style sheet.
#pragma once

#include "core/sheet/sheet.h"

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

namespace lapwright::sheet {

// A line of text: `x` is where its anchor stands, `y` where its letters' feet do.
enum class Anchor { start, middle, end };
struct Words {
    double x = 0.0;
    double y = 0.0;
    Anchor anchor = Anchor::start;
    std::string text;
    int size = 7;
    bool bold = false;
    std::uint32_t colour = 0; // 0xRRGGBB
};

// Apart, for whoever paints text better than as a drawing: what QSvgRenderer makes of it cannot be selected in a PDF.
struct PlotDrawing {
    double width_pt = 0.0;
    double height_pt = 0.0;
    std::string shapes; // SVG elements
    std::vector<Words> words;
};

// The plots with the deciding places marked, so wide and high in points; empty where there is nothing to draw.
inline constexpr double plot_width_pt = 515.0; // between the margins of an A4 page
inline constexpr double plot_height_pt = 215.0;
[[nodiscard]] PlotDrawing plot_drawing(const Sheet& sheet, double width_pt = plot_width_pt);
// All of it as one element.
[[nodiscard]] std::string svg_plot(const PlotDrawing& drawing);
// The same of that class with a hidden line for the cursor, and where its panels begin and how wide they are.
[[nodiscard]] std::string svg_plot_with_cursor(const Sheet& sheet, double width_pt, std::string_view kind);

// A bar from the middle: to the right where A won, to the left where B did; `largest_s` fills the half.  In the colour
// of whom it favours, faint where it is within its error.
[[nodiscard]] std::string svg_bar(const Row& row, double largest_s);
[[nodiscard]] std::uint32_t bar_colour(Favours favours);

} // namespace lapwright::sheet
