// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/svg_plot.h"

#include "core/base/number_text.h"
#include "core/base/translation.h"
#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"
#include "core/sheet/plot_layout.h"
#include "core/sheet/svg_parts.h"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

namespace lapwright::sheet {
namespace {

using base::said;
using base::word;

constexpr const char* plot_label = word("Speed of A and B, and the gap, over the distance along the track");

// The pen is lifted over what is no number.
std::string curve(const Panel& panel, const std::vector<double>& distance_m, const std::vector<double>& values) {
    std::string path;
    bool down = false;
    for (const std::size_t i : drawn_points(std::min(distance_m.size(), values.size()))) {
        if (!std::isfinite(values[i])) {
            down = false;
            continue;
        }
        path += (down ? "L" : "M") + coordinate(panel.x(distance_m[i])) + " " + coordinate(panel.y(values[i]));
        down = true;
    }
    return path;
}

// Along the upper edge and back along the lower one.
std::string band(const Panel& panel, const Plot& plot) {
    if (plot.low_s.empty() || plot.high_s.size() != plot.low_s.size()) return {};
    std::string path;
    const auto add = [&](std::size_t i, double value) {
        if (std::isfinite(value))
            path +=
                (path.empty() ? "M" : "L") + coordinate(panel.x(plot.distance_m[i])) + " " + coordinate(panel.y(value));
    };
    std::vector<std::size_t> points = drawn_points(std::min(plot.low_s.size(), plot.distance_m.size()));
    for (const std::size_t i : points)
        add(i, plot.high_s[i]);
    std::ranges::reverse(points);
    for (const std::size_t i : points)
        add(i, plot.low_s[i]);
    if (path.empty()) return {};
    return "<path" + attribute("class", "band") + attribute("d", path + "Z") +
           attribute("fill", colour_text(colours::band)) + "/>\n";
}

// With the minus sign of the other figures.
std::string axis_text(double value, int decimals) {
    return (value < -1e-9 ? "−" : "") + base::shown_text(std::abs(value), decimals);
}

void add_grid(PlotDrawing& drawing, const Panel& panel, std::string title, int decimals) {
    for (const double value : grid_values(panel)) {
        const double y = panel.y(value);
        const bool zero = std::abs(value) < 1e-9;
        drawing.shapes += "<line" + at("x1", panel.area.left) + at("x2", panel.area.right()) + at("y1", y) +
                          at("y2", y) + attribute("stroke", colour_text(zero ? colours::faint_ink : colours::rule)) +
                          attribute("stroke-width", "0.5") + "/>\n";
        drawing.words.push_back(words_at(panel.area.left - 4.0, y + 2.5, Anchor::end, axis_text(value, decimals)));
    }
    drawing.words.push_back(words_at(panel.area.left, panel.area.top - 3.0, Anchor::start, std::move(title)));
}

std::string shades(const PlotLayout& layout) {
    std::string svg;
    if (layout.named) svg += rectangle(layout.named->shade, colours::shade);
    for (const Mark& mark : layout.marks)
        svg += rectangle(mark.shade, colours::shade);
    return svg;
}

void add_marks(PlotDrawing& drawing, const PlotLayout& layout) {
    for (const Mark& mark : layout.marks) {
        drawing.shapes += disc(mark.disc_x, mark.disc_y);
        drawing.words.push_back(number_in_disc(mark.disc_x, mark.disc_y, mark.number));
    }
    if (layout.named)
        drawing.words.push_back(
            {layout.named->name_x, layout.named->name_y, Anchor::middle, layout.named->name, 8, false, colours::ink});
}

// Whose line is which, beside the panel's title: a grey printer keeps dashes.
void add_key(PlotDrawing& drawing, const Panel& panel, double room) {
    const double y = panel.area.top - 5.5;
    double x = panel.area.left + room;
    const auto add = [&](const char* letter, std::uint32_t colour, bool dashed) {
        drawing.words.push_back({x, y + 2.5, Anchor::start, letter, 7, true, colour});
        drawing.shapes += line(
            "key", "M" + coordinate(x + 8.0) + " " + coordinate(y) + "L" + coordinate(x + 27.0) + " " + coordinate(y),
            colour, 1.2, dashed);
        x += 36.0;
    };
    add("A", colours::blue_a, false);
    add("B", colours::vermilion_b, true);
}

void add_foot(PlotDrawing& drawing, const Panel& panel) {
    const double y = panel.area.bottom() + 9.0;
    drawing.words.push_back(words_at(panel.area.left, y, Anchor::start, "0 m"));
    const bool narrow = panel.area.width < narrow_pt;
    drawing.words.push_back(words_at(panel.area.left + 0.5 * panel.area.width, y, Anchor::middle,
                                     said(narrow ? narrow_foot_words : foot_words)));
    drawing.words.push_back(words_at(panel.area.right(), y, Anchor::end, base::fixed_text(panel.length_m, 0) + " m"));
}

} // namespace

PlotDrawing plot_drawing(const Sheet& sheet, double width_pt) {
    PlotDrawing drawing{width_pt, plot_height_pt, {}, {}};
    const Plot& plot = sheet.plot;
    if (plot.distance_m.size() < 2) return drawing;
    const PlotLayout layout = lay_out(plot, sheet.findings, {0.0, 0.0, width_pt, plot_height_pt});
    drawing.shapes = shades(layout);
    add_marks(drawing, layout);
    add_grid(drawing, layout.speed, speed_title(plot), 0);
    add_key(drawing, layout.speed, room_for_key(plot));
    add_grid(drawing, layout.gap, said("gap, s: A ahead is up"), 1);
    drawing.shapes +=
        line("speed-b", curve(layout.speed, plot.distance_m, plot.speed_b), colours::vermilion_b, 0.9, true) +
        line("speed-a", curve(layout.speed, plot.distance_m, plot.speed_a), colours::blue_a, 0.9, false) +
        band(layout.gap, plot) + line("gap", curve(layout.gap, plot.distance_m, plot.gap_s), colours::ink, 0.9, false);
    add_foot(drawing, layout.gap);
    return drawing;
}

std::string svg_plot_with_cursor(const Sheet& sheet, double width_pt, std::string_view kind) {
    PlotDrawing drawing = plot_drawing(sheet, width_pt);
    if (drawing.shapes.empty()) return {};
    const PlotLayout layout = lay_out(sheet.plot, sheet.findings, {0.0, 0.0, width_pt, plot_height_pt});
    const Panel& panel = layout.gap;
    drawing.shapes += "<line class=\"cursor\" visibility=\"hidden\"" + at("x1", 0.0) + at("x2", 0.0) +
                      at("y1", layout.speed.area.top) + at("y2", panel.area.bottom()) +
                      attribute("stroke", colour_text(colours::ink)) + attribute("stroke-width", "0.8") + "/>\n";
    const std::string svg = svg_element(drawing, kind, said(plot_label));
    return "<svg" + at("data-left", panel.area.left) + at("data-width", panel.area.width) + svg.substr(4);
}

std::string svg_plot(const PlotDrawing& drawing) {
    return svg_element(drawing, "plot", said(plot_label));
}

std::uint32_t bar_colour(Favours favours) {
    switch (favours) {
    case Favours::a:
        return colours::blue_a;
    case Favours::b:
        return colours::vermilion_b;
    case Favours::neither:
        break;
    }
    return colours::within_error;
}

std::string svg_bar(const Row& row, double largest_s) {
    constexpr Box cell{0.0, 0.0, 40.0, 6.0};
    const double half = 0.5 * cell.width;
    const double reach = largest_s > 0.0 ? half * std::min(1.0, std::abs(row.gain_s) / largest_s) : 0.0;
    const Box bar{row.gain_s >= 0.0 ? half : half - reach, 0.0, reach, cell.height};
    return "<svg class=\"bar\" viewBox=\"0 0 40 6\" aria-hidden=\"true\">" + rectangle(cell, colours::shade) +
           rectangle(bar, bar_colour(row.favours)) + "</svg>";
}

} // namespace lapwright::sheet
