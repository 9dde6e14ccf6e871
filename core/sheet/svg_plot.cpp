// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/sheet/svg_plot.h"

#include "core/base/number_text.h"
#include "core/sheet/markup.h"
#include "core/sheet/paper_colours.h"
#include "core/sheet/plot_layout.h"

#include <algorithm>
#include <cmath>
#include <string_view>
#include <utility>

namespace lapwright::sheet {
namespace {

std::string attribute(std::string_view name, std::string_view value) {
    return " " + std::string(name) + "=\"" + std::string(value) + "\"";
}

std::string at(std::string_view name, double value) {
    return attribute(name, coordinate(value));
}

std::string rectangle(const Box& box, std::uint32_t fill) {
    return "<rect" + at("x", box.left) + at("y", box.top) + at("width", box.width) + at("height", box.height) +
           attribute("fill", colour_text(fill)) + "/>\n";
}

Words words_at(double x, double y, Anchor anchor, std::string text) {
    return {x, y, anchor, std::move(text), 7, false, colours::faint_ink};
}

std::string svg_words(const Words& words) {
    const char* const anchor = words.anchor == Anchor::start    ? "start"
                               : words.anchor == Anchor::middle ? "middle"
                                                                : "end";
    return "<text" + at("x", words.x) + at("y", words.y) + attribute("text-anchor", anchor) +
           attribute("font-size", base::integer_text(words.size)) + (words.bold ? " font-weight=\"bold\"" : "") +
           attribute("fill", colour_text(words.colour)) + ">" + escaped(words.text) + "</text>\n";
}

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

std::string line(std::string_view name, const std::string& path, std::uint32_t colour, bool dashed) {
    return "<path" + attribute("class", name) + attribute("d", path) + attribute("fill", "none") +
           attribute("stroke", colour_text(colour)) + attribute("stroke-width", "0.9") +
           (dashed ? attribute("stroke-dasharray", "4 2.5") : "") + "/>\n";
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
    return (value < -1e-9 ? "−" : "") + base::fixed_text(std::abs(value), decimals);
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
        drawing.shapes += "<circle" + at("cx", mark.disc_x) + at("cy", mark.disc_y) + at("r", mark_radius) +
                          attribute("fill", colour_text(colours::ink)) + "/>\n";
        drawing.words.push_back(
            {mark.disc_x, mark.disc_y + 2.8, Anchor::middle, base::integer_text(mark.number), 8, true, 0xffffff});
    }
    if (layout.named)
        drawing.words.push_back(
            {layout.named->name_x, layout.named->name_y, Anchor::middle, layout.named->name, 8, false, colours::ink});
}

void add_foot(PlotDrawing& drawing, const Panel& panel) {
    const double y = panel.area.bottom() + 9.0;
    drawing.words.push_back(words_at(panel.area.left, y, Anchor::start, "0 m"));
    drawing.words.push_back(words_at(panel.area.left + 0.5 * panel.area.width, y, Anchor::middle, foot_words));
    drawing.words.push_back(words_at(panel.area.right(), y, Anchor::end, base::fixed_text(panel.length_m, 0) + " m"));
}

} // namespace

PlotDrawing plot_drawing(const Sheet& sheet, double width_pt) {
    PlotDrawing drawing{width_pt, {}, {}};
    const Plot& plot = sheet.plot;
    if (plot.distance_m.size() < 2) return drawing;
    const PlotLayout layout = lay_out(plot, sheet.findings, {0.0, 0.0, width_pt, plot_height_pt});
    drawing.shapes = shades(layout);
    add_marks(drawing, layout);
    add_grid(drawing, layout.speed, "speed, " + plot.speed_unit, 0);
    add_grid(drawing, layout.gap, "gap, s: A ahead is up", 1);
    drawing.shapes += line("speed-b", curve(layout.speed, plot.distance_m, plot.speed_b), colours::vermilion_b, true) +
                      line("speed-a", curve(layout.speed, plot.distance_m, plot.speed_a), colours::blue_a, false) +
                      band(layout.gap, plot) +
                      line("gap", curve(layout.gap, plot.distance_m, plot.gap_s), colours::ink, false);
    add_foot(drawing, layout.gap);
    return drawing;
}

std::string svg_plot(const PlotDrawing& drawing) {
    if (drawing.shapes.empty()) return {};
    std::string svg =
        "<svg class=\"plot\"" +
        attribute("viewBox", "0 0 " + coordinate(drawing.width_pt) + " " + coordinate(plot_height_pt)) +
        " role=\"img\" aria-label=\"Speed of A and B, and the gap, over the distance along the track\">\n" +
        drawing.shapes + "<g font-family=\"DejaVu Sans, sans-serif\">\n";
    for (const Words& words : drawing.words)
        svg += svg_words(words);
    return svg + "</g>\n</svg>\n";
}

std::string svg_bar(double gain_s, double largest_s) {
    constexpr Box cell{0.0, 0.0, 40.0, 6.0};
    const double half = 0.5 * cell.width;
    const double reach = largest_s > 0.0 ? half * std::min(1.0, std::abs(gain_s) / largest_s) : 0.0;
    const bool for_a = gain_s >= 0.0;
    const Box bar{for_a ? half : half - reach, 0.0, reach, cell.height};
    return "<svg class=\"bar\" viewBox=\"0 0 40 6\" aria-hidden=\"true\">" + rectangle(cell, colours::shade) +
           rectangle(bar, for_a ? colours::blue_a : colours::vermilion_b) + "</svg>";
}

} // namespace lapwright::sheet
